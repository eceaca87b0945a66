import type { Side } from '../marks/markSet.ts';

/** One mark on both sides: its heights, and how far each may be raised and lowered, mm. */
export type MarkRoom = Readonly<
  Record<Side, Readonly<{ vMm: number; raiseMostMm: number; lowerMostMm: number }>>
>;
/** How unwilling each side is to move: movement counts weight × move². */
export type SideWeights = Readonly<Record<Side, number>>;

/**
 * Where both sides meet with the least movement, no old work in the way: the weighted mean of the two
 * heights, held between the greatest lowest height and the least greatest height of the two: clamp(mean,
 * max(v − down), min(v + up)).
 * Undefined where the limits contradict: the gap is larger than the lower side may be raised plus the higher
 * side lowered.
 */
export function meetingHeightMm({ right, left }: MarkRoom, weights: SideWeights): number | undefined {
  const lowest = Math.max(right.vMm - right.lowerMostMm, left.vMm - left.lowerMostMm);
  const highest = Math.min(right.vMm + right.raiseMostMm, left.vMm + left.raiseMostMm);
  if (lowest > highest) return undefined;
  const mean = (weights.right * right.vMm + weights.left * left.vMm) / (weights.right + weights.left);
  return Math.min(highest, Math.max(lowest, mean));
}

/**
 * The difference that the limits of one mark leave at least, left minus right, mm: nought where the sides can
 * meet.
 */
export function leastDifferenceMm({ right, left }: MarkRoom): number {
  const above = left.vMm - left.lowerMostMm - (right.vMm + right.raiseMostMm);
  const below = right.vMm - right.lowerMostMm - (left.vMm + left.raiseMostMm);
  return above > 0 ? above : below > 0 ? -below : 0;
}
