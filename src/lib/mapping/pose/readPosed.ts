import type { Line } from '../../geometry/line.ts';
import { faceFrame, toFace } from '../marks/faceFrame.ts';
import { fitMidline, type NoMidline } from '../midline/midline.ts';
import { mirrorMarksOf } from '../marks/mirrorMarks.ts';
import type { MarkSet, PairMarks, Side } from '../marks/markSet.ts';
import { compareSides } from '../compare/sides.ts';

/** One number for each of the three upper brow marks. */
export type AtBrow = Readonly<{ front: number; arch: number; tail: number }>;

/**
 * What a picture of an exactly symmetric head shows as if it were a difference. Left minus right,
 * millimetres.
 */
export type FalseDifferences = Readonly<{
  ok: true;
  /** The midline as the picture's marks give it. */
  midline: Line;
  /** Distance from the midline. */
  outwardMm: AtBrow;
  /** Height along the face's own midline. */
  upMm: AtBrow;
  /** Height against the picture's edge: a tilt shows here. */
  upInPictureMm: AtBrow;
  /** Front to tail, upper marks, as seen. */
  lengthMm: Readonly<Record<Side, number>>;
  /** The arch's place between front (0) and tail (1). */
  archShare: Readonly<Record<Side, number>>;
  /** Lower end of the tail above the lower front, mean of both sides. */
  tailOverFrontMm: number;
}>;

/**
 * Reads a picture's marks as any picture is read: the unweighted midline of all eight kinds of mark, and the
 * frame at right angles to it. `lowerTail` is the end of each brow's lower edge, which a mark set does not
 * hold.
 */
export function readPosed(marks: MarkSet, lowerTail: PairMarks): FalseDifferences | NoMidline {
  const fit = fitMidline(mirrorMarksOf(marks));
  if (!fit.ok) return fit;
  const frame = faceFrame(marks, fit.line, 'midline');
  const { frontTop: front, archTop: arch, tail, frontLower } = compareSides(marks, frame);
  const { brows } = marks;
  const inPicture = (mark: 'frontTop' | 'archTop' | 'tail') => brows[mark].left.yMm - brows[mark].right.yMm;
  const length = (side: Side) => tail[side].uMm - front[side].uMm;
  const share = (side: Side) => (arch[side].uMm - front[side].uMm) / length(side);
  const tailOver = (side: Side) => toFace(lowerTail[side], side, frame).vMm - frontLower[side].vMm;
  return {
    ok: true,
    midline: fit.line,
    outwardMm: { front: front.outwardMm, arch: arch.outwardMm, tail: tail.outwardMm },
    upMm: { front: front.upMm, arch: arch.upMm, tail: tail.upMm },
    upInPictureMm: { front: inPicture('frontTop'), arch: inPicture('archTop'), tail: inPicture('tail') },
    lengthMm: { right: length('right'), left: length('left') },
    archShare: { right: share('right'), left: share('left') },
    tailOverFrontMm: (tailOver('right') + tailOver('left')) / 2,
  };
}
