import type { Taken } from '../marks/markSet.ts';

export type Unlike = 'pose-differs' | 'posture-differs' | 'skin-differs';

/**
 * In what two readings of one face were not taken alike, in the order in which it is asked; empty when they
 * were. A raised or lying brow sits elsewhere, and numb or swollen skin is not the skin that heals: readings
 * unlike in any part are not compared.
 */
export function unlikeParts(first: Taken, second: Taken): readonly Unlike[] {
  const parts: Unlike[] = [];
  if (first.pose !== second.pose) parts.push('pose-differs');
  if (first.posture !== second.posture) parts.push('posture-differs');
  if (first.skin !== second.skin) parts.push('skin-differs');
  return parts;
}
