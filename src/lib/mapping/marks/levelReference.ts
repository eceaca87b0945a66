import type { Direction } from '../../geometry/direction.ts';
import type { Line } from '../../geometry/line.ts';
import type { MarkSet } from './markSet.ts';

/**
 * What counts as level: at right angles to the midline, or along the eye corners, or along the pupils. Real
 * faces disagree.
 */
export const levelReferences = ['midline', 'eye-corners', 'pupils'] as const;
export type LevelReference = (typeof levelReferences)[number];

/**
 * The level direction, towards the client's left. The eye-corner line runs from the middle of the right eye's
 * two corners to the middle of the left eye's. Where two marks fall on one point the midline decides.
 */
export function levelDirection(reference: LevelReference, { pairs }: MarkSet, { normal }: Line): Direction {
  if (reference === 'midline') return normal;
  const used = reference === 'pupils' ? [pairs.pupil] : [pairs.innerCorner, pairs.outerCorner];
  const x = used.reduce((sum, { right, left }) => sum + left.xMm - right.xMm, 0);
  const y = used.reduce((sum, { right, left }) => sum + left.yMm - right.yMm, 0);
  const length = Math.hypot(x, y);
  return length > 0 ? { x: x / length, y: y / length } : normal;
}
