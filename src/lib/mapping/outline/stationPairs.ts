import { intervalAround, type Interval } from '../../quantities/interval.ts';
import type { Brows } from '../marks/brow.ts';
import type { Side } from '../marks/markSet.ts';
import type { FrontEdge } from '../placing/drawnLengths.ts';
import { outlineOf, type NoOutline, type Outline } from './outline.ts';
import { thicknessAtStation } from './station.ts';
import type { NoThickness, Thickness } from './thickness.ts';
import { thicknessSlopes } from './thicknessSlopes.ts';

export type Outlines = Readonly<Record<Side, Outline | NoOutline>>;

/**
 * Shares of the level length from the front (0), measured at `edge`, to the tail tip (1); and how well the
 * marks were read.
 */
export type StationChoices = Readonly<{
  stations: readonly number[];
  edge: FrontEdge;
  /** Standard uncertainty of one coordinate of one mark, mm. */
  readingMm: number;
  k: number;
}>;

/** Thickness at the same share of both brows, and left minus right where both have one. */
export type StationPair = Readonly<
  Record<Side, Thickness | NoThickness | NoOutline> & { share: number; difference: Interval | undefined }
>;

/** Both outlines. */
export function outlinesOf({ right, left }: Brows): Outlines {
  return { right: outlineOf(right), left: outlineOf(left) };
}

/** Every station on both brows. The midline plays no part: a thickness is the same wherever the brow lies. */
export function stationPairs(
  brows: Brows,
  outlines: Outlines,
  { stations, edge, readingMm, k }: StationChoices,
): readonly StationPair[] {
  const rightSlopes = thicknessSlopes(brows.right, edge, stations);
  const leftSlopes = thicknessSlopes(brows.left, edge, stations);
  return stations.map((share, i) => {
    const right = thicknessAtStation(outlines.right, edge, share);
    const left = thicknessAtStation(outlines.left, edge, share);
    const [rightSlope, leftSlope] = [rightSlopes[i], leftSlopes[i]];
    const isKnown = right.ok && left.ok && rightSlope !== undefined && leftSlope !== undefined;
    return {
      share,
      right,
      left,
      difference: isKnown
        ? intervalAround(
            left.thicknessMm - right.thicknessMm,
            readingMm * Math.hypot(rightSlope, leftSlope),
            k,
          )
        : undefined,
    };
  });
}
