import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import { toFace, type FaceFrame, type FacePoint } from '../marks/faceFrame.ts';
import type { MarkSet } from '../marks/markSet.ts';

/** One brow mark on both sides, and left minus right: outward (u) and up (v), mm. */
export type MarkSides = Readonly<{ right: FacePoint; left: FacePoint; outwardMm: number; upMm: number }>;

/** Both sides of every brow mark in the face's frame. */
export function compareSides({ brows }: MarkSet, frame: FaceFrame): BrowRecord<MarkSides> {
  return forBrowMarks((mark) => {
    const right = toFace(brows[mark].right, 'right', frame);
    const left = toFace(brows[mark].left, 'left', frame);
    return { right, left, outwardMm: left.uMm - right.uMm, upMm: left.vMm - right.vMm };
  });
}
