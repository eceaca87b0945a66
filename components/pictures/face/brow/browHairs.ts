import type { Draw } from '#lib/quantities/seed.ts';
import type { BrowHair } from '#lib/face/form.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';
import { between, blend, readTable, type Spot, type Spots } from '#lib/face/spot.ts';
import { barenessOf, type ScarAcross } from './bareness.ts';
import { browLengthMm, placeIn } from './browEdges.ts';
import { growHair, type Hair } from './growth.ts';

/** Hair length and density along the brow, lengths 5 to 9 mm (drawn by eye). */
const lengthMm: Spots = [
  [0, 5.8],
  [0.12, 7],
  [0.35, 8.3],
  [0.6, 7.8],
  [0.85, 6.6],
  [1, 5.8],
];
const leastMm: Spots = [
  [0, 3.6],
  [0.12, 4.6],
  [0.2, 5],
  [1, 5],
];
const density: Spots = [
  [0, 0.45],
  [0.05, 0.65],
  [0.14, 0.9],
  [0.35, 1],
  [0.68, 1],
  [0.85, 0.85],
  [1, 0.6],
];
/** Standing front hairs are rooted low and reach the upper edge with their tips. */
const highestRoot: Spots = [
  [0, 0.4],
  [0.1, 0.62],
  [0.2, 0.97],
];

/**
 * Evenly spread but irregular hairs, thinned by gaps, scar and patch. A reader measures from what is drawn,
 * so hair stands on every mark.
 */
export function browHairs(brow: BrowSpots, hair: BrowHair, draw: Draw, scar?: ScarAcross): readonly Hair[] {
  const length = browLengthMm(brow);
  const bareness = barenessOf(brow, hair, scar, draw);
  const grown: Hair[] = [...endHairs(brow, hair)];
  const grow = (t: number, s: number): void => {
    if (bareness.rootIsBare(t, s)) return;
    const turnDeg = cowlickTurn(hair, t, length) + (draw() - 0.5) * blend(13, 6, t);
    const wish = {
      t,
      s,
      lengthMm: readTable(lengthMm, t) * (0.86 + 0.22 * draw()),
      leastMm: readTable(leastMm, t),
      turnDeg,
    };
    const one = growHair(brow, wish);
    if (!bareness.crossesBare(one)) grown.push(one);
  };
  grow((brow.archTop[0] - brow.frontTop[0]) / (brow.tail[0] - brow.frontTop[0]), 1);
  grow((brow.archLower[0] - brow.frontLower[0]) / length, 0);
  const lastT = 1 - 4.2 / length;
  const step = 110 / hair.count / length;
  for (let t = step; t < lastT; t += step * (0.8 + 0.5 * draw()) * 2) {
    grow(t, 0.05 * draw());
    if (t > 0.2) grow(t - step * draw(), 1 - 0.05 * draw());
  }
  for (let i = grown.length; i < hair.count; i++) {
    const place = roomiestPlace(brow, grown, lastT, draw);
    if (place) grow(place[0], place[1]);
  }
  return grown;
}

/**
 * The front edge and the tail tip, whatever the gaps, unless the form says the hair there is turned or
 * missing.
 */
function endHairs(brow: BrowSpots, hair: BrowHair): readonly Hair[] {
  const { frontLower, frontTop, tail } = brow;
  const rootT = 1 - 5.4 / browLengthMm(brow);
  const root = placeIn(brow, rootT, 0.5);
  const [frontU, frontV] = between(frontLower, frontTop, 0.5);
  const [tailU, tailV] = between(root, tail, 0.5);
  const front: Hair = { root: frontLower, bend: [frontU - 0.35, frontV], tip: frontTop, t: 0, s: 0 };
  const end: Hair = { root, bend: [tailU, tailV + 0.25], tip: tail, t: rootT, s: 0.5 };
  return [...(hair.cowlick ? [] : [front]), ...(hair.sparseTail > 0 ? [] : [end])];
}

function cowlickTurn({ cowlick }: BrowHair, t: number, length: number): number {
  if (!cowlick) return 0;
  return cowlick.turnDeg * Math.max(0, 1 - (((t - cowlick.t) * length) / cowlick.radiusMm) ** 2);
}

/** The farthest of seven candidates from the hairs drawn last. */
function roomiestPlace(brow: BrowSpots, grown: readonly Hair[], lastT: number, draw: Draw): Spot | undefined {
  const recent = grown.slice(-90);
  let best: Spot | undefined;
  let farthest = -1;
  for (let candidate = 0; candidate < 7; candidate++) {
    const t = blend(0.02, lastT, draw());
    const s = 0.02 + 0.92 * draw();
    if (s > readTable(highestRoot, t) || draw() > readTable(density, t)) continue;
    const [u, v] = placeIn(brow, t, s);
    const room = recent.reduce(
      (least, { root }) => Math.min(least, Math.hypot(root[0] - u, (root[1] - v) * 1.3)),
      99,
    );
    if (room > farthest) [farthest, best] = [room, [t, s]];
  }
  return best;
}
