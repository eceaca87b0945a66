import { normalShareBelow, normalUpperPoint } from '../../quantities/normal.ts';

/**
 * The spread σ of a difference that is normal around zero, from the mean of its size: mean |d| = σ √(2/π).
 * Half-normal form: assumed. Published intervals are a little wider than it says, so tails are a little
 * longer in life.
 */
export function spreadFromMeanSizeMm(meanSizeMm: number): number {
  return meanSizeMm * Math.sqrt(Math.PI / 2);
}

/** Share of people (0 to 1) whose two sides differ by at least so much, either way. */
export function shareAtLeast(differenceMm: number, meanSizeMm: number): number {
  return 2 * (1 - normalShareBelow(Math.abs(differenceMm) / spreadFromMeanSizeMm(meanSizeMm)));
}

/** The difference that a given share of people (0 to 1, ends excluded) reach or pass, mm. */
export function differenceReachedByMm(share: number, meanSizeMm: number): number {
  return spreadFromMeanSizeMm(meanSizeMm) * normalUpperPoint(share / 2);
}
