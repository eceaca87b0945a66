import type { PointMm } from '../../geometry/point.ts';
import type { SolidPoint } from '../../geometry/solid.ts';
import { posedSolid, type HeadPose } from './headPose.ts';
import { betweenPupils } from './modelHead.ts';
import { pictureOf } from './pinhole.ts';

/** Nearer than this the nose comes close to the camera and no one holds a phone there, mm. */
export const leastCameraMm = 200;
/** Farther round than this the far half of the face is hidden, degrees either way. */
export const mostTurnDeg = 30;

/**
 * A point of the model head as the camera sees it in this pose, picture mm; the straight head's pupils lie at
 * height 0.
 */
export function posedPoint(point: SolidPoint, pose: HeadPose): PointMm {
  return pictureOf(posedSolid(point, pose), betweenPupils, pose.cameraMm);
}
