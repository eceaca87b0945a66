import { angleDeg } from '../../geometry/direction.ts';
import type { Line } from '../../geometry/line.ts';

/**
 * How far the head leans in the picture, degrees: the angle of the midline's normal (towards the client's
 * left) from the picture's horizontal. Positive: the client's left side is the higher one, the top of the
 * head leans to the client's right.
 */
export function rollDeg({ normal }: Line): number {
  return angleDeg(normal);
}
