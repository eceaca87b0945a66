import type { HeadPose } from '#lib/mapping/pose/headPose.ts';
import { countsAsFarCm, type PoseState } from './poseFields.ts';

/** How the head of a state stands before the camera. */
export function headPoseOf({ turn, nod, tilt, distance }: PoseState): HeadPose {
  return {
    turnDeg: turn,
    nodDeg: nod,
    tiltDeg: tilt,
    cameraMm: distance >= countsAsFarCm ? 'far' : 10 * distance,
  };
}
