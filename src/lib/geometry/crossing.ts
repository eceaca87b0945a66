import type { Line } from './line.ts';
import type { PointMm } from './point.ts';

/**
 * The line through two points; its normal points to the picture's right where the line runs down. Undefined
 * for one point twice.
 */
export function lineThrough(top: PointMm, foot: PointMm): Line | undefined {
  const length = Math.hypot(top.xMm - foot.xMm, top.yMm - foot.yMm);
  if (!(length > 0)) return undefined;
  const normal = { x: (top.yMm - foot.yMm) / length, y: (foot.xMm - top.xMm) / length };
  return { normal, offsetMm: normal.x * top.xMm + normal.y * top.yMm };
}

/**
 * The line through the middle of two points at right angles to the line between them. Undefined for one point
 * twice.
 */
export function bisectorOf(right: PointMm, left: PointMm): Line | undefined {
  const length = Math.hypot(left.xMm - right.xMm, left.yMm - right.yMm);
  if (!(length > 0)) return undefined;
  const normal = { x: (left.xMm - right.xMm) / length, y: (left.yMm - right.yMm) / length };
  return { normal, offsetMm: (normal.x * (right.xMm + left.xMm) + normal.y * (right.yMm + left.yMm)) / 2 };
}

/** Where a line crosses a level height, mm. Undefined for a line that is itself level. */
export function xAtHeightMm({ normal, offsetMm }: Line, yMm: number): number | undefined {
  return Math.abs(normal.x) < 1e-9 ? undefined : (offsetMm - normal.y * yMm) / normal.x;
}
