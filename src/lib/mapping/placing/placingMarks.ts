import { type FaceFrame, type FacePoint, toFace } from '../marks/faceFrame.ts';
import type { MarkSet, Side } from '../marks/markSet.ts';

/** The marks that front and tail are placed by: three of the face, four of the brow. */
export const placingMarkNames = [
  'noseWing',
  'innerCorner',
  'outerCorner',
  'frontLower',
  'frontTop',
  'archTop',
  'tail',
] as const;
export type PlacingMark = (typeof placingMarkNames)[number];

/** Both sides in the face's frame: uMm outward from the midline, vMm up from the pupils. */
export type SideMarks = Readonly<Record<PlacingMark, FacePoint>>;
export type PlacingMarks = Readonly<Record<Side, SideMarks>>;

/** The placing marks of a reading, once its midline and its level are settled. */
export function placingMarksOf({ pairs, brows }: MarkSet, frame: FaceFrame): PlacingMarks {
  const of = (side: Side): SideMarks => ({
    noseWing: toFace(pairs.noseWing[side], side, frame),
    innerCorner: toFace(pairs.innerCorner[side], side, frame),
    outerCorner: toFace(pairs.outerCorner[side], side, frame),
    frontLower: toFace(brows.frontLower[side], side, frame),
    frontTop: toFace(brows.frontTop[side], side, frame),
    archTop: toFace(brows.archTop[side], side, frame),
    tail: toFace(brows.tail[side], side, frame),
  });
  return { right: of('right'), left: of('left') };
}
