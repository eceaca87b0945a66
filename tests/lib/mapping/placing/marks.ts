import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import type { PlacingMarks, SideMarks } from '#lib/mapping/placing/placingMarks.ts';

export const at = (uMm: number, vMm: number): FacePoint => ({ uMm, vMm });

/** One side with round numbers: the tail line runs from (20, −40) to (50, 0), three across for four up. */
export const roundSide: SideMarks = {
  noseWing: at(20, -40),
  innerCorner: at(16, -1),
  outerCorner: at(50, 0),
  frontLower: at(15, 10),
  frontTop: at(16, 17),
  archTop: at(40, 21),
  tail: at(56, 12),
};

/** Both sides, with what differs from the round side. */
export function sides(right: Partial<SideMarks> = {}, left: Partial<SideMarks> = {}): PlacingMarks {
  return { right: { ...roundSide, ...right }, left: { ...roundSide, ...left } };
}
