import type { FalseDifferences } from '#lib/mapping/pose/readPosed.ts';

/**
 * What the page shows before anything is moved, as plain numbers: the sum stays off the reader's phone until
 * then. A test holds them equal.
 */
export const poseStart: FalseDifferences = {
  ok: true,
  midline: { normal: { x: 1, y: 0.0009 }, offsetMm: 2.4106 },
  outwardMm: { front: 0.7867, arch: -0.1009, tail: -1.8284 },
  upMm: { front: -0.0255, arch: -0.0728, tail: -0.1045 },
  upInPictureMm: { front: 0, arch: 0, tail: 0 },
  lengthMm: { right: 44.5022, left: 41.8872 },
  archShare: { right: 0.5914, left: 0.6071 },
  tailOverFrontMm: -2.6052,
};
