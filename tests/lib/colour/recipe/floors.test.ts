import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  chromaFloor,
  chromaOf,
  differenceFloor,
  lightnessEdge,
  lightnessFloor,
  outside,
} from '#lib/colour/recipe/differenceFloor.ts';
import { labRoot } from '#lib/colour/recipe/labRoot.ts';
import { quickDifference } from '#lib/colour/recipe/quickDifference.ts';
import { real } from '#tests/tools/real.ts';

const culori = differenceCiede2000();
type Three = Readonly<{ l: number; a: number; b: number }>;
const difference = (one: Three, other: Three) =>
  culori({ mode: 'lab65', ...one }, { mode: 'lab65', ...other });
const colour = (lowestB: number) => fc.record({ l: real(1, 99), a: real(-40, 60), b: real(lowestB, 60) });

test('[library] without an angle, for two colours with yellow: the CIEDE2000 of culori', () => {
  fc.assert(
    fc.property(colour(0.01), colour(0.01), (one, target) => {
      expect(Math.abs(quickDifference(target)(one.l, one.a, one.b) - difference(one, target))).toBeLessThan(
        1e-6,
      );
    }),
    { numRuns: 3000, seed: 3 },
  );
});

test('[property] no colour comes nearer than the floor of its lightness, nor with yellow in both than that of lightness and chroma', () => {
  fc.assert(
    fc.property(colour(-60), colour(-60), (one, target) => {
      expect(lightnessFloor(one.l, target.l)).toBeLessThanOrEqual(difference(one, target) + 1e-12);
    }),
    { numRuns: 3000, seed: 4 },
  );
  fc.assert(
    fc.property(colour(0.01), colour(0.01), (one, target) => {
      const apart = Math.hypot(one.a - target.a, one.b - target.b);
      const floor = differenceFloor(one.l, target.l, apart, chromaOf(target));
      expect(floor).toBeLessThanOrEqual(difference(one, target));
      expect(floor).toBeGreaterThanOrEqual(
        Math.max(chromaFloor(apart, chromaOf(target)), lightnessFloor(one.l, target.l)),
      );
    }),
    { numRuns: 3000, seed: 5 },
  );
});

test('[hand] floors: at L* 50 a unit of lightness counts whole; chroma 3 and 4 is 5; ten apart from chroma 20 counts 10/2.6875', () => {
  expect(lightnessFloor(50, 50)).toBe(0);
  expect(lightnessFloor(51, 49)).toBeCloseTo(2, 12);
  // Mean 60: S_L = 1 + 0.015·100/√120 = 1.13693; 20 of lightness count 17.5912.
  expect(lightnessFloor(70, 50)).toBeCloseTo(17.5912, 4);
  expect(chromaOf({ l: 5, a: 3, b: -4 })).toBe(5);
  expect(chromaFloor(10, 20)).toBeCloseTo(10 / 2.6875, 5);
  expect(chromaFloor(0, 20)).toBe(0);
  expect([outside(1, 2, 4), outside(3, 2, 4), outside(7, 2, 4)]).toEqual([1, 0, 3]);
  expect(differenceFloor(51, 49, 0, 10)).toBeCloseTo(2, 12);
});

test('[property] a window of lightness ends where its floor meets the limit, from outside, or nowhere', () => {
  for (const target of [20, 50, 74])
    for (const limit of [0.3, 1.5, 6]) {
      for (const end of ['darkest', 'lightest'] as const) {
        const edge = lightnessEdge(target, limit, end);
        expect(end === 'darkest' ? edge < target : edge > target).toBe(true);
        expect(lightnessFloor(edge, target)).toBeGreaterThanOrEqual(limit);
        expect(lightnessFloor(edge, target)).toBeLessThan(limit + 1e-6);
      }
    }
  expect(lightnessEdge(50, Infinity, 'darkest')).toBe(-16);
  expect(lightnessEdge(50, Infinity, 'lightest')).toBe(200);
});

test('[hand] the root of CIELAB: 1 at white, a half at an eighth, 4/29 at black; straight below 216/24389', () => {
  expect(labRoot(1)).toBe(1);
  expect(labRoot(0.125)).toBe(0.5);
  expect(labRoot(0)).toBeCloseTo(4 / 29, 12);
  expect(labRoot(216 / 24389)).toBeCloseTo(6 / 29, 12);
  expect(labRoot(216 / 24389 + 1e-9)).toBeCloseTo(6 / 29, 7);
  expect(labRoot(-0.001) - labRoot(-0.002)).toBeCloseTo(0.001 * (841 / 108), 12);
});
