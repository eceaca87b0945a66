import type { Taken } from '../marks/markSet.ts';

export type Unfit = 'not-at-rest' | 'not-upright' | 'skin-not-normal';

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
