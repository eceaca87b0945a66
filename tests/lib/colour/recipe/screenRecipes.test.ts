import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { pigmentIds } from '#lib/colour/pigment/pigments.ts';
import { findRecipe, rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { firstGuesses } from '#lib/colour/recipe/firstGuesses.ts';
import { recipeAt } from '#lib/colour/recipe/keptRecipes.ts';
import { screenError } from '#lib/colour/recipe/mixScorer.ts';
import { bottlesUsed, forEachRecipe, totalDrops } from '#lib/colour/recipe/recipes.ts';
import { scorerOf } from '#lib/colour/recipe/recipeTask.ts';
import { groupOf, tie } from '#lib/colour/recipe/scoreWindow.ts';
import { screenRecipes } from '#lib/colour/recipe/screenRecipes.ts';
import { task } from './screenTask.ts';

test('[property] parts of a search keep together what one search keeps, and lead to the same answer', () => {
  const whole = findRecipe(task);
  const heard = [0, 0, 0];
  const parts = [0, 1, 2].map((index) =>
    screenRecipes(task, wanted, { part: { index, of: 3 }, onProgress: (share) => (heard[index] = share) }),
  );
  expect(rankRecipes(task, parts)).toEqual(whole);
  expect(heard.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  expect(parts.every(({ doses }) => doses.length > 0)).toBe(true);
  const rows = parts.flatMap((part) =>
    Array.from(part.doses, (dose, i) => `${recipeAt(part, i, 12).join()}@${dose}`),
  );
  expect(new Set(rows).size).toBe(rows.length);
});

test.each([
  [47, 10, 13, 1],
  [38, 6, 8, 5],
  [58, 14, 20, 2],
  [30, 12, 4, 3],
])(
  '[property] the nearest of all drops, of all groups as good as the best, and all that are counted are kept: L* %i',
  (l, a, b, farEnough) => {
    const one = { ...task, target: { l, a, b } };
    const asked = { near: 0.5, farEnough, mostCounted: 4 };
    const kept = screenRecipes(one, asked);
    const held = new Set(Array.from(kept.doses, (dose, i) => `${recipeAt(kept, i, 12).join()}@${dose}`));
    const exact = scorerOf(one);
    const all: { name: string; group: number; drops: number; score: number }[] = [];
    forEachRecipe(12, 3, 5, (recipe) =>
      one.doses.forEach((amount, dose) =>
        all.push({
          name: `${recipe.join()}@${dose}`,
          group: groupOf(totalDrops(recipe), bottlesUsed(recipe), 3),
          drops: totalDrops(recipe),
          score: exact(recipe, amount),
        }),
      ),
    );
    const lowest = (some: readonly { score: number }[]) =>
      some.reduce((least, { score }) => Math.min(least, score), Infinity);
    const best = lowest(all);
    const isKept = (some: typeof all) => some.filter(({ name }) => !held.has(name));
    for (const drops of [1, 2, 3, 4, 5]) {
      const those = all.filter((each) => each.drops === drops);
      expect(isKept(those.filter(({ score }) => score <= lowest(those) + tie))).toEqual([]);
      for (const used of [1, 2, 3]) {
        const group = those.filter((each) => each.group === groupOf(drops, used, 3));
        if (lowest(group) <= Math.max(farEnough, best + 0.5))
          expect(isKept(group.filter(({ score }) => score <= lowest(group) + tie))).toEqual([]);
      }
    }
    const sorted = all.map(({ score }) => score).toSorted((one, other) => one - other);
    expect(isKept(all.filter(({ score }) => score <= Math.min(best + 0.5, sorted[4] ?? NaN)))).toEqual([]);
    // Most are dropped.
    expect(kept.doses.length).toBeLessThan(all.length / 4);
  },
);

test('[property] kept recipes keep their limits, their scores and their doses', () => {
  const kept = screenRecipes({ ...task, mostWhiteShare: 0.1 }, wanted);
  const exact = scorerOf(task);
  expect(kept.doses.length).toBeGreaterThan(20);
  kept.doses.forEach((dose, i) => {
    const recipe = recipeAt(kept, i, 12);
    expect(totalDrops(recipe)).toBeLessThanOrEqual(5);
    expect(bottlesUsed(recipe)).toBeLessThanOrEqual(3);
    expect(kept.groups[i]).toBe(groupOf(totalDrops(recipe), bottlesUsed(recipe), 3));
    expect(
      recipe.reduce((sum, count, bottle) => sum + count * (bottles[bottle]?.shares['77891'] ?? 0), 0) /
        totalDrops(recipe),
    ).toBeLessThanOrEqual(0.1 + 1e-9);
    if (i % 10 === 0)
      expect(Math.abs((kept.scores[i] ?? NaN) - exact(recipe, task.doses[dose] ?? NaN))).toBeLessThan(
        screenError(task.target),
      );
  });
});

test('[property] climbing finds recipes within the limits, one more drop each time, none nearer than the best', () => {
  const result = findRecipe({ ...task, mostWhiteShare: 0.15 });
  if (!result.ok) throw new Error(result.reason);
  const exact = scorerOf(task);
  const scored: Uint8Array[] = [];
  const heard: (readonly [number, number, number])[] = [];
  firstGuesses(
    { ...task, mostWhiteShare: 0.15 },
    (recipe, count, dose, isRough) => {
      if (!isRough) scored.push(recipe.slice());
      expect(totalDrops(Array.from(recipe))).toBe(count);
      return exact(Array.from(recipe), task.doses[dose] ?? NaN);
    },
    (count, used, score) => heard.push([count, score, used]),
  );
  expect(heard.map(([count]) => count)).toEqual([1, 2, 3, 4, 5, 1, 2, 3, 4, 5]);
  expect(Math.min(...heard.map(([, score]) => score))).toBeGreaterThanOrEqual(result.best.score - 1e-9);
  expect(Math.min(...heard.map(([, score]) => score))).toBeLessThan(result.best.score + 0.5);
  expect(heard.map(([, , used]) => used)).toEqual(scored.map((recipe) => bottlesUsed(Array.from(recipe))));
  for (const recipe of scored) {
    expect(bottlesUsed(Array.from(recipe))).toBeLessThanOrEqual(3);
    expect(
      recipe.reduce((sum, count, bottle) => sum + count * (bottles[bottle]?.shares['77891'] ?? 0), 0) /
        totalDrops(Array.from(recipe)),
    ).toBeLessThanOrEqual(0.15 + 1e-9);
  }
  expect(pigmentIds).toHaveLength(5);
});
