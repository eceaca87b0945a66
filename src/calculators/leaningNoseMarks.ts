import type { PointMm } from '#lib/geometry/point.ts';
import type { MarkPoints } from './marks.ts';

const at = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

/**
 * The reading of the drawn face of "The midline when the nose leans", as plain numbers: the drawing code that
 * made them stays off the reader's phone. A test holds them equal to that face's marks. Invented.
 */
export const leaningNoseMarks: MarkPoints = {
  innerCornerR: at(-16.5, -0.6),
  innerCornerL: at(16.8, -1.3),
  outerCornerR: at(-46.8, 2.5),
  outerCornerL: at(46.5, 0.4),
  pupilR: at(-31.7, 0.6),
  pupilL: at(31.5, -0.6),
  noseWingR: at(-14, -37.6),
  noseWingL: at(22, -38.6),
  glabella: at(0.6, 14),
  nasion: at(0.5, 6),
  subnasale: at(3.8, -47.1),
  chin: at(-2.6, -113),
  frontLowerR: at(-14, 11.4),
  frontLowerL: at(14.9, 11),
  frontTopR: at(-14.5, 17.8),
  frontTopL: at(15.8, 17.6),
  archTopR: at(-39.2, 20.4),
  archTopL: at(40.6, 20.1),
  archLowerR: at(-38.6, 14.6),
  archLowerL: at(39.7, 14.3),
  tailR: at(-54.4, 14.8),
  tailL: at(55.4, 12.6),
};
