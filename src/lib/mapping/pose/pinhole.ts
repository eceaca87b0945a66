import type { PointMm } from '../../geometry/point.ts';
import type { SolidPoint } from '../../geometry/solid.ts';
import type { CameraMm } from './headPose.ts';

/**
 * What one camera sees of a point, picture millimetres: similar triangles through one hole (pinhole camera).
 * The picture's scale is true in the plane through `eye`, at right angles to the camera's line; `eye` lands
 * on the picture's origin. A point nearer to the camera is drawn larger by distance / (distance − how much
 * nearer).
 * The camera must stand before the point.
 */
export function pictureOf({ xMm, yMm, zMm }: SolidPoint, eye: SolidPoint, cameraMm: CameraMm): PointMm {
  const scale = cameraMm === 'far' ? 1 : cameraMm / (cameraMm - (zMm - eye.zMm));
  return { xMm: (xMm - eye.xMm) * scale, yMm: (yMm - eye.yMm) * scale };
}
