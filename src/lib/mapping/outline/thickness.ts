import type { FacePoint } from '../faceFrame.ts';
import { centreAt } from './centreline.ts';
import { edgeHeightMm, type Edge } from './edge.ts';
import type { Outline } from './outline.ts';

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

/** Thickness of an outline at u. Each hit is the first one met from the centreline; exact to about 1e-12 mm. */
export function thicknessAt({ upper, lower }: Outline, uMm: number): Thickness | NoThickness {
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

const stepMm = 0.25;
const halvings = 50;

/** Walks along the edge from above or below the centre until it has crossed the normal, then halves the last step. */
function hitOn(edge: Edge, centre: FacePoint, slope: number): FacePoint | undefined {
  /** How far a point of the edge lies outward of the normal, times a constant; undefined beyond the edge. */
  const offMm = (uMm: number) => {
    const vMm = edgeHeightMm(edge, uMm);
    return vMm === undefined ? undefined : uMm - centre.uMm + slope * (vMm - centre.vMm);
  };
  const way = (offMm(centre.uMm) ?? 0) > 0 ? -1 : 1;
  const lastMm = way > 0 ? edge.tail.end.uMm : edge.front.end.uMm;
  let before = centre.uMm;
  let after = before;
  while (way * (offMm(after) ?? 0) < 0) {
    if (after === lastMm) return undefined;
    before = after;
    after = way > 0 ? Math.min(lastMm, before + stepMm) : Math.max(lastMm, before - stepMm);
  }
  for (let i = 0; i < halvings; i++) {
    const middle = (before + after) / 2;
    if (way * (offMm(middle) ?? 0) < 0) before = middle;
    else after = middle;
  }
  const vMm = edgeHeightMm(edge, after);
  return vMm === undefined ? undefined : { uMm: after, vMm };
}
