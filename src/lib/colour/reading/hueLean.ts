import type { Span } from './labBox.ts';
import { readingValues } from '../numbers/reading.ts';

/** Which way a skin leans. `not-shown`: its interval reaches over a limit. */
export type HueLean = 'red' | 'between' | 'yellow' | 'not-shown';

/** The lean of one hue angle, degrees. The two limits are editorial: no study sets them. */
export function leanOf(hueDeg: number): Exclude<HueLean, 'not-shown'> {
  if (hueDeg < readingValues.leansRedBelowDeg) return 'red';
  return hueDeg < readingValues.leansYellowFromDeg ? 'between' : 'yellow';
}

/** The lean of a hue angle known to an interval: said only where both ends agree. */
export function hueLean({ lo, hi }: Pick<Span, 'lo' | 'hi'>): HueLean {
  const lean = leanOf(lo);
  return lean === leanOf(hi) ? lean : 'not-shown';
}
