import type { PointMm } from '#lib/geometry/point.ts';
import type { MarkKey } from './marks.ts';

const at = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

/**
 * The placing marks of the wide-nosed demonstration face, as plain numbers: its drawing code stays off the
 * reader's phone. A test holds them equal. Invented.
 */
export const wideNoseMarks = {
  noseWingR: at(-18.6, -38),
  noseWingL: at(21.8, -38),
  innerCornerR: at(-16, -1),
  innerCornerL: at(16, -1),
  outerCornerR: at(-47, 1.6),
  outerCornerL: at(47, 1.6),
  frontLowerR: at(-15.6, 11.4),
  frontLowerL: at(16.4, 11.4),
  frontTopR: at(-16.3, 18),
  frontTopL: at(17.1, 18),
  archTopR: at(-39.3, 21.2),
  archTopL: at(39.3, 21.2),
  tailR: at(-56, 10.2),
  tailL: at(53.4, 14),
} as const satisfies Partial<Record<MarkKey, PointMm>>;

export type PlacingKey = keyof typeof wideNoseMarks;
export const placingKeys = Object.keys(wideNoseMarks).filter(
  (key): key is PlacingKey => key in wideNoseMarks,
);
