import { alongMm, quarterTurn, type Direction } from '../../geometry/direction.ts';
import { midpoint } from '../../geometry/distance.ts';
import { signedDistanceMm, type Line } from '../../geometry/line.ts';
import type { PointMm } from '../../geometry/point.ts';
import { levelDirection, type LevelReference } from './levelReference.ts';
import type { MarkSet, Side } from './markSet.ts';

/**
 * The face's own frame. Its origin is where the midline crosses the level line through the middle of the two
 * pupils.
 * `level` points to the client's left. Where `level` is not at right angles to the midline the frame is a
 * little oblique:
 * each coordinate still is the distance an artist would measure.
 */
export type FaceFrame = Readonly<{ midline: Line; level: Direction; pupilLevelMm: number }>;

/**
 * uMm: distance from the midline, positive outward on the mark's own side. vMm: height above the pupil level
 * line.
 */
export type FacePoint = Readonly<{ uMm: number; vMm: number }>;

/** The frame of one face from its midline and the chosen level reference. */
export function faceFrame(set: MarkSet, midline: Line, reference: LevelReference): FaceFrame {
  const level = levelDirection(reference, set, midline);
  const { right, left } = set.pairs.pupil;
  return { midline, level, pupilLevelMm: alongMm(midpoint(right, left), quarterTurn(level)) };
}

/** From the picture to the face's frame, for a mark of one side. */
export function toFace(point: PointMm, side: Side, { midline, level, pupilLevelMm }: FaceFrame): FacePoint {
  const acrossMm = signedDistanceMm(point, midline);
  return {
    uMm: side === 'left' ? acrossMm : -acrossMm,
    vMm: alongMm(point, quarterTurn(level)) - pupilLevelMm,
  };
}

/** From the face's frame back to the picture: solves n·p = c ± u and up·p = v + pupil level. */
export function toPicture(
  { uMm, vMm }: FacePoint,
  side: Side,
  { midline, level, pupilLevelMm }: FaceFrame,
): PointMm {
  const { normal, offsetMm } = midline;
  const up = quarterTurn(level);
  const across = offsetMm + (side === 'left' ? uMm : -uMm);
  const height = vMm + pupilLevelMm;
  const cross = normal.x * up.y - normal.y * up.x;
  return {
    xMm: (across * up.y - height * normal.y) / cross,
    yMm: (height * normal.x - across * up.x) / cross,
  };
}
