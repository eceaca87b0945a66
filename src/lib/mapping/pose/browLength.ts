import { solidDistanceMm, solidPoint } from '../../geometry/solid.ts';
import { canonicalFace } from '../../tables/canonicalFace.ts';

/** Three lengths of one brow, all of them right, mm. */
export type BrowLengths = Readonly<{
  /** Across the face, as seen from straight in front. */
  straightMm: number;
  /** From end to end through space, as a caliper reads it. */
  chordMm: number;
  /** Along the skin, as a tape reads it. */
  alongSkinMm: number;
}>;

/**
 * The upper edge of the model head's brow, front to tail. "Length" without saying which can differ by a
 * fifth.
 */
export function browLengths(): BrowLengths {
  const points = canonicalFace.left.browTop.map(solidPoint);
  const front = solidPoint(canonicalFace.left.browTop[0]);
  const tail = solidPoint(canonicalFace.left.browTop[4]);
  return {
    straightMm: tail.xMm - front.xMm,
    chordMm: solidDistanceMm(front, tail),
    alongSkinMm: points.reduce((sum, point, i) => sum + solidDistanceMm(points[i - 1] ?? point, point), 0),
  };
}
