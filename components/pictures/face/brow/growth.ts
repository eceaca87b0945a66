import type { BrowSpots } from '#lib/face/landmarks.ts';
import { blend, clamp, readTable, type Spot, type Spots } from '#lib/face/spot.ts';
import { lowerV, placeIn, runAt, upperV } from './browEdges.ts';

/** One hair: root, the place where it bends, tip; t and s say where in the brow it is rooted. */
export type Hair = Readonly<{ root: Spot; bend: Spot; tip: Spot; t: number; s: number }>;

/**
 * Growth direction in degrees above the brow's own run, along the brow. Front hairs stand; then the halves
 * fall towards each other:
 * lower hairs out and up, upper hairs out and down. Where they meet they lie along the brow: the spine.
 * (Trade knowledge, drawn by eye.)
 */
const lowerHalfDeg: Spots = [
  [0, 84],
  [0.06, 78],
  [0.16, 66],
  [0.3, 54],
  [0.5, 44],
  [0.72, 28],
  [0.88, 12],
  [1, 2],
];
const upperHalfDeg: Spots = [
  [0, 82],
  [0.06, 74],
  [0.14, 46],
  [0.22, 16],
  [0.32, -12],
  [0.5, -24],
  [0.72, -18],
  [0.88, -9],
  [1, -2],
];

/** How a hair is asked to grow: full length, the least it may shrink to, and a turn of its own. */
export type HairWish = Readonly<{ t: number; s: number; lengthMm: number; leastMm: number; turnDeg: number }>;

/**
 * One hair, laid flatter or shortened until its tip keeps to the brow: a drawing that strays would lie about
 * the marks.
 */
export function growHair(brow: BrowSpots, wish: HairWish): Hair {
  const root = placeIn(brow, wish.t, wish.s);
  const lengths = [wish.lengthMm, (wish.lengthMm + wish.leastMm) / 2, wish.leastMm];
  for (let steepness = 1; steepness >= 0.1; steepness -= 0.15) {
    for (const length of lengths) {
      const shape = shapeOf(brow, wish, root, length, steepness);
      if (keepsToBrow(brow, wish, shape.tip)) return { root, ...shape, t: wish.t, s: wish.s };
    }
  }
  return { root, ...shapeOf(brow, wish, root, wish.leastMm, 0.05), t: wish.t, s: wish.s };
}

/**
 * It starts at the table's angle and lies down along the brow towards its tip, so the halves merge instead of
 * weaving.
 */
function shapeOf(
  brow: BrowSpots,
  { t, s, turnDeg }: HairWish,
  root: Spot,
  length: number,
  steepness: number,
) {
  const field = (growthDeg(t, s) + turnDeg) * steepness * (Math.PI / 180);
  const lie = blend(0.86, s < 0.5 ? 0.2 : 0.75, clamp(t / 0.3, 0, 1));
  const first = runAt(brow, t, s) + field;
  const bend: Spot = [root[0] + (length / 2) * Math.cos(first), root[1] + (length / 2) * Math.sin(first)];
  const bendT = clamp((bend[0] - brow.frontLower[0]) / (brow.tail[0] - brow.frontLower[0]), 0, 1);
  const second = runAt(brow, bendT, 0.5) + field * lie;
  const tip: Spot = [bend[0] + (length / 2) * Math.cos(second), bend[1] + (length / 2) * Math.sin(second)];
  return { bend, tip };
}

function growthDeg(t: number, s: number): number {
  const k = clamp((s - 0.25) / 0.5, 0, 1);
  return blend(readTable(lowerHalfDeg, t), readTable(upperHalfDeg, t), k * k * (3 - 2 * k));
}

/**
 * Tips may pass the edge by well under a millimetre; past the soft front neither half may run far across the
 * spine.
 */
function keepsToBrow(brow: BrowSpots, { t, s }: HairWish, [u, v]: Spot): boolean {
  if (u > brow.tail[0] + 0.6) return false;
  const within = clamp(u, brow.frontLower[0], brow.tail[0]);
  const low = lowerV(brow, within);
  const high = upperV(brow, within);
  const thickness = Math.max(high - low, 0.8);
  const over = t < 0.15 ? 0.7 : 0.35;
  const ceiling = t > 0.2 && s < 0.45 ? low + thickness * 0.76 : high + over;
  const floor = t > 0.3 && s > 0.6 ? low + thickness * 0.4 : low - over;
  return v < ceiling && v > floor;
}
