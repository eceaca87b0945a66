import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/bottles.ts';
import { findRecipe, type Found } from '#lib/colour/recipe/findRecipe.ts';
import { bottlesUsed, compareSimplicity, forEachRecipe, totalDrops } from '#lib/colour/recipe/recipes.ts';
import { colourerOf, keepsLook, scorerOf, sharesOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { quickRise, rowLength, skinMap } from '#lib/colour/recipe/skinMap.ts';
import { pigmentedReflectance } from '#lib/colour/healedColour.ts';
import { rise } from '#lib/colour/kubelkaMunk.ts';
import { mixLayer } from '#lib/colour/pigments.ts';
import { skinOptics } from '#lib/colour/skinOptics.ts';
import { startAgeing } from '#lib/colour/startPlan.ts';
import { real } from '#tests/tools/real.ts';

/** By definition: every recipe at every dose, the same tie rule, nothing left out. */
function byEnumeration(task: RecipeTask): Readonly<{ best: Found; simplest: Found; byDrops: readonly Found[] }> | undefined {
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
    Math.round(one.score / 1e-6) - Math.round(other.score / 1e-6) || compareSimplicity(one.recipe, other.recipe) || one.dose - other.dose;
  const sorted = all.toSorted(order);
  const [best] = sorted;
  if (!best) return undefined;
  const limit = Math.max(1, best.score + 0.5);
  const [simplest = best] = sorted
    .filter(({ score }) => score <= limit)
    .toSorted((one, other) => totalDrops(one.recipe) - totalDrops(other.recipe) || bottlesUsed(one.recipe) - bottlesUsed(other.recipe) || order(one, other));
  const byDrops = Array.from({ length: task.mostDrops }, (_, i) => sorted.find(({ recipe }) => totalDrops(recipe) === i + 1)).filter((found) => found !== undefined);
  return { best, simplest, byDrops };
}

test('[property] so it does for targets without yellow, far from any mix, and with one bottle or one pigment to choose from', () => {
  const skin = skinOptics({ l: 60, a: 11, b: 17 });
  if (!skin.ok) throw new Error(skin.reason);
  const base = { skin, setting: { depthMm: 0.1, coverage: 0.8, veilShare: 0.35 }, ageing: startAgeing, doses: [0.05, 0.3], times: [0, 2], mostBottles: 3, mostDrops: 4, mostWhiteShare: 1 };
  const choices = [bottles.slice(6, 7), bottles.slice(10, 12), bottles.slice(4, 10)];
  for (const target of [{ l: 45, a: 3, b: -6 }, { l: 30, a: -4, b: 1 }, { l: 85, a: 2, b: 3 }, { l: 12, a: 0, b: 0.2 }, { l: 40, a: 45, b: 30 }])
    for (const some of choices) {
      const [ours, plain] = [findRecipe({ ...base, target, bottles: some }), byEnumeration({ ...base, target, bottles: some })];
      expect(ours, `${JSON.stringify(target)} ${some.length}`).toMatchObject({ ok: true, ...plain });
    }
});

const lab = (lo: number, hi: number) => fc.record({ l: real(lo, hi), a: real(4, 15), b: real(4, 20) });

test('[property] the search finds what full enumeration finds, for 200 random skins and targets', () => {
  let ran = 0;
  fc.assert(
    fc.property(lab(34, 74), lab(22, 60), real(0.05, 0.2), real(0.2, 1), fc.integer({ min: 0, max: 7 }), fc.constantFrom(0, 0.1, 1), (skinLab, target, depthMm, coverage, first, mostWhiteShare) => {
      const skin = skinOptics(skinLab);
      fc.pre(skin.ok);
      const task: RecipeTask = {
        skin, target, setting: { depthMm, coverage, veilShare: 0.35 }, bottles: bottles.slice(first, first + 5), ageing: startAgeing,
        doses: [0.08, 0.25], times: [0, 2], mostBottles: 3, mostDrops: 4, mostWhiteShare,
      };
      const [ours, plain] = [findRecipe(task), byEnumeration(task)];
      if (!ours.ok) throw new Error(ours.reason);
      if (!plain) throw new Error('nothing to choose from');
      expect(Math.abs(ours.best.score - plain.best.score)).toBeLessThanOrEqual(1e-9);
      expect(ours.best).toEqual(plain.best);
      expect(ours.simplest).toEqual(plain.simplest);
      expect(ours.byDrops).toEqual(plain.byDrops);
      ran++;
    }),
    { numRuns: 200, seed: 11 },
  );
  expect(ran).toBeGreaterThanOrEqual(200);
}, 60_000);

test('[property] with limits on darkness and hue it finds what enumeration finds among those that keep them, or that none does', () => {
  const seen = { found: 0, none: 0, other: 0 };
  fc.assert(
    fc.property(lab(40, 74), lab(30, 60), real(0.5, 8), real(2, 25), fc.integer({ min: 0, max: 7 }), fc.integer({ min: 1, max: 3 }), (skinLab, target, mostDarker, mostLeanDeg, first, which) => {
      const skin = skinOptics(skinLab);
      fc.pre(skin.ok);
      const open: RecipeTask = {
        skin, target, setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 }, bottles: bottles.slice(first, first + 5), ageing: startAgeing,
        doses: [0.08, 0.25], times: [0, 2], mostBottles: 3, mostDrops: 4, mostWhiteShare: 1,
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
    }),
    { numRuns: 80, seed: 12 },
  );
  // The limits bite in many cases, and leave nothing in some.
  expect(seen.other).toBeGreaterThan(8);
  expect(seen.none).toBeGreaterThan(3);
  expect(seen.found).toBeGreaterThan(10);
}, 60_000);

test('[hand] a colour keeps its limits up to and on them: darker by 3 of 3, a hue 15° away on either side, also across red', () => {
  const target = { l: 50, a: 10, b: 0 };
  const at = (l: number, hDeg: number) => ({ l, a: 10 * Math.cos((hDeg * Math.PI) / 180), b: 10 * Math.sin((hDeg * Math.PI) / 180) });
  const keeps = (l: number, hDeg: number) => keepsLook(at(l, hDeg), { target, mostDarker: 3, mostLeanDeg: 15 });
  expect([keeps(47, 0), keeps(46.99, 0), keeps(80, 0)]).toEqual([true, false, true]);
  expect([keeps(50, 15), keeps(50, 345), keeps(50, 15.01), keeps(50, 344.99), keeps(50, 180)]).toEqual([true, true, false, false, false]);
  expect([keepsLook(at(10, 180), { target }), keepsLook(at(10, 0), { target, mostLeanDeg: 1 }), keepsLook(at(60, 180), { target, mostDarker: 0 })]).toEqual([true, true, true]);
});

test('[property] the fraction stands for √u coth √u within 7.8e-6 of it, up to 200 and beyond', () => {
  for (let u = 0; u <= 240; u += 0.01) expect(Math.abs(quickRise(u) / rise({ k: Math.sqrt(u), s: 0 }) - 1)).toBeLessThanOrEqual(7.8e-6);
});

test.each([72, 54, 36])('[property] five numbers a band stand for veil, ground, surface and coverage, on skin of L* %i', (l) => {
  const skin = skinOptics({ l, a: 10, b: 16 });
  if (!skin.ok) throw new Error(skin.reason);
  const setting = { depthMm: 0.12, coverage: 0.6, veilShare: 0.3 };
  const map = skinMap(skin, setting);
  for (const dose of [0, 0.05, 0.3]) {
    const layer = mixLayer(sharesOf([3, 1, 0, 2], bottles), dose);
    pigmentedReflectance(skin, layer, setting).forEach((seen, band) => {
      const [n1 = 0, n2 = 0, n3 = 0, m1 = 0, m2 = 0] = map.subarray(band * rowLength);
      expect(m1 >= 0 && m2 >= 0 && n3 >= 0 && n3 <= 1, 'what the error bound of the screen rests on').toBe(true);
      const { k, s } = layer[band] ?? { k: NaN, s: NaN };
      const c = rise({ k, s });
      expect((n1 * s + n2 * k + n3 * c) / (m1 * s + m2 * k + c)).toBeCloseTo(seen, 12);
    });
  }
});

test('[hand] drops become shares; the score is the worse of the dates', () => {
  const shares = sharesOf([1, 0, 3], [{ id: 'a', shares: { '77891': 1, '77492': 0, '77491': 0, '77499': 0, '77266': 0 } }, bottles[1] ?? raise(), { id: 'c', shares: { '77891': 0, '77492': 0.5, '77491': 0.5, '77499': 0, '77266': 0 } }]);
  expect(shares).toEqual({ '77891': 0.25, '77492': 0.375, '77491': 0.375, '77499': 0, '77266': 0 });
  const skin = skinOptics({ l: 63, a: 10, b: 19 });
  if (!skin.ok) throw new Error(skin.reason);
  const base = { skin, setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 }, bottles, ageing: startAgeing, doses: [0.2], mostBottles: 2, mostDrops: 2, mostWhiteShare: 1, times: [0, 2] };
  const [, later] = colourerOf({ ...base, target: { l: 40, a: 10, b: 12 } })([0, 0, 0, 0, 0, 0, 1], 0.2);
  if (!later) throw new Error('no colour');
  expect(scorerOf({ ...base, times: [2], target: later })([0, 0, 0, 0, 0, 0, 1], 0.2)).toBe(0);
  expect(scorerOf({ ...base, target: later })([0, 0, 0, 0, 0, 0, 1], 0.2)).toBeGreaterThan(1);
});

test('[hand] where the limit on white leaves no bottle, nothing is found; progress runs to its end', () => {
  const skin = skinOptics({ l: 63, a: 10, b: 19 });
  if (!skin.ok) throw new Error(skin.reason);
  const only = bottles.filter(({ id }) => id === 'white' || id === 'orange');
  const base = { skin, setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 }, bottles: only, ageing: startAgeing, doses: [0.2], mostBottles: 2, mostDrops: 3, times: [0], target: { l: 45, a: 15, b: 20 } };
  expect(findRecipe({ ...base, mostWhiteShare: 0.05 })).toEqual({ ok: false, reason: 'nothing-allowed' });
  const heard: number[] = [];
  expect(findRecipe({ ...base, mostWhiteShare: 0.1 }, (share) => heard.push(share)).ok).toBe(true);
  expect(heard).toEqual(heard.toSorted((one, other) => one - other));
  expect(heard.at(-1)).toBe(1);
});

function raise(): never {
  throw new Error('missing');
}
