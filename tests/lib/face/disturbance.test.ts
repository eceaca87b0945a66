import { describe, expect, it } from 'vitest';
import { disturbanceFor, disturbedBrow, type Disturbance } from '#lib/face/disturbance.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';

/** Middle of the five marks: (0 + 0 + 6 + 6 + 8) / 5 = 4 out, (0 + 4 + 6 + 2 + 3) / 5 = 3 up. */
const brow: BrowSpots = {
  frontLower: [0, 0],
  frontTop: [0, 4],
  archTop: [6, 6],
  archLower: [6, 2],
  tail: [8, 3],
};
const nothing: Disturbance = {
  heightDifferenceMm: 0,
  browTiltDeg: 0,
  browSize: 1,
  rollDeg: 0,
  noseLeanMm: 0,
};
const seeds = Array.from({ length: 60 }, (_, i) => i + 1);

function expectBrow(found: BrowSpots, wanted: BrowSpots): void {
  for (const mark of ['frontLower', 'frontTop', 'archTop', 'archLower', 'tail'] as const) {
    expect(found[mark][0]).toBeCloseTo(wanted[mark][0], 9);
    expect(found[mark][1]).toBeCloseTo(wanted[mark][1], 9);
  }
}

describe('a disturbed brow', () => {
  it('[hand] turned by 90° about its middle: out becomes up, up becomes in', () => {
    expectBrow(disturbedBrow(brow, { ...nothing, browTiltDeg: 90 }), {
      frontLower: [7, -1], // (-4, -3) from the middle becomes (3, -4)
      frontTop: [3, -1], // (-4, 1) becomes (-1, -4)
      archTop: [1, 5], // (2, 3) becomes (-3, 2)
      archLower: [5, 5], // (2, -1) becomes (1, 2)
      tail: [4, 7], // (4, 0) becomes (0, 4): the outer end comes up
    });
  });

  it('[hand] turned, twice as large and lifted by 1 mm', () => {
    expectBrow(disturbedBrow(brow, { ...nothing, heightDifferenceMm: 1, browTiltDeg: 90, browSize: 2 }), {
      frontLower: [10, -4],
      frontTop: [2, -4],
      archTop: [-2, 8],
      archLower: [6, 8],
      tail: [4, 12],
    });
  });

  it('[hand] sized about its middle, 1.5 times', () => {
    expectBrow(disturbedBrow(brow, { ...nothing, browSize: 1.5 }), {
      frontLower: [-2, -1.5],
      frontTop: [-2, 4.5],
      archTop: [7, 7.5],
      archLower: [7, 1.5],
      tail: [10, 3],
    });
  });

  it('[property] nothing done leaves it as it was, to the last bit; roll and lean are not the brow’s', () => {
    const odd: BrowSpots = { ...brow, archTop: [1 / 3, 0.1 + 0.2], tail: [Math.PI, Math.E] };
    expect(disturbedBrow(odd, { ...nothing, rollDeg: 5, noseLeanMm: 4 })).toEqual(odd);
  });
});

describe('what each level adds', () => {
  it('[property] level 0 nothing, 1 a height, 2 also tilt, size and roll, 3 also a leaning nose', () => {
    for (const seed of seeds) {
      const all = disturbanceFor(seed, 3);
      // No measure drawn from a spread lands on its neutral value exactly.
      for (const value of [
        all.heightDifferenceMm,
        all.browTiltDeg,
        all.browSize - 1,
        all.rollDeg,
        all.noseLeanMm,
      ]) {
        expect(value).not.toBe(0);
      }
      expect(disturbanceFor(seed, 0)).toEqual(nothing);
      expect(disturbanceFor(seed, 1)).toEqual({ ...nothing, heightDifferenceMm: all.heightDifferenceMm });
      expect(disturbanceFor(seed, 2)).toEqual({ ...all, noseLeanMm: 0 });
    }
  });

  it('[property] both directions of each occur, inside their limits', () => {
    const all = seeds.map((seed) => disturbanceFor(seed, 3));
    for (const [of, limit] of [
      [(d: Disturbance) => d.heightDifferenceMm, 4.8],
      [(d: Disturbance) => d.browTiltDeg, 7],
      [(d: Disturbance) => d.browSize - 1, 0.14],
      [(d: Disturbance) => d.rollDeg, 8],
      [(d: Disturbance) => d.noseLeanMm, 8],
    ] as const) {
      const values = all.map(of);
      expect(Math.min(...values)).toBeLessThan(0);
      expect(Math.max(...values)).toBeGreaterThan(0);
      expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(limit + 1e-12);
    }
  });
});
