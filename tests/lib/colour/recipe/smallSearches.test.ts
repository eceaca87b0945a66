import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { findRecipe, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { recipeAt } from '#lib/colour/recipe/keptRecipes.ts';
import { screenError } from '#lib/colour/recipe/mixScorer.ts';
import { recipeCount, type Recipe } from '#lib/colour/recipe/recipes.ts';
import { colourerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { screenRecipes } from '#lib/colour/recipe/screenRecipes.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { real } from '#tests/tools/real.ts';
import { allRows, inOrder, found } from './everyRecipe.ts';

const skins = [
  { l: 70, a: 9, b: 17 },
  { l: 55, a: 11, b: 19 },
  { l: 38, a: 10, b: 15 },
].map((lab) => {
  const skin = skinOptics(lab);
  if (!skin.ok) throw new Error(skin.reason);
  return skin;
});

const palettes: readonly (readonly Bottle[])[] = [
  bottles.slice(10),
  [5, 11, 3].map((at) => bottles[at] ?? raise()),
  bottles.slice(2, 6),
  [8, 0, 9, 11].map((at) => bottles[at] ?? raise()),
  bottles.slice(7, 8),
  bottles.slice(10).toReversed(),
  [1, 11, 8].map((at) => bottles[at] ?? raise()),
  // The same pigment twice over: every recipe ties with another.
  [bottles[6] ?? raise(), { ...(bottles[6] ?? raise()), id: 'again' }, bottles[11] ?? raise()],
];

const tasks = fc
  .record({
    skin: fc.constantFrom(...skins),
    bottles: fc.constantFrom(...palettes),
    doses: fc.constantFrom([0.2], [0.3, 0.08], [0.05, 0.15, 0.5]),
    times: fc.constantFrom([0], [2], [0, 2], [0, 1, 4]),
    target: fc.record({ l: real(20, 68), a: real(-2, 16), b: real(-2, 22) }),
    mostBottles: fc.integer({ min: 1, max: 3 }),
    mostDrops: fc.integer({ min: 1, max: 4 }),
    mostWhiteShare: fc.constantFrom(1, 0.4, 0.1),
    look: fc.constantFrom(
      {},
      {},
      { mostDarker: 0.5 },
      { mostDarker: 4 },
      { mostLeanDeg: 4 },
      { mostDarker: 1, mostLeanDeg: 12 },
    ),
  })
  .map(({ look, ...task }): RecipeTask => ({
    ...task,
    ...look,
    setting: { depthMm: 0.1, coverage: 0.8, veilShare: 0.35 },
    ageing: startAgeing,
  }));

test('[property] a small search finds what looking at every recipe finds: the best, the simplest as good, the best of each number of drops, and how many are near', () => {
  const met = { none: 0, simpler: 0, same: 0, counted: 0, more: 0 };
  const asked = fc.constantFrom(
    wanted,
    { ...wanted, mostCounted: 1 },
    { near: 2, farEnough: 0, mostCounted: 3 },
    { near: 3, farEnough: 6, mostCounted: 1000 },
  );
  fc.assert(
    fc.property(tasks, asked, (task, { near, farEnough, mostCounted }) => {
      const rows = allRows(task).toSorted(inOrder);
      const [best] = rows;
      const result = findRecipe(task, undefined, { near, farEnough, mostCounted });
      if (!best) {
        expect(result).toEqual({ ok: false, reason: 'nothing-allowed' });
        met.none++;
        return;
      }
      const good = rows.filter(({ score }) => score <= Math.max(farEnough, best.score + near));
      const [simplest = best] = good.toSorted(
        (one, other) => one.drops - other.drops || one.used - other.used || inOrder(one, other),
      );
      const byDrops = Array.from({ length: task.mostDrops }, (_, i) =>
        rows.find(({ drops }) => drops === i + 1),
      ).filter((row) => row !== undefined);
      const count = rows.filter(({ score }) => score <= best.score + near).length;
      expect(result).toEqual({
        ok: true,
        best: found(best),
        simplest: found(simplest),
        byDrops: byDrops.map(found),
        nearBest: Math.min(count, mostCounted),
        hasMoreNear: count > mostCounted,
      });
      met[simplest.drops === best.drops ? 'same' : 'simpler']++;
      met[count > mostCounted ? 'more' : 'counted']++;
    }),
    { numRuns: 200, seed: 41, endOnFailure: true },
  );
  expect(Math.min(...Object.values(met))).toBeGreaterThan(3);
});

test('[property] the parts of a small screen keep every recipe that could win, once, with its score, and nothing that the limits forbid; their shares of the whole add to 1', () => {
  fc.assert(
    fc.property(tasks, fc.integer({ min: 1, max: 3 }), (task, of) => {
      const rows = allRows(task);
      const shares: number[] = [];
      const kept = Array.from({ length: of }, (_, index) => {
        const heard: number[] = [];
        const part = screenRecipes(task, wanted, {
          part: { index, of },
          onProgress: (share) => heard.push(share),
          hasLines: index === 1,
        });
        expect(heard).toEqual(heard.toSorted((one, other) => one - other));
        shares.push(heard.at(-1) ?? NaN);
        return Array.from(part.doses, (dose, place) => ({
          key: `${recipeAt(part, place, task.bottles.length).join(' ')} at ${task.doses[dose]}`,
          score: part.scores[place] ?? NaN,
        }));
      });
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      const all = new Map(kept.flat().map(({ key, score }) => [key, score]));
      expect(all.size).toBe(kept.flat().length);
      const byKey = new Map(rows.map((row) => [`${row.recipe.join(' ')} at ${row.dose}`, row]));
      for (const [key, score] of all)
        expect(Math.abs(score - (byKey.get(key)?.score ?? NaN)), key).toBeLessThan(screenError(task.target));
      const nearest = Math.min(...rows.map(({ score }) => score));
      for (const [key, { score, drops }] of byKey) {
        const isBestOfDrops = rows.every((other) => other.drops !== drops || other.score >= score);
        if (score <= nearest + 0.5 || isBestOfDrops) expect(all.has(key), key).toBe(true);
      }
    }),
    { numRuns: 100, seed: 42, endOnFailure: true },
  );
});

test('[hand] at every time the whole mix is judged by its look: yellow and black keep a hue that neither keeps alone', () => {
  const task: RecipeTask = {
    skin: skins[0] ?? raise(),
    setting: { depthMm: 0.1, coverage: 1, veilShare: 0.35 },
    bottles: [bottles[0] ?? raise(), bottles[10] ?? raise()],
    ageing: startAgeing,
    doses: [0.4],
    times: [0, 0.2],
    target: { l: 50, a: 10, b: 14 },
    mostBottles: 2,
    mostDrops: 2,
    mostWhiteShare: 1,
    mostLeanDeg: 0,
  };
  const hues = (recipe: Recipe, dose: number) =>
    colourerOf(task)(recipe, dose).map(({ a, b }) => hueDeg(a, b));
  const mix = hues([1, 1], 0.4);
  const [middle, half] = [
    (Math.min(...mix) + Math.max(...mix)) / 2,
    (Math.max(...mix) - Math.min(...mix)) / 2,
  ];
  // At either time each half alone, and each alone at the whole dose, lies outside.
  for (const [recipe, dose] of [
    [[1, 0], 0.2],
    [[0, 1], 0.2],
    [[2, 0], 0.4],
    [[0, 2], 0.4],
  ] as const)
    for (const hue of hues(recipe, dose)) expect(Math.abs(hue - middle)).toBeGreaterThan(half + 1);
  const target = {
    l: 50,
    a: 18 * Math.cos((middle * Math.PI) / 180),
    b: 18 * Math.sin((middle * Math.PI) / 180),
  };
  const kept = screenRecipes({ ...task, target, mostLeanDeg: half + 0.5 }, wanted);
  expect(Array.from(kept.doses, (_, place) => recipeAt(kept, place, 2))).toEqual([[1, 1]]);
});

test('[property] progress rises from step to step of a hundredth at least, and ends at 1', () => {
  const heard: number[] = [];
  const task: RecipeTask = {
    skin: skins[0] ?? raise(),
    setting: { depthMm: 0.1, coverage: 0.8, veilShare: 0.35 },
    bottles,
    ageing: startAgeing,
    doses: [0.2],
    times: [0],
    target: { l: 50, a: 10, b: 14 },
    mostBottles: 3,
    mostDrops: 5,
    mostWhiteShare: 1,
  };
  findRecipe(task, (share) => heard.push(share));
  // What is passed at a step is at most one branch of two bottles with all that follow it, here less than a
  // tenth.
  expect(heard.length).toBeGreaterThan(20);
  expect(heard.length).toBeLessThanOrEqual(101);
  for (const [i, share] of heard.slice(1, -1).entries())
    expect(share - (heard[i] ?? NaN)).toBeGreaterThanOrEqual(0.01 - 1e-12);
  expect(heard.at(-1)).toBe(1);
  // Recipes of one bottle are told by nobody: 12·5 of them are missing before the end.
  const all = recipeCount(12, 3, 5);
  expect(Math.max(...heard.slice(0, -1))).toBeLessThanOrEqual((all - 60) / all + 1e-12);
  expect(Math.max(...heard.slice(0, -1))).toBeGreaterThan((all - 60) / all - 0.02);
});

function raise(): never {
  throw new Error('missing');
}
