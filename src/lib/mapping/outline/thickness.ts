import type { FacePoint } from '../faceFrame.ts';
import { centreAt } from './centreline.ts';
import { edgeHeightMm, type Edge } from './edge.ts';
import type { Edges } from './edges.ts';

/** Thickness at one place: along the normal of the centreline, which is straight across the brow, and straight up for comparison. */
export type Thickness = Readonly<{
  ok: true;
  thicknessMm: number;
  straightUpMm: number;
  /** Where the normal is raised, and the centreline's slope there, mm up for each mm outward. */
  centre: FacePoint;
  slope: number;
  /** Direction of the normal, length 1, upwards: outward and up. */
  normal: Readonly<{ u: number; v: number }>;
  /** Where the normal meets the edges. */
  upper: FacePoint;
  lower: FacePoint;
}>;
/** Beyond the edges; or so near the front that its straight line cuts the normal before an edge does. */
export type NoThickness = Readonly<{ ok: false; reason: 'off-the-outline' | 'too-near-the-front' }>;

/** Thickness of a brow at u. Each hit is the first one met from the centreline; exact to about 1e-12 mm. */
export function thicknessAt({ upper, lower }: Edges, uMm: number): Thickness | NoThickness {
  const centre = centreAt({ upper, lower }, uMm);
  const [top, foot] = [edgeHeightMm(upper, uMm), edgeHeightMm(lower, uMm)];
  if (!centre || top === undefined || foot === undefined) return { ok: false, reason: 'off-the-outline' };
  const { point, slope } = centre;
  const over = hitOn(upper, point, slope);
  const under = hitOn(lower, point, slope);
  if (!over || !under) return { ok: false, reason: 'too-near-the-front' };
  const length = Math.hypot(1, slope);
  return {
    ok: true,
    thicknessMm: Math.hypot(over.uMm - under.uMm, over.vMm - under.vMm),
    straightUpMm: top - foot,
    centre: point,
    slope,
    normal: { u: -slope / length, v: 1 / length },
    upper: over,
    lower: under,
  };
}

const stepMm = 1;

/**
 * Walks along the edge from above or below the centre until it has crossed the normal, then closes in on the crossing
 * (false position, Illinois: the end that stays put counts half).
 */
function hitOn(edge: Edge, centre: FacePoint, slope: number): FacePoint | undefined {
  /** How far a point of the edge lies outward of the normal, times a constant. */
  const offMm = (uMm: number) => uMm - centre.uMm + slope * ((edgeHeightMm(edge, uMm) ?? centre.vMm) - centre.vMm);
  const way = offMm(centre.uMm) > 0 ? -1 : 1;
  const lastMm = way > 0 ? edge.tail.end.uMm : edge.front.end.uMm;
  let near = { uMm: centre.uMm, off: way * offMm(centre.uMm) };
  let far = near;
  while (far.off < 0) {
    if (far.uMm === lastMm) return undefined;
    near = far;
    const uMm = way > 0 ? Math.min(lastMm, near.uMm + stepMm) : Math.max(lastMm, near.uMm - stepMm);
    far = { uMm, off: way * offMm(uMm) };
  }
  for (let i = 0; i < 60 && far.off !== near.off && Math.abs(far.off) > 1e-13; i++) {
    const uMm = far.uMm - (far.off * (far.uMm - near.uMm)) / (far.off - near.off);
    const middle = { uMm, off: way * offMm(uMm) };
    near = middle.off * far.off < 0 ? far : { ...near, off: near.off / 2 };
    far = middle;
  }
  const vMm = edgeHeightMm(edge, far.uMm);
  return vMm === undefined ? undefined : { uMm: far.uMm, vMm };
}
