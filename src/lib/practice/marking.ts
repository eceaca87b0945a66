import { isInRange, rangeAround, rangeEnds } from '../quantities/closedRange.ts';
import type { ClosedRange } from '../quantities/closedRange.ts';

/** What is right: a number inside one closed range, or one option of several. */
export type MarkableAnswer =
  | Readonly<{ kind: 'number'; range: ClosedRange; exact: number }>
  | Readonly<{ kind: 'choice'; correct: string; options: readonly string[] }>;

/**
 * What a named wrong method would have answered for these very givens, and the share of the marks it earns.
 */
export type SlipValue = Readonly<{ id: string; value: number | string; credit: number }>;

export type Marked =
  | Readonly<{ right: true; credit: 1 }>
  | Readonly<{ right: false; credit: number; slipId: string }>
  | Readonly<{ right: false; credit: 0; slipId?: never }>;

/** True when the reply cannot be told from the value by anyone who works as exactly as the answer asks. */
function isSameNumber(reply: number, value: number, range: ClosedRange): boolean {
  return isInRange(rangeAround(value, rangeEnds(range).tolerance, range.decimals), reply);
}

/**
 * Marks one reply. Right always wins over a slip. Among numeric slips the nearest value wins, the first on a
 * tie.
 * A wrong reply that no named method gives earns nothing and names nothing.
 */
export function mark(answer: MarkableAnswer, slips: readonly SlipValue[], reply: number | string): Marked {
  if (answer.kind === 'choice') {
    if (reply === answer.correct) return { right: true, credit: 1 };
    const slip = slips.find(({ value }) => value === reply);
    return slip ? { right: false, credit: slip.credit, slipId: slip.id } : { right: false, credit: 0 };
  }
  if (typeof reply !== 'number') return { right: false, credit: 0 };
  if (isInRange(answer.range, reply)) return { right: true, credit: 1 };
  let nearest: Readonly<{ slip: SlipValue; distance: number }> | undefined;
  for (const slip of slips) {
    if (typeof slip.value !== 'number' || !isSameNumber(reply, slip.value, answer.range)) continue;
    const distance = Math.abs(slip.value - reply);
    if (!nearest || distance < nearest.distance) nearest = { slip, distance };
  }
  return nearest
    ? { right: false, credit: nearest.slip.credit, slipId: nearest.slip.id }
    : { right: false, credit: 0 };
}
