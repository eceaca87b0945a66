import { halfEdgeMm } from '../placing/drawnLengths.ts';
import { edgeAreaMm2, type Edge } from './edge.ts';
import type { Outline } from './outline.ts';

/**
 * Area inside the outline, mm², exact: under the upper edge, less under the lower edge, less the trapezoid
 * under the straight front where its top leans towards the midline (the trapezoid is added where the top
 * leans outward).
 */
export function outlineAreaMm2({ upper, lower, brow: { frontLower, frontTop } }: Outline): number {
  const leanMm2 = ((frontLower.uMm - frontTop.uMm) * (frontLower.vMm + frontTop.vMm)) / 2;
  return edgeAreaMm2(upper) - edgeAreaMm2(lower) - leanMm2;
}

/**
 * Length of one edge along itself, mm, by Simpson's rule on each half (see halfEdgeMm); error below 2e-5 mm
 * on any brow.
 */
export function edgeLengthMm({ front, tail }: Edge): number {
  return halfEdgeMm(front.end, front.arch) + halfEdgeMm(tail.end, tail.arch);
}

/** The way once round the outline, mm: both edges and the straight front. Error below 5e-5 mm on any brow. */
export function outlinePerimeterMm({ upper, lower, brow: { frontLower, frontTop } }: Outline): number {
  return (
    edgeLengthMm(upper) +
    edgeLengthMm(lower) +
    Math.hypot(frontTop.uMm - frontLower.uMm, frontTop.vMm - frontLower.vMm)
  );
}
