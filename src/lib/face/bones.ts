import type { Spot } from './spot.ts';
import type { BrowSpots, Landmarks, SideSpots } from './landmarks.ts';

/**
 * The measures that set a face's marks, millimetres. A lean moves the nose base towards the client's left.
 */
export type Bones = Readonly<{
  pupilDistanceMm: number;
  intercanthalMm: number;
  eyeWidthMm: number;
  /** Outer eye corner above the pupil line. */
  outerCornerMm: number;
  noseWidthMm: number;
  /** Widest point of the nose wings below the pupil line. */
  noseDropMm: number;
  noseLeanMm: number;
  chinDropMm: number;
  /** Chin point moved towards the client's left. */
  chinShiftMm: number;
}>;

export const defaultBones: Bones = {
  pupilDistanceMm: 63,
  intercanthalMm: 32,
  eyeWidthMm: 31,
  outerCornerMm: 1.6,
  noseWidthMm: 32.6,
  noseDropMm: 38,
  noseLeanMm: 0,
  chinDropMm: 113,
  chinShiftMm: 0,
};

/**
 * Height of the inner eye corner, glabella and nasion against the pupil line (drawn by eye, not from a
 * source).
 */
const innerCornerV = -1;
const glabellaV = 14;
export const nasionV = 6;
/** Subnasale below the widest point of the wings. */
const subnasaleBelowWingMm = 9;

/**
 * Marks of a face from its bones and one brow a side; both halves mirror each other but for the lean and the
 * chin.
 */
export function landmarksFrom(bones: Bones, right: BrowSpots, left: BrowSpots): Landmarks {
  const lean = bones.noseLeanMm;
  return {
    right: sideFrom(bones, right, -lean),
    left: sideFrom(bones, left, lean),
    middle: {
      glabella: [0, glabellaV],
      nasion: [0, nasionV],
      subnasale: [lean, -bones.noseDropMm - subnasaleBelowWingMm],
      chin: [bones.chinShiftMm, -bones.chinDropMm],
    },
  };
}

function sideFrom(bones: Bones, brow: BrowSpots, wingShiftMm: number): SideSpots {
  const inner = bones.intercanthalMm / 2;
  const outer: Spot = [inner + bones.eyeWidthMm, bones.outerCornerMm];
  return {
    innerCorner: [inner, innerCornerV],
    outerCorner: outer,
    pupil: [bones.pupilDistanceMm / 2, 0],
    noseWing: [bones.noseWidthMm / 2 + wingShiftMm, -bones.noseDropMm],
    ...brow,
  };
}
