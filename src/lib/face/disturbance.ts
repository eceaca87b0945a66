import { drawFrom, seedFrom } from '../quantities/seed.ts';
import { mapBrow, type BrowSpots } from './landmarks.ts';
import { drawNorm, practiceNorms } from './practiceNorms.ts';

/**
 * 0 symmetric (right answer: change nothing); 1 one brow higher; 2 also roll, tilt and size; 3 also a leaning
 * nose; 4 also a turned or near picture (right answer: do not judge widths).
 */
export type PracticeLevel = 0 | 1 | 2 | 3 | 4;

/**
 * What was done to the symmetric face. Differences are left minus right. Lean: nose base towards the client's
 * left. Roll: the client's left side higher.
 */
export type Disturbance = Readonly<{
  heightDifferenceMm: number;
  browTiltDeg: number;
  browSize: number;
  rollDeg: number;
  noseLeanMm: number;
}>;

/** Each level adds only what it says; what a seed adds is the same at every level that has it. */
export function disturbanceFor(seed: number, level: PracticeLevel): Disturbance {
  const draw = drawFrom(seedFrom('disturbance', seed));
  const drawn: Disturbance = {
    heightDifferenceMm: drawNorm(draw, practiceNorms.heightDifferenceMm),
    browTiltDeg: drawNorm(draw, practiceNorms.browTiltDeg),
    browSize: drawNorm(draw, practiceNorms.browSize),
    rollDeg: drawNorm(draw, practiceNorms.rollDeg),
    noseLeanMm: drawNorm(draw, practiceNorms.noseLeanMm),
  };
  return {
    heightDifferenceMm: level >= 1 ? drawn.heightDifferenceMm : 0,
    browTiltDeg: level >= 2 ? drawn.browTiltDeg : 0,
    browSize: level >= 2 ? drawn.browSize : 1,
    rollDeg: level >= 2 ? drawn.rollDeg : 0,
    noseLeanMm: level >= 3 ? drawn.noseLeanMm : 0,
  };
}

/** The mirrored brow turned and sized about its middle, then lifted. */
export function disturbedBrow(
  brow: BrowSpots,
  { heightDifferenceMm, browTiltDeg, browSize }: Disturbance,
): BrowSpots {
  const marks = Object.values(brow);
  const middleU = marks.reduce((sum, [u]) => sum + u, 0) / marks.length;
  const middleV = marks.reduce((sum, [, v]) => sum + v, 0) / marks.length;
  const cos = Math.cos((browTiltDeg * Math.PI) / 180) * browSize;
  const sin = Math.sin((browTiltDeg * Math.PI) / 180) * browSize;
  // Written as a change, so that no disturbance leaves the brow untouched to the last bit.
  return mapBrow(brow, ([u, v]) => [
    u + (u - middleU) * (cos - 1) - (v - middleV) * sin,
    v + (u - middleU) * sin + (v - middleV) * (cos - 1) + heightDifferenceMm,
  ]);
}
