import type { FacePoint } from '../marks/faceFrame.ts';
import { edgeHeightMm, type Edge } from './edge.ts';
import type { Edges } from './edges.ts';

/**
 * Where the line through a point, square to a slope (mm up for each mm outward), meets the two edges: the
 * first hits met from above and below the point. Exact to about 1e-12 mm. Undefined where it leaves the brow
 * without meeting an edge.
 */
export function acrossAt(
  { upper, lower }: Edges,
  through: FacePoint,
  slope: number,
): Readonly<{ upper: FacePoint; lower: FacePoint }> | undefined {
  const over = hitOn(upper, through, slope);
  const under = hitOn(lower, through, slope);
  return over && under && { upper: over, lower: under };
}

const stepMm = 1;

/**
 * Walks along the edge from above or below the centre until it has crossed the normal, then closes in on the
 * crossing (false position, Illinois: the end that stays put counts half). The two ends lie on either side of
 * it all the while.
 */
function hitOn(edge: Edge, centre: FacePoint, slope: number): FacePoint | undefined {
  /** How far a point of the edge lies outward of the normal, times a constant. */
  const offMm = (uMm: number) =>
    uMm - centre.uMm + slope * ((edgeHeightMm(edge, uMm) ?? centre.vMm) - centre.vMm);
  const start = { uMm: centre.uMm, off: offMm(centre.uMm) };
  const lastMm = start.off > 0 ? edge.front.end.uMm : edge.tail.end.uMm;
  let near = start;
  let far = start;
  while (far.off * start.off > 0) {
    if (far.uMm === lastMm) return undefined;
    near = far;
    const uMm = near.uMm + Math.max(-stepMm, Math.min(stepMm, lastMm - near.uMm));
    far = { uMm, off: offMm(uMm) };
  }
  for (let i = 0; i < 60 && Math.abs(far.off) > 1e-13; i++) {
    const uMm = far.uMm - (far.off * (far.uMm - near.uMm)) / (far.off - near.off);
    const middle = { uMm, off: offMm(uMm) };
    near = middle.off * far.off < 0 ? far : { ...near, off: near.off / 2 };
    far = middle;
  }
  const vMm = edgeHeightMm(edge, far.uMm);
  return vMm === undefined ? undefined : { uMm: far.uMm, vMm };
}
