import { browMarks, type BrowMark } from '../mapping/marks/markSet.ts';
import type { Disturbance } from './disturbance.ts';
import type { Face } from './face.ts';

/** The answer key of a practice face: how it was built, not what a method makes of it. */
export type TrueAnswers = Readonly<{
  /** Head roll in the picture; positive: the client's left side is the higher one. */
  rollDeg: number;
  /** Where the true midline crosses the mean height of the brow marks, picture frame. */
  midlineXAtBrowMm: number;
  browHeightMm: number;
  /** Nose base off the true midline, towards the client's left. */
  leanMm: number;
  /** Left minus right in the face's own frame: middle of the brow (all five marks), and each mark. */
  browHeightDifferenceMm: number;
  markHeightDifferencesMm: Readonly<Record<BrowMark, number>>;
  /** Left brow against the mirrored right one; positive: outer end up. */
  browTiltDeg: number;
  browSize: number;
  /** True when nothing on this face needs changing. */
  changeNothing: boolean;
}>;

/**
 * Reads the key off a face's own landmarks. The midline is x = 0 of the upright face, so in the picture x =
 * -y tan(roll).
 */
export function trueAnswers(
  { landmarks: { right, left, middle }, rollDeg }: Face,
  done: Disturbance,
): TrueAnswers {
  const difference = (mark: BrowMark): number => left[mark][1] - right[mark][1];
  const heights = browMarks.flatMap((mark) => [right[mark][1], left[mark][1]]);
  const meanHeight = heights.reduce((sum, v) => sum + v, 0) / heights.length;
  const angle = (rollDeg * Math.PI) / 180;
  const differences = browMarks.map(difference);
  return {
    rollDeg,
    // On the midline at face height v the picture shows (-v sin, v cos).
    midlineXAtBrowMm: -meanHeight * Math.sin(angle) + 0,
    browHeightMm: meanHeight * Math.cos(angle),
    leanMm: middle.subnasale[0],
    browHeightDifferenceMm: differences.reduce((sum, d) => sum + d, 0) / differences.length,
    markHeightDifferencesMm: {
      frontLower: difference('frontLower'),
      frontTop: difference('frontTop'),
      archTop: difference('archTop'),
      archLower: difference('archLower'),
      tail: difference('tail'),
    },
    browTiltDeg: done.browTiltDeg,
    browSize: done.browSize,
    changeNothing: done.heightDifferenceMm === 0 && done.browTiltDeg === 0 && done.browSize === 1,
  };
}
