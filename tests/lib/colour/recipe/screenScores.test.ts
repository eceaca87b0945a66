import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { bottleUnits, mixWidth } from '#lib/colour/recipe/bandRows.ts';
import { addUp } from '#lib/colour/recipe/firstGuesses.ts';
import { mixScorer, mostScreenError, screenError } from '#lib/colour/recipe/mixScorer.ts';
import { totalDrops } from '#lib/colour/recipe/recipes.ts';
import { scorerOf } from '#lib/colour/recipe/recipeTask.ts';
import { real } from '#tests/tools/real.ts';
import { task } from './screenTask.ts';

const drops = fc
  .array(fc.integer({ min: 0, max: 4 }), { minLength: 12, maxLength: 12 })
  .filter((recipe) => totalDrops(recipe) > 0);

const mixed = (recipe: readonly number[], units: Float64Array, time: number) => {
  const mix = new Float64Array(mixWidth);
  addUp(recipe, units, time * bottles.length * mixWidth, mix);
  return mix;
};

test('[property] the fine score is the definition to rounding, the quick one within its error, the sum of base and drops alike', () => {
  const units = bottleUnits(task);
  fc.assert(
    fc.property(
      drops,
      fc.integer({ min: 0, max: 11 }),
      fc.integer({ min: 1, max: 3 }),
      real(0.02, 0.7),
      real(20, 65),
      real(-8, 20),
      real(-6, 25),
      (recipe, bottle, count, dose, l, a, b) => {
        const target = { l, a, b };
        const { fine, quick } = mixScorer({ ...task, target });
        const whole = recipe.map((each, i) => each + (i === bottle ? count : 0));
        const exact = scorerOf({ ...task, target, times: [2] })(whole, dose);
        const amount = dose / totalDrops(whole);
        expect(Math.abs(fine(mixed(whole, units, 1), 0, amount) - exact)).toBeLessThan(1e-9);
        const score = (limit: number) =>
          quick(
            mixed(recipe, units, 1),
            0,
            units,
            (12 + bottle) * mixWidth,
            count,
            amount,
            limit,
            -Infinity,
            Infinity,
            0,
            100,
          );
        expect(Math.abs(score(Infinity) - exact)).toBeLessThan(screenError(target));
        expect(Math.abs(score(-mostScreenError) - exact)).toBeLessThan(mostScreenError);
      },
    ),
    { numRuns: 1500, seed: 6 },
  );
});

test('[hand] errors: 0.01 to 0.05 where brows lie, 0.14 at most; Y outside its window is never scored; thick layers are', () => {
  expect(screenError({ l: 50, a: 10, b: 13 })).toBeGreaterThan(0.01);
  expect(screenError({ l: 50, a: 10, b: 13 })).toBeLessThan(0.03);
  expect(screenError({ l: 30, a: 10, b: 13 })).toBeLessThan(0.07);
  // Near black the slope is 841/108 = 7.787 in all three: 116·6.07e-5 + 2·√(500² + 200²)·2·6.07e-5 = 0.138.
  expect(mostScreenError).toBeCloseTo(0.138, 3);
  expect(screenError({ l: 0, a: 0, b: 90 })).toBeLessThan(mostScreenError);
  expect(screenError({ l: 0, a: 0, b: 90 })).toBeGreaterThan(0.13);
  const units = bottleUnits(task);
  const { fine, quick } = mixScorer(task);
  const score = (yLo: number, yHi: number, restLo: number, restHi: number, amount = 0.2) =>
    quick(units, 6 * mixWidth, units, 0, 0, amount, Infinity, yLo, yHi, restLo, restHi);
  const open = score(-Infinity, Infinity, 0, 0);
  expect(open).toBeLessThan(30);
  // With nothing bounded after the first bands Y alone decides, and it lies between 2 and 40 here.
  expect([
    score(2, 40, 0, 100),
    score(2, 40, 0, 0),
    score(40, 90, 0, 100),
    score(0, 2, 0, 100),
    score(40, 90, 0, 0),
    score(0, 2, 0, 0),
  ]).toEqual([open, open, Infinity, Infinity, Infinity, Infinity]);
  expect(score(-Infinity, Infinity, 0, 0, 400)).toBeCloseTo(fine(units, 6 * mixWidth, 400), 12);
});
