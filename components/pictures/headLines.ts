import { solidPoint, type SolidPoint, type SolidTuple } from '#lib/geometry/solid.ts';
import { canonicalFace } from '#lib/tables/canonicalFace.ts';

const { left, middle } = canonicalFace;
const line = (...points: readonly SolidTuple[]): readonly SolidPoint[] => points.map(solidPoint);
const mouthCorner: SolidTuple = [24.6, -43.4, 42.8];

/** The brow's two edges on the left half of the model head, front to tail and back. */
export const browLine = line(...left.browBase, ...[...left.browTop].reverse());

/**
 * The rest of the left half, drawn by eye round the model's own landmarks: nothing is read off these lines.
 */
export const halfLines = [
  line(left.innerCorner, [25, 31, 41], [32, 32.6, 41.5], [39, 30.8, 38.5], left.outerCorner),
  line(left.innerCorner, [25, 23, 40], [32, 21.8, 40.5], [39, 23.4, 37.5], left.outerCorner),
  line([8.5, 34, 50], [6.5, 22, 53], [7, 8, 58], [12, -3, 57], left.noseWing, [13, -18, 55], [7, -19.5, 61]),
  line(
    [0, -36.6, 59.5],
    [5, -35.4, 58.8],
    [14, -38.6, 53.5],
    mouthCorner,
    [17, -49, 48.5],
    [9, -52, 54],
    [0, -52.6, 56],
  ),
  line([0, -43.6, 57.5], [10, -43, 54.5], mouthCorner),
  line(
    middle.chin,
    [15, -92.5, 39],
    [29, -84, 32],
    [45, -65, 17],
    [58, -41, 1],
    [67, -14, -10],
    [71, 14, -13],
    [72, 38, -8],
    [69, 62, 2],
  ),
] as const;

/** The tip of the nose, right to left. */
export const noseTipLine = line(
  [-7, -13.5, 69],
  [-3.5, -16.5, 72],
  [0, -17.2, 73],
  [3.5, -16.5, 72],
  [7, -13.5, 69],
);
