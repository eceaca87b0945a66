import { isInRange, rangeAround, roundScaled } from '#lib/quantities/closedRange.ts';

/**
 * True when every wrong value lies outside the right range by more than the tolerance, and wrong values
 * differ from each other by at least twice the tolerance: a reply then names one method and no other.
 */
export function areApart(right: number, wrong: readonly number[], tolerance: number): boolean {
  const twice = rangeAround(right, 2 * tolerance, 1);
  if (wrong.some((value) => isInRange(twice, roundScaled(value, 1) / 10))) return false;
  const sorted = wrong.map((value) => roundScaled(value, 1)).sort((a, b) => a - b);
  const least = Math.round(tolerance * 20);
  return sorted.every((value, i) => i === 0 || value - (sorted[i - 1] ?? 0) >= least);
}
