import type { FacePoint } from '../marks/faceFrame.ts';
import type { Outline } from '../outline/outline.ts';
import { halfEdgeHeightMm, type HalfEdge } from '../outline/halfEdge.ts';

/** Corners along each half of an edge. */
const steps = 5;

/**
 * The old shape of work that was once drawn through five marks and has spread by so many mm since: both edges
 * moved straight up and down, front and tail moved out along the brow. Corners against the clock, lower edge
 * first.
 */
export function spreadShape(
  { upper, lower, brow: { frontLower, frontTop, tail } }: Outline,
  spreadMm: number,
): readonly FacePoint[] {
  const half = (edge: HalfEdge, sign: 1 | -1): readonly FacePoint[] =>
    Array.from({ length: steps }, (_, i) => {
      const uMm = edge.end.uMm + ((edge.arch.uMm - edge.end.uMm) * i) / steps;
      return { uMm, vMm: halfEdgeHeightMm(edge, uMm) + sign * spreadMm };
    });
  const arch = (edge: HalfEdge, sign: 1 | -1): FacePoint => ({
    uMm: edge.arch.uMm,
    vMm: edge.arch.vMm + sign * spreadMm,
  });
  // The tail's own corner is the tip; the two just above and below it would fold back over it.
  const inward = (corners: readonly FacePoint[]) => corners.slice(1);
  const corners = [
    { uMm: frontLower.uMm - spreadMm, vMm: frontLower.vMm - spreadMm },
    ...inward(half(lower.front, -1)),
    arch(lower.front, -1),
    ...[...inward(half(lower.tail, -1))].reverse(),
    { uMm: tail.uMm + spreadMm, vMm: tail.vMm },
    ...inward(half(upper.tail, 1)),
    arch(upper.front, 1),
    ...[...inward(half(upper.front, 1))].reverse(),
    { uMm: frontTop.uMm - spreadMm, vMm: frontTop.vMm + spreadMm },
  ];
  return corners;
}
