import { solidDistanceMm, type SolidPoint } from '../../geometry/solid.ts';

export type PointAlongSkin =
  | Readonly<{ ok: true; point: SolidPoint }>
  | Readonly<{ ok: false; reason: 'too-few-points' }>;

/**
 * The point at a share (0 to 1) of the length along the skin, on points that run from front to tail. The face
 * turns away outwards, so more skin fits into a millimetre across: the point lies further out than the same
 * share seen from the front.
 */
export function pointAlongSkin(points: readonly SolidPoint[], share: number): PointAlongSkin {
  const [front, ...rest] = points;
  if (!front || rest.length === 0) return { ok: false, reason: 'too-few-points' };
  let leftMm =
    share * points.reduce((sum, point, i) => sum + solidDistanceMm(points[i - 1] ?? point, point), 0);
  let from = front;
  for (const to of rest) {
    const stepMm = solidDistanceMm(from, to);
    if (leftMm < stepMm) return { ok: true, point: between(from, to, leftMm / stepMm) };
    leftMm -= stepMm;
    from = to;
  }
  return { ok: true, point: from };
}

function between(from: SolidPoint, to: SolidPoint, t: number): SolidPoint {
  const mix = (a: number, b: number) => a + t * (b - a);
  return { xMm: mix(from.xMm, to.xMm), yMm: mix(from.yMm, to.yMm), zMm: mix(from.zMm, to.zMm) };
}
