import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottleOf } from '#lib/colour/pigment/bottles.ts';
import { rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import type { KeptRecipes } from '#lib/colour/recipe/keptRecipes.ts';
import { screenError } from '#lib/colour/recipe/mixScorer.ts';
import {
  compareSimplicity,
  forEachRecipe,
  totalDrops,
  bottlesUsed,
  type Recipe,
} from '#lib/colour/recipe/recipes.ts';
import { colourerOf, scorerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { groupOf } from '#lib/colour/recipe/scoreWindow.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

const skin = skinOptics({ l: 55, a: 11, b: 19 });
if (!skin.ok) throw new Error(skin.reason);
// Three browns so alike that their mixes lie closer together than the quick score is sure of.
const alike = [
  bottleOf('one', { '77492': 40, '77491': 30, '77499': 30 }),
  bottleOf('two', { '77492': 40, '77491': 30, '77499': 30.05 }),
  bottleOf('three', { '77492': 40.1, '77491': 30, '77499': 30 }),
];
const base: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.9, veilShare: 0.35 },
  bottles: alike,
  ageing: startAgeing,
  doses: [0.3, 0.1],
  times: [0, 2],
  target: { l: 30, a: 8, b: 12 },
  mostBottles: 3,
  mostDrops: 3,
  mostWhiteShare: 1,
};
const [nearby] = colourerOf(base)([1, 1, 1], 0.3);
if (!nearby) throw new Error('no colour');
const task = { ...base, target: nearby };
const error = screenError(task.target);

type Row = Readonly<{ recipe: Recipe; dose: number; score: number; quick: number }>;
function rowsOf(some: RecipeTask): readonly Row[] {
  const exact = scorerOf(some);
  const rows: Row[] = [];
  some.doses.forEach((_, dose) =>
    forEachRecipe(some.bottles.length, some.mostBottles, some.mostDrops, (recipe) => {
      const score = exact(recipe, some.doses[dose] ?? NaN);
      rows.push({ recipe: recipe.slice(), dose, score, quick: score });
    }),
  );
  return rows;
}
/** What a screen hands on, with the quick scores given. */
const listOf = (rows: readonly Row[], some: RecipeTask): KeptRecipes => ({
  drops: Uint8Array.from(rows.flatMap(({ recipe }) => recipe)),
  doses: Uint8Array.from(rows.map(({ dose }) => dose)),
  groups: Uint16Array.from(
    rows.map(({ recipe }) => groupOf(totalDrops(recipe), bottlesUsed(recipe), some.mostBottles)),
  ),
  scores: Float64Array.from(rows.map(({ quick }) => quick)),
});
const ranked = (rows: readonly Row[], some: RecipeTask = task) => {
  const result = rankRecipes(some, [listOf(rows, some)], wanted);
  if (!result.ok) throw new Error(result.reason);
  return result;
};
const byScore = (one: Row, other: Row) =>
  Math.round(one.score * 1e6) - Math.round(other.score * 1e6) ||
  compareSimplicity(one.recipe, other.recipe) ||
  (task.doses[one.dose] ?? NaN) - (task.doses[other.dose] ?? NaN);
const found = ({ recipe, dose, score }: Row) => ({ recipe, dose: task.doses[dose], score });
const rows = rowsOf(task);
const bySimplicity = (one: Row, other: Row) =>
  totalDrops(one.recipe) - totalDrops(other.recipe) ||
  bottlesUsed(one.recipe) - bottlesUsed(other.recipe) ||
  byScore(one, other);

test.each([1, 2, 3])(
  '[hand] of %i drops and more the simplest as good has the fewest drops, then the fewest bottles, and of these is the nearest',
  (fewest) => {
    // The target is a mix of all three: more bottles are nearer.
    const mixed: RecipeTask = {
      ...base,
      times: [0],
      target: nearby,
      bottles: [
        bottleOf('one', { '77492': 40, '77491': 30, '77499': 30 }),
        bottleOf('two', { '77492': 38, '77491': 32, '77499': 30 }),
        bottleOf('three', { '77492': 40, '77491': 29, '77499': 31 }),
      ],
    };
    const [target] = colourerOf(mixed)([1, 1, 1], 0.3);
    if (!target) throw new Error('no colour');
    const all = rowsOf({ ...mixed, target }).filter(({ recipe }) => totalDrops(recipe) >= fewest);
    const [best] = all.toSorted(byScore);
    if (!best) throw new Error('no recipe');
    const good = all.filter(({ score }) => score <= Math.max(1, best.score + 0.5));
    const [simplest = best] = good.toSorted(bySimplicity);
    expect(ranked(all, { ...mixed, target }).simplest).toEqual(found(simplest));
    if (fewest > 1)
      expect(
        good.some(
          (row) =>
            totalDrops(row.recipe) === fewest && bottlesUsed(row.recipe) > 1 && row.score < simplest.score,
        ),
      ).toBe(true);
  },
);

test('[hand] what has fewer drops or fewer bottles, but lies out of the limit, is not the simplest', () => {
  // A dose of 0.1 lies far from one of 0.3: all of one drop, and all of one bottle, are that far.
  const some = rows.filter(
    ({ recipe, dose }) => dose === (totalDrops(recipe) === 1 || bottlesUsed(recipe) === 1 ? 1 : 0),
  );
  const [best] = some.toSorted(byScore);
  if (!best) throw new Error('no recipe');
  const [simplest = best] = some
    .filter(({ score }) => score <= Math.max(1, best.score + 0.5))
    .toSorted(bySimplicity);
  expect([totalDrops(simplest.recipe), bottlesUsed(simplest.recipe)]).toEqual([2, 2]);
  expect(ranked(some).simplest).toEqual(found(simplest));
});

test('[property] quick scores that are wrong by anything within their error change no answer', () => {
  const [best] = rows.toSorted(byScore);
  if (!best) throw new Error('no recipe');
  const [simplest = best] = rows
    .filter(({ score }) => score <= Math.max(1, best.score + 0.5))
    .toSorted(bySimplicity);
  const byDrops = [1, 2, 3]
    .map((drops) => rows.filter(({ recipe }) => totalDrops(recipe) === drops).toSorted(byScore)[0])
    .filter((row) => row !== undefined);
  const nearBest = rows.filter(({ score }) => score <= best.score + 0.5).length;
  // Many lie within the error of the best.
  expect(rows.filter(({ score }) => score < best.score + error).length).toBeGreaterThan(8);
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(-0.98, 0, 0.98), { minLength: rows.length, maxLength: rows.length }),
      (off) => {
        const wrong = rows.map((row, i) => ({ ...row, quick: row.score + error * (off[i] ?? NaN) }));
        expect(ranked(wrong)).toEqual({
          ok: true,
          best: found(best),
          simplest: found(simplest),
          byDrops: byDrops.map(found),
          nearBest,
          hasMoreNear: false,
        });
      },
    ),
    { numRuns: 60, seed: 51, endOnFailure: true },
  );
});

test('[hand] what the quick score rules out or lets in by more than its error is not looked at again', () => {
  const sorted = rows.toSorted(byScore);
  const [best, second] = sorted;
  if (!best || !second) throw new Error('no recipe');
  const set = (row: Row, quick: number) => rows.map((one) => (one === row ? { ...one, quick } : one));
  // Over the limit of the best and of the simplest: only the others are weighed.
  expect(ranked(set(best, best.score + 20)).best).toEqual(found(second));
  expect(ranked(set(best, best.score + 20)).nearBest).toBe(ranked(rows).nearBest - 1);
  const simplest = rows.find(
    ({ recipe, dose }) =>
      recipe.join() === ranked(rows).simplest.recipe.join() &&
      task.doses[dose] === ranked(rows).simplest.dose,
  );
  if (!simplest) throw new Error('no simplest');
  const [next] = sorted
    .filter((row) => row !== simplest && row.score <= Math.max(1, best.score + 0.5))
    .toSorted(bySimplicity);
  expect(ranked(set(simplest, 20)).simplest).toEqual(found(next ?? best));
  // Far, but said to be nearest: counted on its word, not taken for the best.
  const far = sorted.at(-1);
  if (!far) throw new Error('no recipe');
  expect(far.score).toBeGreaterThan(best.score + 0.5 + error);
  expect(ranked(set(far, 0))).toMatchObject({ best: found(best), nearBest: ranked(rows).nearBest + 1 });
});

test('[hand] of the same recipe at doses that tie the smaller is taken; without recipes nothing is allowed', () => {
  const twice = { ...task, doses: [0.3 + 1e-12, 0.3] };
  expect(ranked(rowsOf(twice), twice).best.dose).toBe(0.3);
  expect(
    ranked(rowsOf({ ...twice, doses: [0.3, 0.3 + 1e-12] }), { ...twice, doses: [0.3, 0.3 + 1e-12] }).best
      .dose,
  ).toBe(0.3);
  expect(rankRecipes(task, [listOf([], task), listOf([], task)], wanted)).toEqual({
    ok: false,
    reason: 'nothing-allowed',
  });
});
