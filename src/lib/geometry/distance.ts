import type { PointMm } from './point.ts';

/** The straight distance between two points, mm. */
export function distanceMm(a: PointMm, b: PointMm): number {
  return Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
}

/** The point half way between two points. */
export function midpoint(a: PointMm, b: PointMm): PointMm {
  return { xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 };
}
