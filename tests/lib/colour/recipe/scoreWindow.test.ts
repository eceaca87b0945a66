import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lightnessFloor } from '#lib/colour/recipe/differenceFloor.ts';
import { screenError } from '#lib/colour/recipe/mixScorer.ts';
import { groupOf, scoreWindow } from '#lib/colour/recipe/scoreWindow.ts';
import { real } from '#tests/tools/real.ts';

/** L* of Y by the definition of CIE 15:2004, 8.2.1, Y of white 100. */
const lightnessOf = (y: number) =>
  y / 100 > 216 / 24389 ? 116 * Math.cbrt(y / 100) - 16 : ((24389 / 27) * y) / 100;
const heard = fc.array(
  fc.record({
    drops: fc.integer({ min: 1, max: 3 }),
    used: fc.integer({ min: 1, max: 2 }),
    score: real(0, 12),
  }),
  { minLength: 1, maxLength: 12 },
);

test('[property] after any scores each limit is what it says; Y lies open as far as the floor of lightness lets it, and no farther', () => {
  fc.assert(
    fc.property(real(20, 90), heard, real(0, 2), real(0, 2), (l, scores, near, farEnough) => {
      const target = { l, a: 6, b: 12 };
      const window = scoreWindow(target, 3, 2, { near, farEnough, mostCounted: 1000 });
      scores.forEach(({ drops, used, score }) => window.hear(drops, used, score));
      const room = 2 * screenError(target) + 2e-6;
      const least = (some: typeof scores) => Math.min(...some.map(({ score }) => score));
      const nearest = least(scores);
      for (const drops of [1, 2, 3])
        for (const used of [1, 2]) {
          const group = groupOf(drops, used, 2);
          const [ofDrops, ofGroup] = [
            least(scores.filter((one) => one.drops === drops)),
            least(scores.filter((one) => one.drops === drops && one.used === used)),
          ];
          // The nearest of its drops; the nearest of its drops and bottles, where as good as the best; all
          // that are counted.
          const limit =
            room + Math.max(ofDrops, Math.min(ofGroup, Math.max(farEnough, nearest + near)), nearest + near);
          if (ofDrops === Infinity) {
            expect(window.limits[group]).toBe(Infinity);
            expect(window.bytes[group]).toBe(255);
            continue;
          }
          expect(window.limits[group]).toBeCloseTo(limit, 12);
          // A byte stands for (byte − 1)/12 to byte/12: the highest that may hold a floor within the limit.
          expect(window.bytes[group]).toBe(limit * 12 >= 254 ? 255 : 1 + Math.floor(limit * 12));
          for (const [edge, step] of [
            [window.yLo[group] ?? NaN, -1],
            [window.yHi[group] ?? NaN, 1],
          ] as const) {
            // 0.002 of room: a Y of 0.001 inside the edge is beyond the limit, one of 0.0025 within it.
            expect(lightnessFloor(lightnessOf(edge - step * 0.001), l)).toBeGreaterThan(limit);
            expect(lightnessFloor(lightnessOf(edge - step * 0.0025), l)).toBeLessThan(limit);
          }
        }
    }),
    { numRuns: 300, seed: 21, endOnFailure: true },
  );
});

test('[library] a grey on the edge of the window is as far from its target as the limit, by culori', () => {
  const difference = differenceCiede2000();
  for (const l of [4, 9, 30, 50, 74]) {
    const target = { l, a: 0, b: 0 };
    const window = scoreWindow(target, 1, 1, { near: 0, farEnough: 0, mostCounted: 0 });
    window.hear(1, 1, 2);
    for (const y of [window.yLo[groupOf(1, 1, 1)] ?? NaN, window.yHi[groupOf(1, 1, 1)] ?? NaN]) {
      const apart = difference(
        { mode: 'lab65', l: lightnessOf(y), a: 0, b: 0 },
        { mode: 'lab65', ...target },
      );
      expect(apart).toBeGreaterThan(2);
      expect(apart).toBeLessThan(2.3);
    }
  }
});

test('[hand] two counted of three nearest close all groups at once; the count alone says nothing before', () => {
  const target = { l: 50, a: 10, b: 13 };
  const room = 2 * screenError(target) + 2e-6;
  const window = scoreWindow(target, 2, 1, { near: 5, farEnough: 0, mostCounted: 0 });
  window.hear(1, 1, 1);
  window.hear(2, 1, 2);
  const less = () => [1, 2].map((drops) => (window.limits[groupOf(drops, 1, 1)] ?? NaN) - room);
  expect(less()).toEqual([6, 6].map((limit) => expect.closeTo(limit, 9)));
  window.count(3);
  expect(less()).toEqual([6, 6].map((limit) => expect.closeTo(limit, 9)));
  // The lower of two, 3 and 4, is at most the lowest of all.
  window.count(4);
  expect(less()).toEqual([3, 3].map((limit) => expect.closeTo(limit, 9)));
  [2.5, 1.5].forEach(window.count);
  // The nearest of each number of drops stays within its limit: 1 and 2.
  expect(less()).toEqual([1.5, 2].map((limit) => expect.closeTo(limit, 9)));
});
