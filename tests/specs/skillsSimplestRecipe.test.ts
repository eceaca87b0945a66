import { expect, test } from 'vitest';
import { simplestCases } from '#skills/colour/simplestCases.ts';
import { simplestRecipe } from '#skills/colour/simplestRecipe.ts';
import { simplestCaseAgain } from '#tests/tools/simplestCases.ts';
import { simplestRecipeWords, type SimplestRecipeGiven } from '#words/skills/simplestRecipe.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(simplestRecipe, simplestRecipeWords, seed);
});

test('[property] the rows kept are those of the search, on skins from L* 36 to 72', () => {
  for (const one of simplestCases) expect(simplestCaseAgain(one)).toEqual(one);
  expect(new Set(simplestCases.map(({ skin }) => skin[0]))).toEqual(new Set([72, 63, 54, 45, 36]));
});

const given: SimplestRecipeGiven = {
  client: 'weaver',
  wanted: [50, 9, 13],
  shelf: ['orange', 'black-iron'],
  rows: [
    { recipe: [1, 0], apart: 2.3 },
    { recipe: [1, 1], apart: 1.7 },
    { recipe: [2, 1], apart: 1.2 },
    { recipe: [3, 2], apart: 1.25 },
  ],
};
const rightOf = (rows: SimplestRecipeGiven['rows']) => {
  const answer = simplestRecipe.answer({ ...given, rows });
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[hand] within half a unit of the nearest counts, a hair more does not; under one everything counts', () => {
  expect(rightOf(given.rows)).toBe('drops-2');
  const moved = (aparts: readonly number[]) =>
    given.rows.map((row, i) => ({ ...row, apart: aparts[i] ?? NaN }));
  expect(rightOf(moved([2.3, 1.71, 1.2, 1.25]))).toBe('drops-3');
  expect(rightOf(moved([1, 0.9, 0.2, 0.3]))).toBe('drops-1');
  expect(rightOf(moved([1.01, 0.9, 0.2, 0.3]))).toBe('drops-2');
});

test('[property] the right recipe has two drops in some seeds and more in others; each slip comes up', () => {
  const dealt = Array.from({ length: 1000 }, (_, seed) => simplestRecipe.given(seed));
  const drops = new Set(dealt.map(({ rows }) => rightOf(rows)));
  expect(drops.size).toBeGreaterThanOrEqual(2);
  for (const { id, value } of simplestRecipe.slips)
    expect(dealt.filter((one) => value(one) !== '').length, id).toBeGreaterThan(50);
});
