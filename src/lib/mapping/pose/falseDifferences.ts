import { faceFrame, toFace, type FaceFrame } from '../faceFrame.ts';
import { fitMidline } from '../midline.ts';
import { mirrorMarksOf } from '../mirrorMarks.ts';
import type { MarkSet, Side } from '../markSet.ts';
import { compareSides } from '../sides.ts';
import type { HeadPose } from './headPose.ts';
import { lowerTailOnHead } from './modelHead.ts';
import { posedMarks } from './posedMarks.ts';
import { leastCameraMm, mostTurnDeg, posedPoint } from './posedPoint.ts';
import { mirroredSolid } from '../../geometry/solid.ts';

/** One number for each of the three upper brow marks. */
export type AtBrow = Readonly<{ front: number; arch: number; tail: number }>;

/** What a picture of an exactly symmetric head shows as if it were a difference. Left minus right, millimetres. */
export type FalseDifferences = Readonly<{
  ok: true;
  marks: MarkSet;
  frame: FaceFrame;
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
export type NoFalseDifferences = Readonly<{ ok: false; reason: 'camera-too-near' | 'turned-too-far' | 'marks-do-not-fix-a-midline' }>;

/**
 * The differences that a pose fakes: the symmetric model head is turned, nodded, tilted and seen from near, and its
 * picture is read as any picture is, by the unweighted midline of all eight kinds of mark and the frame at right angles to it.
 */
export function falseDifferences(pose: HeadPose): FalseDifferences | NoFalseDifferences {
  if (pose.cameraMm !== 'far' && !(pose.cameraMm >= leastCameraMm)) return { ok: false, reason: 'camera-too-near' };
  if (!(Math.abs(pose.turnDeg) <= mostTurnDeg && Math.abs(pose.nodDeg) <= mostTurnDeg && Math.abs(pose.tiltDeg) <= mostTurnDeg)) return { ok: false, reason: 'turned-too-far' };
  const marks = posedMarks(pose);
  const fit = fitMidline(mirrorMarksOf(marks));
  if (!fit.ok) return fit;
  const frame = faceFrame(marks, fit.line, 'midline');
  const { frontTop: front, archTop: arch, tail, frontLower } = compareSides(marks, frame);
  const { brows } = marks;
  const inPicture = (mark: 'frontTop' | 'archTop' | 'tail') => brows[mark].left.yMm - brows[mark].right.yMm;
  const length = (side: Side) => tail[side].uMm - front[side].uMm;
  const share = (side: Side) => (arch[side].uMm - front[side].uMm) / length(side);
  const tailOver = (side: Side) => {
    const solid = side === 'left' ? lowerTailOnHead : mirroredSolid(lowerTailOnHead);
    return toFace(posedPoint(solid, pose), side, frame).vMm - frontLower[side].vMm;
  };
  return {
    ok: true,
    marks,
    frame,
    outwardMm: { front: front.outwardMm, arch: arch.outwardMm, tail: tail.outwardMm },
    upMm: { front: front.upMm, arch: arch.upMm, tail: tail.upMm },
    upInPictureMm: { front: inPicture('frontTop'), arch: inPicture('archTop'), tail: inPicture('tail') },
    lengthMm: { right: length('right'), left: length('left') },
    archShare: { right: share('right'), left: share('left') },
    tailOverFrontMm: (tailOver('right') + tailOver('left')) / 2,
  };
}
