import type { PointMm } from './point.ts';

/** A direction of length 1 in the picture's frame. */
export type Direction = Readonly<{ x: number; y: number }>;

/** The direction at an angle from the picture's x axis, counter-clockwise, radians. */
export function directionAt(angleRad: number): Direction {
  return { x: Math.cos(angleRad), y: Math.sin(angleRad) };
}

/** A quarter turn counter-clockwise: from the client's left to up. */
export function quarterTurn({ x, y }: Direction): Direction {
  return { x: -y, y: x };
}

/** How far a point lies along a direction, from the frame's origin, mm. */
export function alongMm({ xMm, yMm }: PointMm, { x, y }: Direction): number {
  return xMm * x + yMm * y;
}

/** The angle of a direction from the picture's x axis, counter-clockwise, −180° to 180°. */
export function angleDeg({ x, y }: Direction): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}
