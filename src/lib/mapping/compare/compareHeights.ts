import { intervalAround, type Interval } from '../../quantities/interval.ts';
import { differenceUncertaintyMm, type Reading } from '../uncertainty/budget.ts';
import { familyCoverageFactor } from '../uncertainty/familyWise.ts';
import type { Side, Taken } from '../marks/markSet.ts';
import { unlikeParts, type Unlike } from './unlikeParts.ts';

/** The heights of both arches above the pupils in one reading, mm, and how it was taken. */
export type HeightReading = Readonly<{ taken: Taken; archMm: Readonly<Record<Side, number>> }>;

export type HeightsCompared = Readonly<{
  /** Left minus right in each reading, mm. */
  first: Interval;
  second: Interval;
  /** Second minus first on each side, mm; refused where the readings were not taken alike. */
  change:
    | (Readonly<{ ok: true }> & Readonly<Record<Side, Interval>>)
    | Readonly<{ ok: false; reasons: readonly Unlike[] }>;
}>;

/**
 * Left against right within two readings and, where they were taken alike, second against first on each side.
 * Every height was read alike, so each difference of two has the uncertainty √2 u; the coverage factor counts
 * the differences that are shown: two, or four with the changes (Šidák).
 */
export function compareHeights(
  first: HeightReading,
  second: HeightReading,
  reading: Reading,
): HeightsCompared {
  const reasons = unlikeParts(first.taken, second.taken);
  const k = familyCoverageFactor(reasons.length === 0 ? 4 : 2);
  const u = differenceUncertaintyMm(reading);
  const sides = ({ archMm }: HeightReading) => intervalAround(archMm.left - archMm.right, u, k);
  const moved = (side: Side) => intervalAround(second.archMm[side] - first.archMm[side], u, k);
  return {
    first: sides(first),
    second: sides(second),
    change:
      reasons.length === 0
        ? { ok: true, right: moved('right'), left: moved('left') }
        : { ok: false, reasons },
  };
}
