/**
 * A brow to draw strokes into, front at 0, tail at its length, millimetres, up positive. Invented, with the
 * area asked for.
 */
export type ExampleBrow = Readonly<{
  lengthMm: number;
  thicknessMm: (along: number) => number;
  middleMm: (along: number) => number;
  alongAtShare: (share: number) => number;
}>;

/**
 * How thick the brow is along its length, 0 to 1, as a part of its scale: full at the front, thickest near a
 * third, nothing at the tail.
 */
const profile = (s: number) => (1 - s ** 2.2) * (0.8 + 0.6 * s);
/** The profile's integral from the front. */
const below = (s: number) => 0.8 * s + 0.3 * s ** 2 - (0.8 * s ** 3.2) / 3.2 - (0.6 * s ** 4.2) / 4.2;
const lengthMm = 46;
const archAlong = 0.62;
const archMm = 4.2;

/** The brow of this area, mm². Its length stays; its thickness follows the area. */
export function exampleBrow(areaMm2: number): ExampleBrow {
  const scaleMm = areaMm2 / (lengthMm * below(1));
  return {
    lengthMm,
    thicknessMm: (along) => scaleMm * profile(Math.min(1, Math.max(0, along))),
    /** Middle of the brow above its front: a parabola, highest at the arch. */
    middleMm: (along) => (archMm * along * (2 * archAlong - along)) / archAlong ** 2,
    /** How far along so much of the area lies nearer to the front, by halving. */
    alongAtShare: (share) => {
      let [lo, hi] = [0, 1];
      for (let step = 0; step < 24; step++) {
        const mid = (lo + hi) / 2;
        if (below(mid) < share * below(1)) lo = mid;
        else hi = mid;
      }
      return (lo + hi) / 2;
    },
  };
}
