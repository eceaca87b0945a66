import { expect, test } from 'vitest';
import { answerFrom, recipeTaskOf, searchPart } from '#calculators/findRecipe.ts';
import { findRecipeFields } from '#calculators/findRecipeFields.ts';
import { startState } from '#calculators/startState.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { readyBottles } from '#lib/colour/own/readyBottles.ts';
import { forEachRecipe, totalDrops } from '#lib/colour/recipe/recipes.ts';
import { colourerOf, scorerOf } from '#lib/colour/recipe/recipeTask.ts';
import { recipeCaution, recipeSays, recipeWords } from '#words/findRecipe.ts';

const shelf: readonly OwnBottle[] = [
  {
    slot: 'own3',
    name: 'Quay ochre',
    content: { from: 'swatch', lab: { l: 46.8, a: 11.5, b: 37.8 }, finish: 'matt' },
  },
  {
    slot: 'own8',
    name: 'School brown',
    content: {
      from: 'two-swatches',
      masstone: { l: 30, a: 8, b: 14 },
      tint: { l: 58, a: 6, b: 13 },
      drops: 1,
      whiteDrops: 4,
      finish: 'matt',
    },
  },
];
const state = { ...startState(findRecipeFields), bottles: 2, drops: 3 };

function taskFor(given: typeof state) {
  const task = recipeTaskOf(given, readyBottles(shelf));
  if ('ok' in task) throw new Error(task.ok ? '' : task.reason);
  return task;
}

test('[property] with swatches among the bottles the best found is the best of every recipe scored one by one', () => {
  const plain = taskFor(state);
  const colours = colourerOf(plain);
  // Three targets that only an own bottle reaches exactly, and the one of the page.
  const mixes = [
    [0, 2],
    [1, 1],
    [2, 1],
  ].map(([ochre = 0, brown = 0]) => [...bottles.map(() => 0), ochre, brown]);
  const targets = [plain.target, ...mixes.flatMap((mix) => colours(mix, 0.3)[0] ?? [])];
  for (const target of targets) {
    const task = { ...plain, target };
    const found = answerFrom(task, [
      searchPart(task, { index: 0, of: 2 }),
      searchPart(task, { index: 1, of: 2 }),
    ]);
    if (!found.ok) throw new Error(found.reason);
    const score = scorerOf(task);
    let best = Infinity;
    forEachRecipe(task.bottles.length, 2, 3, (recipe) => {
      for (const dose of task.doses) best = Math.min(best, score(recipe, dose));
    });
    expect(found.best.score).toBeCloseTo(best, 6);
    expect(found.own).toEqual(['own3', 'own8']);
  }
}, 60_000);

test('[hand] a recipe is told with the names of own bottles, and a swatch in it is cautioned', () => {
  const recipe = [...bottles.map(({ id }) => (id === 'orange' ? 1 : 0)), 0, 2];
  expect(totalDrops(recipe)).toBe(3);
  expect(recipeWords(recipe, ['Quay ochre', 'School brown'])).toBe(
    '2 drops School brown; 1 drop orange: yellow and red oxide',
  );
  const shown = { recipe, dose: 0.3, score: 1, colours: [], near: 0.8, whiteShare: 0, hasSwatch: true };
  const result = {
    ok: true,
    works: true,
    simplest: shown,
    best: shown,
    nearBest: 1,
    hasMoreNear: false,
    away: 9,
    isOutsideMeasured: false,
  } as const;
  expect(recipeSays(result, false, ['Quay ochre', 'School brown']).answer).toContain('2 drops School brown');
  expect(recipeSays({ ...result, nearBest: 8 }, false).doubt).toContain('. 7 other mixes come as near');
  expect(recipeSays({ ...result, nearBest: 1001, hasMoreNear: true }, false).doubt).toContain(
    '. More than 1000 other mixes come as near',
  );
  expect(recipeCaution(result)).toContain('Read its label');
  expect(recipeCaution({ ...result, simplest: { ...shown, hasSwatch: false } })).toBeUndefined();
});
