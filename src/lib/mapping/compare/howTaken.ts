import type { Taken } from '../marks/markSet.ts';

export type Unlike = 'pose-differs' | 'posture-differs' | 'skin-differs';
export type Unfit = 'not-at-rest' | 'not-upright' | 'skin-not-normal';

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

/**
 * What keeps a reading from being mapped; empty for a face at rest (eyes open or closed), upright, on skin
 * that is neither numb nor swollen.
 */
export function unfitToMap({ pose, posture, skin }: Taken): readonly Unfit[] {
  const reasons: Unfit[] = [];
  if (pose === 'raised' || pose === 'frown') reasons.push('not-at-rest');
  if (posture === 'lying') reasons.push('not-upright');
  if (skin !== 'normal') reasons.push('skin-not-normal');
  return reasons;
}
