/** A point of a head in space, millimetres: x to the client's left, y up, z towards the camera. */
export type SolidPoint = Readonly<{ xMm: number; yMm: number; zMm: number }>;

/** [x, y, z], millimetres, as tables hold them. */
export type SolidTuple = readonly [xMm: number, yMm: number, zMm: number];

/** A tuple of a table as a point. */
export function solidPoint([xMm, yMm, zMm]: SolidTuple): SolidPoint {
  return { xMm, yMm, zMm };
}

/** The same place on the other half of a symmetric head. */
export function mirroredSolid({ xMm, yMm, zMm }: SolidPoint): SolidPoint {
  return { xMm: -xMm, yMm, zMm };
}

/** The straight distance between two points in space, mm. */
export function solidDistanceMm(a: SolidPoint, b: SolidPoint): number {
  return Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm, b.zMm - a.zMm);
}

/** Rotates the plane (a, b) by so many degrees, a towards b. */
function rotate(a: number, b: number, deg: number): readonly [number, number] {
  const angle = (deg * Math.PI) / 180;
  return [a * Math.cos(angle) - b * Math.sin(angle), a * Math.sin(angle) + b * Math.cos(angle)];
}

/** About the vertical axis through the origin; positive brings the front (z) towards +x. */
export function turnedSolid({ xMm, yMm, zMm }: SolidPoint, deg: number): SolidPoint {
  const [z, x] = rotate(zMm, xMm, deg);
  return { xMm: x, yMm, zMm: z };
}

/** About the level axis from side to side through the origin; positive brings the front (z) up. */
export function noddedSolid({ xMm, yMm, zMm }: SolidPoint, deg: number): SolidPoint {
  const [z, y] = rotate(zMm, yMm, deg);
  return { xMm, yMm: y, zMm: z };
}

/** About the axis towards the camera through the origin; positive brings +x up. */
export function rolledSolid({ xMm, yMm, zMm }: SolidPoint, deg: number): SolidPoint {
  const [x, y] = rotate(xMm, yMm, deg);
  return { xMm: x, yMm: y, zMm };
}
