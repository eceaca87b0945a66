import { fixed, signed } from './number.ts';

type Spread = Readonly<{ value: number; lo: number; hi: number }>;
type Passes = Readonly<
  | {
      ok: true;
      isShifted: boolean;
      scatterMm: number;
      shift: Readonly<{ value: number; lo: number; hi: number }>;
    }
  | { ok: false }
>;
type Needed = Readonly<{ ok: true; readings: number } | { ok: false }>;
type Result = Readonly<{
  repeats: readonly unknown[];
  tem: Spread;
  passes: Passes;
  one: Spread;
  all: Spread;
  needed: Needed;
}>;
type State = Readonly<{ readings: number; comparisons: number; wanted: number }>;

/** More readings of one mark than anybody takes. */
const mostReadings = 20;
/** Pairs from which an own technical error is worth using: the fact "pairs-for-own-error". */
const enoughPairs = 20;

const counted = (count: number, one: string, more: string) =>
  count === 1 ? `one ${one}` : `${count} ${more}`;

/** How many readings it takes, or that no number of readings is enough. */
export function neededSays(needed: Needed, wanted: number): string {
  const size = `${fixed(wanted)} mm`;
  if (!needed.ok)
    return `To show ${size} no number of readings is enough: pencil, caliper and thread alone are too wide.`;
  if (needed.readings > mostReadings)
    return `To show ${size} it would take ${needed.readings} readings a side: use finer tools instead.`;
  return `To show ${size} takes ${counted(needed.readings, 'reading', 'readings')} a side.`;
}

/**
 * What the figure of own readings says: the error, from where a difference is real, and how well the error is
 * known.
 */
export function measuringErrorSays(
  { repeats, tem, passes, one, all, needed }: Result,
  state: State,
): Readonly<{ answer: string; doubt: string }> {
  const pairs = repeats.length;
  const comparisons = Math.round(state.comparisons);
  const together = comparisons === 1 ? 'one comparison' : `${comparisons} comparisons together`;
  const alone = comparisons === 1 ? '' : ` A single one is real from ${fixed(one.value, 2)} mm.`;
  const shift =
    passes.ok && passes.isShifted
      ? ` The second pass reads ${fixed(Math.abs(passes.shift.value), 2)} mm ${passes.shift.value > 0 ? 'higher' : 'lower'} than the first: find out why before you use this error.`
      : '';
  return {
    answer: `Your technical error is ${fixed(tem.value, 2)} mm. With ${counted(Math.round(state.readings), 'reading', 'readings')} a side, a difference is real from ${fixed(all.value, 2)} mm (${together}).`,
    doubt:
      `${alone} ${neededSays(needed, state.wanted)} ${counted(pairs, 'pair', 'pairs')} put your error between ${fixed(tem.lo, 2)} and ${fixed(tem.hi, 2)} mm.${shift}`
        .trim()
        .replace(/(^|\. )one pair put/, '$1One pair puts'),
  };
}

/** What keeps the result from being used: too few pairs, pairs that never differ. */
export function measuringErrorCaution({ repeats, tem }: Result): string | undefined {
  if (repeats.length < enoughPairs)
    return `Fewer than ${enoughPairs} pairs do not know their own spread. Read more before you trust this number.`;
  if (tem.value === 0)
    return 'No pair differs. Either the ruler is too coarse, or the first numbers were remembered.';
  return undefined;
}

/** The table of the result: names and values. */
export function measuringErrorRows({
  tem,
  passes,
  one,
  all,
  repeatMm,
  budgetMm,
}: Result & Readonly<{ repeatMm: number; budgetMm: number }>): readonly Readonly<{
  name: string;
  value: string;
}>[] {
  const range = ({ value, lo, hi }: Spread) => `${fixed(value, 2)} mm (${fixed(lo, 2)} to ${fixed(hi, 2)})`;
  const shift = passes.ok
    ? [
        {
          name: 'Second pass minus first, mean',
          value: `${signed(passes.shift.value, 2)} mm (${fixed(passes.shift.lo, 2)} to ${fixed(passes.shift.hi, 2)})`,
        },
        { name: 'Error once that shift is taken away', value: `${fixed(passes.scatterMm, 2)} mm` },
      ]
    : [];
  return [
    { name: 'Technical error', value: range(tem) },
    { name: 'Repeatability: 95 of 100 pairs differ by less', value: `${fixed(repeatMm, 2)} mm` },
    ...shift,
    { name: 'Pencil, caliper and thread together', value: `${fixed(budgetMm, 2)} mm` },
    { name: 'Smallest real difference, one comparison', value: range(one) },
    { name: 'Smallest real difference, all comparisons', value: range(all) },
  ];
}

/** A pair of the table: second minus first. */
export function pairWords(firstMm: number, secondMm: number): string {
  return signed(secondMm - firstMm, 1);
}
