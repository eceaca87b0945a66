import type { FacePoint } from '../marks/faceFrame.ts';
import { halfEdgeCurve, halfEdgeHeightMm, type Cubic, type HalfEdge } from './halfEdge.ts';
import type { Outline } from './outline.ts';

/**
 * The outline as four exact cubic Bézier curves, each beginning where the one before ended: front lower –
 * arch lower – tail – arch top – front top. A straight line from the last point to the first closes it.
 */
export function outlineCurves({ upper, lower }: Outline): readonly [Cubic, Cubic, Cubic, Cubic] {
  return [
    halfEdgeCurve(lower.front),
    reversed(halfEdgeCurve(lower.tail)),
    halfEdgeCurve(upper.tail),
    reversed(halfEdgeCurve(upper.front)),
  ];
}

/**
 * The outline as a polygon in the same order, each half edge cut into so many steps of equal width; the first
 * point is not repeated.
 */
export function outlinePolygon({ upper, lower }: Outline, steps: number): readonly FacePoint[] {
  const round = [
    ...cut(lower.front, steps),
    ...cut(lower.tail, steps).reverse(),
    ...cut(upper.tail, steps),
    ...cut(upper.front, steps).reverse(),
  ];
  return round.filter((point, i) => point !== round[i - 1]);
}

function cut(half: HalfEdge, steps: number): FacePoint[] {
  const { end, arch } = half;
  return Array.from({ length: steps + 1 }, (_, i) => {
    if (i === 0) return end;
    if (i === steps) return arch;
    const uMm = end.uMm + ((arch.uMm - end.uMm) * i) / steps;
    return { uMm, vMm: halfEdgeHeightMm(half, uMm) };
  });
}

function reversed([a, b, c, d]: Cubic): Cubic {
  return [d, c, b, a];
}
