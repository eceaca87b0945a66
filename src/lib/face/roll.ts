import type { PointMm } from '../geometry/point.ts';
import type { Spot } from './spot.ts';

/**
 * Turns a spot about the origin. Positive: the client's left side comes higher, the top of the head leans to
 * the client's right.
 */
export function rolled([x, y]: Spot, rollDeg: number): Spot {
  const angle = (rollDeg * Math.PI) / 180;
  return [x * Math.cos(angle) - y * Math.sin(angle), y * Math.cos(angle) + x * Math.sin(angle)];
}

export function rolledPoint(spot: Spot, rollDeg: number): PointMm {
  const [xMm, yMm] = rolled(spot, rollDeg);
  return { xMm, yMm };
}
