import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { findRecipe, type Found, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { bottlesUsed, compareSimplicity, forEachRecipe, totalDrops } from '#lib/colour/recipe/recipes.ts';
import { colourerOf, keepsLook, scorerOf, sharesOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { real } from '#tests/tools/real.ts';

/** By definition: every recipe at every dose, the same tie rule, nothing left out. */
function byEnumeration(
  task: RecipeTask,
  { near, farEnough, mostCounted } = { near: 0.5, farEnough: 1, mostCounted: 1001 },
):
  | Readonly<{
      best: Found;
      simplest: Found;
      byDrops: readonly Found[];
      nearBest: number;
      hasMoreNear: boolean;
    }>
  | undefined {
  const exact = scorerOf(task);
  const colours = colourerOf(task);
  const all: Found[] = [];
  for (const dose of task.doses)
    forEachRecipe(task.bottles.length, task.mostBottles, task.mostDrops, (recipe) => {
      if (sharesOf(recipe, task.bottles)['77891'] > task.mostWhiteShare + 1e-9) return;
      if (!colours(recipe, dose).every((lab) => keepsLook(lab, task))) return;
      all.push({ recipe: recipe.slice(), dose, score: exact(recipe, dose) });
    });
  const order = (one: Found, other: Found) =>
    Math.round(one.score / 1e-6) - Math.round(other.score / 1e-6) ||
    compareSimplicity(one.recipe, other.recipe) ||
    one.dose - other.dose;
  const sorted = all.toSorted(order);
  const [best] = sorted;
  if (!best) return undefined;
  const limit = Math.max(farEnough, best.score + near);
  const [simplest = best] = sorted
    .filter(({ score }) => score <= limit)
    .toSorted(
      (one, other) =>
        totalDrops(one.recipe) - totalDrops(other.recipe) ||
        bottlesUsed(one.recipe) - bottlesUsed(other.recipe) ||
        order(one, other),
    );
  const byDrops = Array.from({ length: task.mostDrops }, (_, i) =>
    sorted.find(({ recipe }) => totalDrops(recipe) === i + 1),
  ).filter((found) => found !== undefined);
  const count = all.filter(({ score }) => score <= best.score + near).length;
  return {
    best,
    simplest,
    byDrops,
    nearBest: Math.min(count, mostCounted),
    hasMoreNear: count > mostCounted,
  };
}

test('[property] so it does for targets without yellow, far from any mix, and with one bottle or one pigment to choose from', () => {
  const skin = skinOptics({ l: 60, a: 11, b: 17 });
  if (!skin.ok) throw new Error(skin.reason);
  const base = {
    skin,
    setting: { depthMm: 0.1, coverage: 0.8, veilShare: 0.35 },
    ageing: startAgeing,
    doses: [0.05, 0.3],
    times: [0, 2],
    mostBottles: 3,
    mostDrops: 4,
    mostWhiteShare: 1,
  };
  const choices = [bottles.slice(6, 7), bottles.slice(10, 12), bottles.slice(4, 10)];
  for (const target of [
    { l: 45, a: 3, b: -6 },
    { l: 30, a: -4, b: 1 },
    { l: 85, a: 2, b: 3 },
    { l: 12, a: 0, b: 0.2 },
    { l: 40, a: 45, b: 30 },
  ])
    for (const some of choices) {
      const [ours, plain] = [
        findRecipe({ ...base, target, bottles: some }),
        byEnumeration({ ...base, target, bottles: some }),
      ];
      expect(ours, `${JSON.stringify(target)} ${some.length}`).toMatchObject({ ok: true, ...plain });
    }
});

const lab = (lo: number, hi: number) => fc.record({ l: real(lo, hi), a: real(4, 15), b: real(4, 20) });

test('[property] the search finds what full enumeration finds, for 200 random skins and targets', () => {
  let ran = 0;
  const counts = { past: 0, within: 0 };
  fc.assert(
    fc.property(
      lab(34, 74),
      lab(22, 60),
      real(0.05, 0.2),
      real(0.2, 1),
      fc.integer({ min: 0, max: 7 }),
      fc.constantFrom(0, 0.1, 1),
      fc.constantFrom(
        { ...wanted, mostCounted: 1 },
        { ...wanted, mostCounted: 12 },
        { near: 0.6, farEnough: 0, mostCounted: 1 },
        wanted,
      ),
      (skinLab, target, depthMm, coverage, first, mostWhiteShare, asked) => {
        const skin = skinOptics(skinLab);
        fc.pre(skin.ok);
        const task: RecipeTask = {
          skin,
          target,
          setting: { depthMm, coverage, veilShare: 0.35 },
          bottles: bottles.slice(first, first + 5),
          ageing: startAgeing,
          doses: [0.08, 0.25],
          times: [0, 2],
          mostBottles: 3,
          mostDrops: 4,
          mostWhiteShare,
        };
        const [ours, plain] = [findRecipe(task, undefined, asked), byEnumeration(task, asked)];
        if (!ours.ok) throw new Error(ours.reason);
        if (!plain) throw new Error('nothing to choose from');
        expect(Math.abs(ours.best.score - plain.best.score)).toBeLessThanOrEqual(1e-9);
        expect(ours.best).toEqual(plain.best);
        expect(ours.simplest).toEqual(plain.simplest);
        expect(ours.byDrops).toEqual(plain.byDrops);
        expect([ours.nearBest, ours.hasMoreNear]).toEqual([plain.nearBest, plain.hasMoreNear]);
        counts[ours.hasMoreNear ? 'past' : 'within']++;
        ran++;
      },
    ),
    { numRuns: 200, seed: 11 },
  );
  expect(ran).toBeGreaterThanOrEqual(200);
  expect(Math.min(counts.past, counts.within)).toBeGreaterThan(40);
}, 180_000);

test('[property] with limits on darkness and hue it finds what enumeration finds among those that keep them, or that none does', () => {
  const seen = { found: 0, none: 0, other: 0 };
  fc.assert(
    fc.property(
      lab(40, 74),
      lab(30, 60),
      real(0.5, 8),
      real(2, 25),
      fc.integer({ min: 0, max: 7 }),
      fc.integer({ min: 1, max: 3 }),
      (skinLab, target, mostDarker, mostLeanDeg, first, which) => {
        const skin = skinOptics(skinLab);
        fc.pre(skin.ok);
        const open: RecipeTask = {
          skin,
          target,
          setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
          bottles: bottles.slice(first, first + 5),
          ageing: startAgeing,
          doses: [0.08, 0.25],
          times: [0, 2],
          mostBottles: 3,
          mostDrops: 4,
          mostWhiteShare: 1,
        };
        const task = { ...open, ...(which & 1 ? { mostDarker } : {}), ...(which & 2 ? { mostLeanDeg } : {}) };
        const [ours, plain] = [findRecipe(task), byEnumeration(task)];
        if (!plain) expect(ours).toEqual({ ok: false, reason: 'nothing-allowed' });
        else expect(ours).toMatchObject({ ok: true, ...plain });
        if (!plain) seen.none++;
        else {
          const free = findRecipe(open);
          if (free.ok && free.best.score < plain.best.score) seen.other++;
          else seen.found++;
        }
      },
    ),
    { numRuns: 80, seed: 12 },
  );
  // The limits bite in many cases, and leave nothing in some.
  expect(seen.other).toBeGreaterThan(8);
  expect(seen.none).toBeGreaterThan(3);
  expect(seen.found).toBeGreaterThan(10);
}, 60_000);

test('[hand] where the limit on white leaves no bottle, nothing is found; progress runs to its end', () => {
  const skin = skinOptics({ l: 63, a: 10, b: 19 });
  if (!skin.ok) throw new Error(skin.reason);
  const only = bottles.filter(({ id }) => id === 'white' || id === 'orange');
  const base = {
    skin,
    setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
    bottles: only,
    ageing: startAgeing,
    doses: [0.2],
    mostBottles: 2,
    mostDrops: 3,
    times: [0],
    target: { l: 45, a: 15, b: 20 },
  };
  expect(findRecipe({ ...base, mostWhiteShare: 0.05 })).toEqual({ ok: false, reason: 'nothing-allowed' });
  const heard: number[] = [];
  expect(findRecipe({ ...base, mostWhiteShare: 0.1 }, (share) => heard.push(share)).ok).toBe(true);
  expect(heard).toEqual(heard.toSorted((one, other) => one - other));
  expect(heard.at(-1)).toBe(1);
});
