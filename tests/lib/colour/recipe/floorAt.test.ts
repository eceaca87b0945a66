import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixSlopes, mostMove, riseSlope } from '#lib/colour/recipe/mixSlopes.ts';
import { rise } from '#lib/colour/layers/kubelkaMunk.ts';
import { real } from '#tests/tools/real.ts';

const culori = differenceCiede2000();
const noRows = new Float64Array(0);
const root = (ratio: number) => (ratio > 216 / 24389 ? Math.cbrt(ratio) : ((24389 / 27) * ratio + 16) / 116);
/** The ratio to white whose root is so much, on the curve. */
const ratioOf = (l: number, more: number) => ((l + 16) / 116 + more) ** 3;
/** Y, X − Y and Y − Z of a colour, each over its white, by the formulas of CIELAB turned round. */
const tonesOf = ({ l, a, b }: { l: number; a: number; b: number }) => {
  const y = ratioOf(l, 0);
  return [y, ratioOf(l, a / 500) - y, y - ratioOf(l, -b / 200)] as const;
};
/** Lines that start at a colour, each with its slopes, and may be off by so much. */
const linesOf = (
  lab: { l: number; a: number; b: number },
  slopes: readonly number[],
  offL: number,
  offAB: number,
) => [...tonesOf(lab).flatMap((tone, i) => [tone, ...slopes.slice(4 * i, 4 * i + 4)]), offL, offAB];
const level: readonly number[] = Array.from({ length: 12 }, () => 0);

test('[library] along lines the floor is the CIEDE2000 of culori at the place, less the most that errors move it', () => {
  const place = fc.array(real(-0.5, 0.5), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(
      fc.record({ l: real(25, 75), a: real(4, 20), b: real(8, 25) }),
      fc.record({ l: real(25, 75), a: real(0, 20), b: real(3, 20) }),
      fc.array(real(-0.006, 0.006), { minLength: 12, maxLength: 12 }),
      place,
      real(0, 0.4),
      real(0, 0.4),
      (lab, target, slopes, parts, offL, offAB) => {
        const lines = Float64Array.from([7, 7, ...linesOf(lab, slopes, offL, offAB)]);
        const [y = NaN, xy = NaN, yz = NaN] = tonesOf(lab).map((tone, i) =>
          parts.reduce((sum, part, axis) => sum + part * (slopes[4 * i + axis] ?? NaN), tone),
        );
        const a = 500 * (root(y + xy) - root(y));
        const b = 200 * (root(y) - root(y - yz));
        fc.pre(b > offAB + 0.1 && Math.hypot(a, b) > Math.hypot(target.a, target.b) / 3 + offAB + 0.1);
        const apart = culori({ mode: 'lab65', l: 116 * root(y) - 16, a, b }, { mode: 'lab65', ...target });
        const [p0 = NaN, p1 = NaN, p2 = NaN, p3 = NaN] = parts;
        expect(mixSlopes(noRows, target).floorAt(lines, 2, p0, p1, p2, p3)).toBeCloseTo(
          apart - (offL * (1 + 0.01 * apart) + offAB * (1.5 + 0.09 * apart)),
          4,
        );
      },
    ),
    { numRuns: 500, seed: 31 },
  );
});

test('[hand] a floor is said only where both colours hold yellow for sure, and the chroma is a third of the target’s for sure', () => {
  const target = { l: 40, a: 9, b: 12 };
  const floor = (lab: { l: number; a: number; b: number }, offAB: number, to = target) =>
    mixSlopes(noRows, to).floorAt(Float64Array.from(linesOf(lab, level, 0, offAB)), 0, 0, 0, 0, 0);
  // A third of 15 is 5.
  expect(floor({ l: 60, a: 3, b: 4.01 }, 0)).toBeGreaterThan(10);
  expect(floor({ l: 60, a: -3, b: 4.01 }, 0)).toBeGreaterThan(10);
  expect(floor({ l: 60, a: 3, b: 3.99 }, 0)).toBe(0);
  expect(floor({ l: 60, a: 2.4, b: 4 }, 0)).toBe(0);
  expect(floor({ l: 60, a: 3.6, b: 4.81 }, 1)).toBeGreaterThan(10);
  expect(floor({ l: 60, a: 3.6, b: 4.79 }, 1)).toBe(0);
  expect(floor({ l: 60, a: 30, b: 1.01 }, 1)).toBeGreaterThan(10);
  expect(floor({ l: 60, a: 30, b: 0.99 }, 1)).toBe(0);
  expect(floor({ l: 60, a: 30, b: -5 }, 1)).toBe(0);
  expect(floor({ l: 60, a: 9, b: 12 }, 0, { l: 40, a: 9, b: 0.01 })).toBeGreaterThan(10);
  expect(floor({ l: 60, a: 9, b: 12 }, 0, { l: 40, a: 9, b: 0 })).toBe(0);
  expect(floor({ l: 60, a: 9, b: 12 }, 0, { l: 40, a: 9, b: -0.01 })).toBe(0);
  // Grey holds no yellow, not even without any error.
  expect(floor({ l: 60, a: 30, b: 0 }, 0)).toBe(0);
});

test('[hand] the most that ΔE00 moves: 1 for a unit of L*, 1.5 for one of a*b*, with 0.01 and 0.09 more a unit of score', () => {
  expect(mostMove(0, 2, 0)).toBe(2);
  expect(mostMove(0, 0, 2)).toBe(3);
  expect(mostMove(10, 2, 0)).toBeCloseTo(2.2, 12);
  expect(mostMove(10, 0, 2)).toBeCloseTo(4.8, 12);
  expect(mostMove(5, 1, 1)).toBeCloseTo(1.05 + 1.95, 12);
});

test('[hand] the slope of √u coth √u is the sum 2 Σ k²π²/(u + k²π²)², term by term', () => {
  const terms = 3000;
  for (const u of [0, 1e-5, 5e-4, 9.99e-4, 1e-3, 0.02, 0.5, 3, 40, 150]) {
    let sum = 0;
    for (let k = terms; k > 0; k--) sum += (2 * k * k * Math.PI ** 2) / (u + k * k * Math.PI ** 2) ** 2;
    // What is left of 2 Σ 1/k²π² from here on.
    sum += 2 / Math.PI ** 2 / (terms + 0.5);
    expect(riseSlope(u, rise({ k: Math.sqrt(u), s: 0 }))).toBeCloseTo(sum, 8);
  }
  // Near 0 the series needs no root, from 1e-3 on the root is asked.
  expect(riseSlope(9.99e-4, NaN)).toBeCloseTo(riseSlope(1e-3, rise({ k: Math.sqrt(1e-3), s: 0 })), 7);
  expect(riseSlope(1e-3, NaN)).toBeNaN();
});
