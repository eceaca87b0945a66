import type { FacePoint } from '../marks/faceFrame.ts';
import { acrossAt } from './acrossAt.ts';
import { centreAt } from './centreline.ts';
import type { Edges } from './edges.ts';

/**
 * Thickness at one place: along the normal of the centreline, which is straight across the brow, and straight
 * up for comparison.
 */
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
  if (!centre) return { ok: false, reason: 'off-the-outline' };
  const { point, slope, straightUpMm } = centre;
  const hits = acrossAt({ upper, lower }, point, slope);
  if (!hits) return { ok: false, reason: 'too-near-the-front' };
  const length = Math.hypot(1, slope);
  return {
    ok: true,
    thicknessMm: Math.hypot(hits.upper.uMm - hits.lower.uMm, hits.upper.vMm - hits.lower.vMm),
    straightUpMm,
    centre: point,
    slope,
    normal: { u: -slope / length, v: 1 / length },
    ...hits,
  };
}
