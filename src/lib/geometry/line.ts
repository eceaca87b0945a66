import type { PointMm } from './point.ts';
import { alongMm, type Direction } from './direction.ts';

/**
 * The line n·p = c: `normal` has length 1, `offsetMm` is its distance from the frame's origin along the
 * normal.
 */
export type Line = Readonly<{ normal: Direction; offsetMm: number }>;

/** Distance of a point from a line, positive on the side the normal points to, mm. */
export function signedDistanceMm(point: PointMm, { normal, offsetMm }: Line): number {
  return alongMm(point, normal) - offsetMm;
}

/** The mirror image of a point: p' = p − 2(n·p − c)n. */
export function reflectInLine(point: PointMm, line: Line): PointMm {
  const twice = 2 * signedDistanceMm(point, line);
  return { xMm: point.xMm - twice * line.normal.x, yMm: point.yMm - twice * line.normal.y };
}

/** The point of a line that lies nearest to a given point. */
export function footOnLine(point: PointMm, line: Line): PointMm {
  const off = signedDistanceMm(point, line);
  return { xMm: point.xMm - off * line.normal.x, yMm: point.yMm - off * line.normal.y };
}
