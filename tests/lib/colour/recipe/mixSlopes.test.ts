import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles, noPigment } from '#lib/colour/pigment/bottles.ts';
import { xyzToLab } from '#lib/colour/spaces/lab.ts';
import { whiteOf } from '#lib/colour/spectrum/observe.ts';
import { pigmentIds } from '#lib/colour/pigment/pigments.ts';
import { rise } from '#lib/colour/layers/kubelkaMunk.ts';
import { bandRows, bottleUnits } from '#lib/colour/recipe/bandRows.ts';
import { cellLines } from '#lib/colour/recipe/cellLines.ts';
import { rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { mixCells } from '#lib/colour/recipe/mixCells.ts';
import { mixScorer } from '#lib/colour/recipe/mixScorer.ts';
import { mixSlopes, mostMove, riseSlope, slopesWidth } from '#lib/colour/recipe/mixSlopes.ts';
import { totalDrops } from '#lib/colour/recipe/recipes.ts';
import { scorerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { screenRecipes } from '#lib/colour/recipe/screenRecipes.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { real } from '#tests/tools/real.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const task: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
  bottles,
  ageing: startAgeing,
  doses: [0.1, 0.3, 0.65],
  times: [0, 2],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 3,
  mostDrops: 6,
  mostWhiteShare: 1,
};
const white = whiteOf('D65');
const riseOf = (u: number) => rise({ k: Math.sqrt(u), s: 0 });
const slopeAt = (u: number) => riseSlope(u, riseOf(u));

test('[property] the slope of √u coth √u is that of its steps, and keeps the bounds that the error of a line rests on', () => {
  for (const u of [2e-4, 9e-4, 1.1e-3, 0.01, 0.3, 1, 4, 20, 90, 190]) {
    const step = Math.min(u / 2, 0.01 * Math.max(1, u));
    expect(slopeAt(u) / ((riseOf(u + step) - riseOf(u - step)) / (2 * step))).toBeCloseTo(1, 3);
    expect(slopeAt(u)).toBeLessThanOrEqual(Math.min(1 / 3, 0.5 / Math.sqrt(u)));
    const bend = (slopeAt(u + step) - slopeAt(u - step)) / (2 * step);
    expect(bend).toBeLessThan(0);
    // The middle of a step bends a little less than its ends together.
    expect(-bend).toBeLessThan(((2 * slopeAt(u)) / (u + Math.PI ** 2)) * 1.01);
  }
  expect(riseSlope(0, 1)).toBeCloseTo(1 / 3, 12);
  expect(riseSlope(1e-3, riseOf(1e-3))).toBeCloseTo(riseSlope(0.999999e-3, 1), 8);
});

test('[library] a colour with yellow that moves so far comes no nearer, by the CIEDE2000 of culori, than it may', () => {
  const culori = differenceCiede2000();
  let ran = 0;
  fc.assert(
    fc.property(
      fc.record({ l: real(15, 80), a: real(-6, 26), b: real(0.5, 30) }),
      fc.record({ l: real(15, 80), a: real(-6, 26), b: real(0.5, 30) }),
      real(-1.5, 1.5),
      real(0, 1.5),
      real(0, 2 * Math.PI),
      (one, target, offL, offAB, angle) => {
        fc.pre(one.b > offAB && Math.hypot(one.a, one.b) > Math.hypot(target.a, target.b) / 3 + offAB);
        const score = (l: number, a: number, b: number) =>
          culori({ mode: 'lab65', l, a, b }, { mode: 'lab65', ...target });
        const before = score(one.l, one.a, one.b);
        const after = score(one.l + offL, one.a + offAB * Math.cos(angle), one.b + offAB * Math.sin(angle));
        expect(after).toBeGreaterThanOrEqual(before - mostMove(before, Math.abs(offL), offAB));
        ran++;
      },
    ),
    { numRuns: 6000, seed: 21 },
  );
  expect(ran).toBe(6000);
});

test('[property] between two pigments a line is off by no more than it says, and by a good part of that somewhere', () => {
  const most = { l: 0, a: 0, b: 0 };
  const pairs = pigmentIds.flatMap((one, i) => pigmentIds.slice(i + 1).map((other) => [one, other] as const));
  for (const [one, other] of pairs)
    for (const [count, dose] of [
      [2, 0.1],
      [4, 0.3],
      [9, 0.65],
    ] as const) {
      const some: RecipeTask = {
        ...task,
        doses: [dose],
        times: [0],
        bottles: [
          { id: 'a', shares: { ...noPigment, [one]: 1 } },
          { id: 'b', shares: { ...noPigment, [other]: 1 } },
        ],
      };
      const rows = bandRows(some);
      const cells = mixCells(some, rows, bottleUnits(some), count);
      const slopes = mixSlopes(rows, some.target);
      const { labOf } = mixScorer(some);
      const lines = new Float64Array(3 + slopesWidth);
      for (let cell = 0; cell < cells.cellCount - 1; cell++) {
        const { middle, halves } = cells.cellAt(cell, 0);
        const [offL, offA, offB] = slopes.fill(cells.cellAt(cell, 0), dose, lines, 3);
        expect(lines[18]).toBe(offL);
        expect(lines[19]).toBeCloseTo(Math.sqrt(offA ** 2 + offB ** 2), 12);
        for (const part of [-0.5, -0.3, 0, 0.3, 0.5]) {
          const mix = middle.map((value, i) => Math.max(0, value + 2 * part * (halves[0]?.[i] ?? NaN)));
          const on = (at: number) => (lines[3 + at] ?? NaN) + part * (lines[4 + at] ?? NaN);
          const line = xyzToLab(
            { x: (on(0) + on(5)) * white.x, y: on(0) * white.y, z: (on(0) - on(10)) * white.z },
            white,
          );
          const lab = labOf(mix, 0, dose);
          const parts = {
            l: Math.abs(lab.l - line.l) / offL,
            a: Math.abs(lab.a - line.a) / offA,
            b: Math.abs(lab.b - line.b) / offB,
          };
          for (const name of ['l', 'a', 'b'] as const) {
            expect(parts[name], `${one} ${other} ${dose} ${name}`).toBeLessThanOrEqual(1);
            most[name] = Math.max(most[name], parts[name]);
          }
        }
      }
    }
  for (const part of Object.values(most)) expect(part).toBeGreaterThan(0.3);
});

/** The place of a recipe in a cell's slots. */
function placeOf(recipe: readonly number[], steps: Float64Array): readonly number[] {
  return [0, 1, 2, 3].map(
    (axis) =>
      recipe.reduce((place, count, bottle) => place + count * (steps[4 * bottle + axis] ?? NaN), 0) /
      totalDrops(recipe),
  );
}
const recipes = fc
  .array(fc.constantFrom(0, 0, 0, 1, 2, 4), { minLength: 12, maxLength: 12 })
  .filter((recipe) => totalDrops(recipe) > 0);

test.each([
  [40, 0],
  [3000, 0.3],
  [60_000, 0.9],
])(
  '[property] along the lines of %i cells no recipe is ruled out at its own score, and many a little below it',
  (count, sharp) => {
    let [ran, tight] = [0, 0];
    const targets = [
      { l: 47, a: 10, b: 13 },
      { l: 38, a: 7, b: 9 },
      { l: 60, a: 13, b: 21 },
      { l: 44, a: 3, b: -4 },
    ];
    for (const [which, target] of targets.entries()) {
      const one = { ...task, target };
      const cells = mixCells(one, bandRows(one), bottleUnits(one), count);
      expect(cells.isWhole).toBe(true);
      const lines = cellLines(one, cells);
      const exact = scorerOf(one);
      fc.assert(
        fc.property(recipes, fc.integer({ min: 0, max: 2 }), (recipe, dose) => {
          lines.place.set(placeOf(recipe, cells.steps));
          const score = exact(recipe, one.doses[dose] ?? NaN);
          expect(lines.mayReach(dose, score)).toBe(true);
          expect(lines.mayReach(dose, Infinity)).toBe(true);
          // Lines say nothing of a target without yellow, and less of thick layers.
          if (target.b < 0 || dose > 0) return;
          ran++;
          if (!lines.mayReach(dose, score - 1)) tight++;
        }),
        { numRuns: 400, seed: 22 + which },
      );
    }
    expect(tight / ran).toBeGreaterThanOrEqual(sharp);
  },
);

test('[property] with lines and without, whole and in parts, a search finds the same', () => {
  for (const [l, a, b] of [
    [47, 10, 13],
    [38, 6, 8],
    [58, 14, 20],
    [30, 12, 4],
    [66, 9, 14],
  ] as const) {
    const one = { ...task, target: { l, a, b } };
    const without = rankRecipes(one, [screenRecipes(one, wanted, { hasLines: false })]);
    const parts = [0, 1].map((index) =>
      screenRecipes(one, wanted, { hasLines: true, part: { index, of: 2 } }),
    );
    expect(rankRecipes(one, parts)).toEqual(without);
  }
});

test('[hand] a bottle with a spectrum of its own is not told by its place: no lines', () => {
  const own = {
    id: 'own1',
    shares: { ...noPigment, own: Array.from({ length: 36 }, () => ({ k: 1, s: 2 })) },
  };
  const one = { ...task, bottles: [...bottles, own] };
  expect(mixCells(one, bandRows(one), bottleUnits(one), 100).isWhole).toBe(false);
  expect(rankRecipes(one, [screenRecipes(one, wanted, { hasLines: true })])).toEqual(
    rankRecipes(one, [screenRecipes(one, wanted)]),
  );
});
