import { includesZero, intervalAround, type Interval } from '../../quantities/interval.ts';
import type { Repeat } from './technicalError.ts';
import { studentFactor } from './studentFactor.ts';

export type PassComparison =
  | Readonly<{
      ok: true;
      /** Mean of second minus first, with Student's t for as many pairs as there are, mm. */
      shift: Interval;
      /** Spread of one reading once the shift is taken away: s_d/√2, mm. */
      scatterMm: number;
      /** True when the shift's interval leaves 0 out: the two passes were not read alike. */
      isShifted: boolean;
    }>
  | Readonly<{ ok: false; reason: 'fewer-than-two-pairs' }>;

/**
 * Parts what is constant between two passes from what scatters. Dahlberg's technical error holds both: TEM²
 * is the scatter's square, near enough, plus half the shift's (Houston, Am. J. Orthod. 83:382, 1983, asks for
 * the two to be told apart).
 * A shift is a ruler laid anew, another zero, a head held otherwise: find the cause, more readings do not
 * cure it.
 */
export function comparePasses(repeats: readonly Repeat[]): PassComparison {
  const count = repeats.length;
  if (count < 2) return { ok: false, reason: 'fewer-than-two-pairs' };
  const differences = repeats.map(({ firstMm, secondMm }) => secondMm - firstMm);
  const meanMm = differences.reduce((sum, difference) => sum + difference, 0) / count;
  const deviationMm = Math.sqrt(
    differences.reduce((sum, difference) => sum + (difference - meanMm) ** 2, 0) / (count - 1),
  );
  const shift = intervalAround(meanMm, deviationMm / Math.sqrt(count), studentFactor(count - 1));
  return { ok: true, shift, scatterMm: deviationMm / Math.SQRT2, isShifted: !includesZero(shift) };
}
