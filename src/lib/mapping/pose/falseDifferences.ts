import type { HeadPose } from './headPose.ts';
import { posedLowerTail, posedMarks } from './posedMarks.ts';
import { leastCameraMm, mostTurnDeg } from './posedPoint.ts';
import { readPosed, type FalseDifferences } from './readPosed.ts';

export type { FalseDifferences } from './readPosed.ts';
export type NoFalseDifferences = Readonly<{
  ok: false;
  reason: 'camera-too-near' | 'turned-too-far' | 'marks-do-not-fix-a-midline';
}>;

/**
 * The differences that a pose fakes: the symmetric model head is turned, nodded, tilted and seen from near,
 * and its picture is read as any picture is (see readPosed).
 */
export function falseDifferences(pose: HeadPose): FalseDifferences | NoFalseDifferences {
  if (pose.cameraMm !== 'far' && !(pose.cameraMm >= leastCameraMm))
    return { ok: false, reason: 'camera-too-near' };
  if (
    !(
      Math.abs(pose.turnDeg) <= mostTurnDeg &&
      Math.abs(pose.nodDeg) <= mostTurnDeg &&
      Math.abs(pose.tiltDeg) <= mostTurnDeg
    )
  )
    return { ok: false, reason: 'turned-too-far' };
  return readPosed(posedMarks(pose), posedLowerTail(pose));
}
