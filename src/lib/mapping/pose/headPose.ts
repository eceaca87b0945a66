import { noddedSolid, rolledSolid, turnedSolid, type SolidPoint } from '../../geometry/solid.ts';

/**
 * Where the camera stands before the pupils, millimetres; 'far' is a camera so far away that near and far
 * parts look alike.
 */
export type CameraMm = number | 'far';

/**
 * How a head stands before the camera. Turn: positive, the face looks to the client's own left. Nod:
 * positive, the chin goes up. Tilt: positive, the client's left side comes higher in the picture.
 */
export type HeadPose = Readonly<{ turnDeg: number; nodDeg: number; tiltDeg: number; cameraMm: CameraMm }>;

/** Looking straight at a far camera, level. */
export const straightPose: HeadPose = { turnDeg: 0, nodDeg: 0, tiltDeg: 0, cameraMm: 'far' };

/**
 * Turns, then nods, then tilts a point of the head about the head's own origin, which lies behind the eyes.
 */
export function posedSolid(point: SolidPoint, { turnDeg, nodDeg, tiltDeg }: HeadPose): SolidPoint {
  return rolledSolid(noddedSolid(turnedSolid(point, turnDeg), nodDeg), tiltDeg);
}
