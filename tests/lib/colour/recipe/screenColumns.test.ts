import fc from 'fast-check';
import { expect, test } from 'vitest';
import { joinedRecipes, keptRecipes, recipeAt } from '#lib/colour/recipe/keptRecipes.ts';
import { lowestScores } from '#lib/colour/recipe/lowestScores.ts';
import { mostByte } from '#lib/colour/recipe/mixCells.ts';
import { screenError } from '#lib/colour/recipe/mixScorer.ts';
import { dropsOf, groupOf, scoreWindow, tie } from '#lib/colour/recipe/scoreWindow.ts';
import { real } from '#tests/tools/real.ts';

test('[hand] columns grow and join in order', () => {
  const limits = new Float64Array(9).fill(Infinity);
  const [one, other] = [keptRecipes(2, limits), keptRecipes(2, limits)];
  for (let i = 0; i < 3000; i++) one.add(Uint8Array.of(i % 7, i % 5), i % 3, i % 9, i / 2);
  other.add(Uint8Array.of(9, 8), 1, 4, 77);
  const all = joinedRecipes([one.done(), other.done()]);
  expect([all.doses.length, all.groups.length, all.scores.length, all.drops.length]).toEqual([
    3001, 3001, 3001, 6002,
  ]);
  for (const i of [0, 1023, 1024, 2999])
    expect([recipeAt(all, i, 2), all.doses[i], all.groups[i], all.scores[i]]).toEqual([
      [i % 7, i % 5],
      i % 3,
      i % 9,
      i / 2,
    ]);
  expect([recipeAt(all, 3000, 2), all.doses[3000], all.groups[3000], all.scores[3000]]).toEqual([
    [9, 8],
    1,
    4,
    77,
  ]);
});

test('[hand] what has come to lie over the limit of its group is let go, on the limit it stays, in order', () => {
  const limits = Float64Array.of(Infinity, Infinity, Infinity);
  const kept = keptRecipes(2, limits);
  for (let i = 0; i < 2500; i++) {
    if (i === 1500) limits.set([2, 100], 1);
    kept.add(Uint8Array.of(i % 7, i % 5), i % 3, 1 + (i % 2), i);
  }
  const { doses, groups, scores, drops } = kept.done();
  // Of the first group scores 0 and 2 are even and up to 2; of the second 1 to 99.
  expect(Array.from(scores)).toEqual([0, 1, 2, ...Array.from({ length: 49 }, (_, i) => 2 * i + 3)]);
  scores.forEach((i, place) =>
    expect([doses[place], groups[place], drops[2 * place], drops[2 * place + 1]]).toEqual([
      i % 3,
      1 + (i % 2),
      i % 7,
      i % 5,
    ]),
  );
});

test('[property] so many of the scores heard lie at or below the bound, and in the end hardly more', () => {
  const lowest = lowestScores(5);
  const heard: number[] = [];
  fc.sample(real(0, 9), { numRuns: 400, seed: 14 }).forEach((score) => {
    const before = lowest.bound();
    heard.push(score);
    expect(lowest.add(score)).toBe(lowest.bound() < before);
    expect(heard.filter((one) => one <= lowest.bound()).length).toBeGreaterThanOrEqual(
      Math.min(heard.length, 5),
    );
  });
  expect(heard.filter((one) => one <= lowest.bound()).length).toBeLessThanOrEqual(10);
});

test('[hand] the window closes as scores are heard: 1, best + 0.5, the nearest of its drops, or the nearest of its drops and bottles', () => {
  const target = { l: 50, a: 10, b: 13 };
  const room = 2 * screenError(target) + 2 * tie;
  expect([groupOf(1, 1, 2), groupOf(3, 2, 2), dropsOf(3, 2), dropsOf(5, 2), dropsOf(9, 2)]).toEqual([
    4, 11, 1, 1, 3,
  ]);
  const window = scoreWindow(target, 3, 2, { near: 0.5, farEnough: 1, mostCounted: 1 });
  // Drops and bottles: 1 and 1, 2 and 1, 2 and 2, 3 and 1, 3 and 2.
  const at = [
    [1, 1],
    [2, 1],
    [2, 2],
    [3, 1],
    [3, 2],
  ].map(([drops = 0, used = 0]) => groupOf(drops, used, 2));
  const less = () => at.map((group) => Math.round(((window.limits[group] ?? NaN) - room) * 1e9) / 1e9);
  expect(less()).toEqual([Infinity, Infinity, Infinity, Infinity, Infinity]);
  expect([window.yLo[4], window.yHi[4], window.bytes[4]]).toEqual([-Infinity, Infinity, 255]);
  window.hear(2, 1, 3);
  expect(less()).toEqual([Infinity, 3.5, 3.5, Infinity, Infinity]);
  window.hear(1, 1, 6);
  expect(less()).toEqual([6, 3.5, 3.5, Infinity, Infinity]);
  window.hear(1, 1, 7);
  window.hear(3, 1, 0.2);
  expect(less()).toEqual([6, 3, 3, 0.7, 1]);
  // Two that are nearer than 0.4: the count asks for nothing farther any more. Two bottles are open up to 1,
  // and then up to their nearest.
  [0.4, 0.6, 0.3].forEach(window.count);
  expect(less()).toEqual([6, 3, 3, 0.7, 1]);
  window.count(0.2);
  expect(less()).toEqual([6, 3, 3, 0.3, 1]);
  window.hear(3, 2, 0.8);
  expect(less()).toEqual([6, 3, 3, 0.3, 0.8]);
  window.hear(3, 2, 0.25);
  expect(less()).toEqual([6, 3, 3, 0.3, 0.3]);
  expect(window.bytes[at[2] ?? 0]).toBe(mostByte(3 + room));
  // Y of L* 50 is 18.42; a limit of about 0.85 reaches that far in L*, near 0.7 in Y to each side.
  const wide = scoreWindow(target, 1, 1, { near: 0.5, farEnough: 1, mostCounted: 9 });
  wide.hear(1, 1, 1.05);
  wide.hear(1, 1, 0.5);
  expect(wide.yLo[3]).toBeGreaterThan(17.4);
  expect(wide.yLo[3]).toBeLessThan(17.7);
  expect(wide.yHi[3]).toBeGreaterThan(19.2);
  expect(wide.yHi[3]).toBeLessThan(19.5);
  // Near black Y follows the straight line: at L* 4, 0.44.
  const dark = scoreWindow({ l: 5, a: 0, b: 1 }, 1, 1, { near: 0, farEnough: 0, mostCounted: 0 });
  dark.hear(1, 1, 0);
  expect(dark.yLo[3]).toBeLessThan(0.55);
  expect(dark.yLo[3]).toBeGreaterThan(0.4);
});
