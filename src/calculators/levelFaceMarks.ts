import type { PointMm } from '#lib/geometry/point.ts';
import type { MarkPoints } from './marks.ts';

const at = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

/**
 * The marks of the level demonstration face, as plain numbers: its drawing code stays off the reader's phone.
 * A test holds them equal. Invented.
 */
export const levelFaceMarks: MarkPoints = {
  innerCornerR: at(-16, -1),
  innerCornerL: at(16, -1),
  outerCornerR: at(-47, 1.6),
  outerCornerL: at(47, 1.6),
  pupilR: at(-31.5, 0),
  pupilL: at(31.5, 0),
  noseWingR: at(-16.3, -38),
  noseWingL: at(16.3, -38),
  glabella: at(0, 14),
  nasion: at(0, 6),
  subnasale: at(0, -47),
  chin: at(0, -113),
  frontLowerR: at(-16.4, 10.9),
  frontLowerL: at(16, 11.4),
  frontTopR: at(-17.1, 17.5),
  frontTopL: at(16.7, 18),
  archTopR: at(-41.3, 19.8),
  archTopL: at(41.3, 21.2),
  archLowerR: at(-40.5, 14.1),
  archLowerL: at(40.5, 15.3),
  tailR: at(-56.6, 13.5),
  tailL: at(56.2, 14),
};
