import type { Lab } from '#lib/colour/spaces/lab.ts';
import type { Lamp } from '#lib/colour/spectrum/lamps.ts';
import { fixed } from './number.ts';

export const lampWords = {
  D65: 'daylight (D65)',
  D50: 'warmer daylight (D50)',
  A: 'tungsten lamp (A)',
  'LED-B3': 'white LED (LED-B3)',
} as const satisfies Readonly<Record<Lamp, string>>;

export const oldWorkWords = {
  none: 'none: bare skin',
  'grey-blue': 'grey-blue',
  'ash-grey': 'ash grey',
  green: 'green',
  violet: 'violet',
  pink: 'pink',
  orange: 'orange',
} as const;

/** "six weeks", "one year", "two years". */
export function timeWords(years: number): string {
  return years === 0 ? 'six weeks' : years === 1 ? 'one year' : 'two years';
}

/** "L* 44.1, a* 11.0, b* 14.2" */
export function labWords({ l, a, b }: Lab): string {
  return `L* ${fixed(l)}, a* ${fixed(a)}, b* ${fixed(b)}`;
}

type Laid = Readonly<{
  skinL: number;
  skinA: number;
  skinB: number;
  oldWork: keyof typeof oldWorkWords;
  depth: number;
  coverage: number;
}>;
/**
 * The skin, what lies in it already and how the new work lies in it, for paper: there the fields are left
 * out.
 */
export function skinOnPaper(
  { skinL: l, skinA: a, skinB: b, oldWork, depth, coverage }: Laid,
  when = '',
): string {
  return `Skin${when} ${labWords({ l, a, b })}. Old pigment: ${oldWorkWords[oldWork].replace(/:.*/, '')}. Skin covered ${coverage} %, model depth ${depth} mm.`;
}
/** "3 × orange; 1 × iron black", for paper. */
export function dropsOnPaper(drops: readonly Readonly<{ name: string; count: number }>[]): string {
  return drops
    .filter(({ count }) => count > 0)
    .map(({ name, count }) => `${count} × ${name}`)
    .join('; ');
}

type Ends = readonly [number, number];
type Outlook = Readonly<{
  years: number;
  plain: Lab;
  lightness: Ends;
  leanRed: number;
  leanGreen: number;
  dark: Readonly<{ plain: Lab }>;
}>;
type Result =
  | Readonly<{
      ok: true;
      drops: number;
      whiteShare: number;
      hasSwatch: boolean;
      isOutsideMeasured: boolean;
      warmShare: number;
      outlook: Readonly<{ times: readonly Outlook[]; today: Lab; changes: number }>;
    }>
  | Readonly<{
      ok: false;
      reason: 'no-drops' | 'own-bottle-missing' | 'no-skin-like-spectrum' | 'old-pigment-not-reached';
    }>;

const ofHundred = (share: number) => `${fixed(100 * share, 0)} of 100`;

/** What is said where no colour can be predicted. */
export const mixRefusals = {
  'no-drops': { answer: 'There is no drop in the mix yet.', doubt: 'Give at least one bottle a drop.' },
  'own-bottle-missing': {
    answer: 'A bottle of your own is not here.',
    doubt: 'Open its file, or set its drops to zero.',
  },
  'no-skin-like-spectrum': {
    answer: 'No measured skin is like this colour.',
    doubt: 'Check the three numbers of the skin: they are read under daylight, before anything touches it.',
  },
  'old-pigment-not-reached': {
    answer: 'This old colour cannot be laid over this skin in the model.',
    doubt: 'Check the numbers of the skin.',
  },
} as const;

export const noFirstGone = 'A swatch does not say what goes first.';

/** What the mix is predicted to look like at six weeks and at two years, and how sure that is. */
export function mixSays(result: Result): Readonly<{ answer: string; doubt: string }> {
  if (!result.ok) return mixRefusals[result.reason];
  const { times } = result.outlook;
  const [first, last] = [times[0], times.at(-1)];
  if (!first || !last) return mixRefusals['no-drops'];
  const lean =
    Math.max(first.leanRed, first.leanGreen) < 0.1
      ? ''
      : ` In ${ofHundred(Math.max(first.leanRed, first.leanGreen))} it leans ${first.leanRed > first.leanGreen ? 'redder' : 'greener'}.`;
  const warm = result.hasSwatch
    ? noFirstGone
    : `If all yellow and red went first, ${labWords(last.dark.plain)} would be left.`;
  return {
    answer: `In this model, at six weeks: ${labWords(first.plain)}.`,
    doubt: `9 in 10 simulated healings land between L* ${fixed(first.lightness[0])} and ${fixed(first.lightness[1])}.${lean} At two years: ${labWords(last.plain)}. ${warm}`,
  };
}

/** What has to be said before anybody uses the number. */
export function mixCaution(result: Result): string | undefined {
  if (!result.ok) return undefined;
  if (result.whiteShare >= 0.1)
    return `White makes up ${ofHundred(result.whiteShare)} parts of the pigment. White hides nothing for long, and it can darken under a laser.`;
  if (result.hasSwatch) return 'A swatch does not say how much white is in it. Read its label.';
  if (result.isOutsideMeasured)
    return 'This skin lies outside the measured skins the model learned from: the prediction is less sure.';
  if (result.outlook.changes < 1) return 'At six weeks this mix hardly shows in this skin.';
  return undefined;
}
