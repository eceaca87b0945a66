import type { Brow } from '../marks/brow.ts';
import type { FrontEdge } from '../placing/drawnLengths.ts';
import type { NoOutline, Outline } from './outline.ts';
import { thicknessAt, type NoThickness, type Thickness } from './thickness.ts';

/**
 * Where a station stands: at a share of the level length from the front (0), measured at `edge`, to the tail
 * tip (1), mm from the midline.
 */
export function stationMm(brow: Brow, edge: FrontEdge, share: number): number {
  return brow[edge].uMm + share * (brow.tail.uMm - brow[edge].uMm);
}

/** Thickness at one station; an outline that is none says so. */
export function thicknessAtStation(
  outline: Outline | NoOutline,
  edge: FrontEdge,
  share: number,
): Thickness | NoThickness | NoOutline {
  return outline.ok ? thicknessAt(outline, stationMm(outline.brow, edge, share)) : outline;
}
