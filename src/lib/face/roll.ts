import type { PointMm } from '../geometry/point.ts';
import type { Spot } from './draw/spot.ts';

/** Turns a spot about the origin: positive rolls the head clockwise in the picture (towards the client's left). */
export function rolled([x, y]: Spot, rollDeg: number): Spot {
  const angle = (rollDeg * Math.PI) / 180;
  return [x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)];
}

export function rolledPoint(spot: Spot, rollDeg: number): PointMm {
  const [xMm, yMm] = rolled(spot, rollDeg);
  return { xMm, yMm };
}
