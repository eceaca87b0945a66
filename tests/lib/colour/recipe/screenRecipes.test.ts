import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { pigmentIds, type Shares } from '#lib/colour/pigment/pigments.ts';
import { bandOrder, bandRows, bottleUnits, mixWidth, orderedMix } from '#lib/colour/recipe/bandRows.ts';
import { findRecipe, rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { addUp, firstGuesses } from '#lib/colour/recipe/firstGuesses.ts';
import { joinedRecipes, keptRecipes, recipeAt } from '#lib/colour/recipe/keptRecipes.ts';
import { lowestScores } from '#lib/colour/recipe/lowestScores.ts';
import { mixAxes } from '#lib/colour/recipe/mixAxes.ts';
import { mixBounds } from '#lib/colour/recipe/mixBounds.ts';
import { mixCells, mostByte } from '#lib/colour/recipe/mixCells.ts';
import { mixScorer, mostScreenError, screenError } from '#lib/colour/recipe/mixScorer.ts';
import { bottlesUsed, forEachRecipe, totalDrops } from '#lib/colour/recipe/recipes.ts';
import { scorerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { dropsOf, groupOf, scoreWindow, tie } from '#lib/colour/recipe/scoreWindow.ts';
import { screenRecipes } from '#lib/colour/recipe/screenRecipes.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
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
  doses: [0.1, 0.3],
  times: [0, 2],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 3,
  mostDrops: 5,
  mostWhiteShare: 1,
};
const drops = fc
  .array(fc.integer({ min: 0, max: 4 }), { minLength: 12, maxLength: 12 })
  .filter((recipe) => totalDrops(recipe) > 0);
const mixed = (recipe: readonly number[], units: Float64Array, time: number) => {
  const mix = new Float64Array(mixWidth);
  addUp(recipe, units, time * bottles.length * mixWidth, mix);
  return mix;
};
const shares = (some: Partial<Shares>): Shares => ({
  '77891': 0,
  '77492': 0,
  '77491': 0,
  '77499': 0,
  '77266': 0,
  ...some,
});

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

test('[property] no mix inside a box of K and S comes nearer to the target than the floor of the box', () => {
  const units = bottleUnits(task);
  const rows = bandRows(task);
  fc.assert(
    fc.property(
      drops,
      real(0.02, 0.5),
      real(0, 0.3),
      fc.record({ l: real(20, 65), a: real(-8, 20), b: real(-6, 25) }),
      fc.array(real(-1, 1), { minLength: mixWidth, maxLength: mixWidth }),
      (recipe, dose, wide, target, moves) => {
        const middle = mixed(recipe, units, 0).map((value) => value / totalDrops(recipe));
        const box = {
          lo: middle.map((value) => value * (1 - wide)),
          hi: middle.map((value) => value * (1 + wide)),
        };
        const inside = middle.map((value, i) => value * (1 + wide * (moves[i] ?? 0)));
        const bounds = mixBounds(rows, target);
        const floor = bounds.floor(box, dose);
        const { fine } = mixScorer({ ...task, target });
        for (const mix of [middle, inside, box.lo, box.hi])
          expect(floor).toBeLessThanOrEqual(fine(mix, 0, dose));
        // A box of one mix has nearly its own lightness and chroma: the floor is no empty promise.
        const own = bounds.floor({ lo: middle, hi: middle }, dose);
        if (target.b > 1) expect(own).toBeGreaterThan(0.3 * fine(middle, 0, dose) - 0.3);
        const [least, most] = bounds.restOfY(box, dose, 16);
        expect(least).toBeLessThanOrEqual(most);
        expect(bounds.restOfY(box, dose, 35)[1]).toBeLessThan(bounds.restOfY(box, dose, 0)[0] / 1000);
      },
    ),
    { numRuns: 600, seed: 7 },
  );
});

const withConstant: readonly Bottle[] = [
  { id: 'a', shares: shares({ '77891': 0.2, '77492': 0.8 }) },
  { id: 'b', shares: shares({ '77891': 0.2, '77499': 0.8 }) },
  { id: 'c', shares: shares({ '77891': 0.2, '77491': 0.3, '77499': 0.3 }) },
];

test.each([
  ['the palette', bottles],
  ['a pigment alike in all, and shares that do not add to 1', withConstant],
  ['one bottle', bottles.slice(6, 7)],
] as const)('[property] the cell of a recipe never promises more than the recipe keeps: %s', (_, some) => {
  const one: RecipeTask = { ...task, bottles: some };
  for (const wanted of [60, 3000]) {
    const cells = mixCells(one, bandRows(one), bottleUnits(one), wanted);
    const [, size1, size2, size3] = cells.sizes;
    expect(cells.cellCount).toBe(cells.sizes.reduce((product, size) => product * size, 1));
    const exact = scorerOf(one);
    let sum = 0;
    fc.assert(
      fc.property(
        fc
          .array(fc.integer({ min: 0, max: 4 }), { minLength: some.length, maxLength: some.length })
          .filter((recipe) => totalDrops(recipe) > 0),
        fc.integer({ min: 0, max: 1 }),
        (recipe, dose) => {
          const slots = [0, 1, 2, 3].map((axis) =>
            Math.floor(
              recipe.reduce(
                (place, count, bottle) => place + count * (cells.steps[4 * bottle + axis] ?? NaN),
                0,
              ) / totalDrops(recipe),
            ),
          );
          const cell = slots.reduce((place, slot, axis) => place * (cells.sizes[axis] ?? NaN) + slot, 0);
          expect(cell).toBe(
            (((slots[0] ?? NaN) * size1 + (slots[1] ?? NaN)) * size2 + (slots[2] ?? NaN)) * size3 +
              (slots[3] ?? NaN),
          );
          expect(cell).toBeLessThan(cells.cellCount);
          const byte = cells.fill(cell, dose);
          expect(cells.floors[dose * cells.cellCount + cell]).toBe(byte);
          const score = exact(recipe, one.doses[dose] ?? NaN);
          expect(byte).toBeGreaterThanOrEqual(1);
          expect((byte - 1) / 12).toBeLessThanOrEqual(score);
          expect(mostByte(score)).toBeGreaterThanOrEqual(byte);
          sum += byte;
        },
      ),
      { numRuns: 300, seed: 8 },
    );
    if (wanted === 3000) expect(sum).toBeGreaterThan(300 * 10);
  }
});

test('[hand] bytes of a limit: a twelfth a step, one more for the empty byte, 255 at most', () => {
  expect([mostByte(0), mostByte(1), mostByte(1.5), mostByte(1.49), mostByte(50)]).toEqual([
    1, 13, 19, 18, 255,
  ]);
});

test('[hand] axes: a slot range for each pigment that differs, the most for the strongest, one pigment left out', () => {
  const { axes, rest } = mixAxes(task, bandRows(task), 3000);
  expect(axes).toHaveLength(4);
  expect(axes.map(({ pigment }) => pigment)).not.toContain(rest);
  expect(['77492', '77491']).toContain(rest);
  const steps = new Map(axes.map(({ pigment, steps }) => [pigment, steps]));
  expect(steps.get('77499')).toBeGreaterThan(steps.get('77891') ?? Infinity);
  for (const { lo, step, steps: count, pigment } of axes)
    expect(lo + step * count).toBeCloseTo(Math.max(...bottles.map((bottle) => bottle.shares[pigment])), 12);
  const cells = axes.reduce((product, { steps: count }) => product * count, 1);
  expect(cells).toBeGreaterThan(2000);
  expect(cells).toBeLessThan(4500);
  const alike = mixAxes({ ...task, bottles: withConstant }, bandRows(task), 100);
  expect([...alike.axes.map(({ pigment }) => pigment), alike.rest].toSorted()).toEqual([
    '77491',
    '77492',
    '77499',
  ]);
  expect(mixAxes({ ...task, bottles: bottles.slice(6, 7) }, bandRows(task), 100).axes).toEqual([]);
});

test('[hand] bands stand in the order of their weight in lightness; K before S', () => {
  expect(
    bandOrder
      .slice(0, 3)
      .map((band) => 380 + 10 * band)
      .toSorted(),
  ).toEqual([540, 550, 560]);
  expect(bandOrder.toSorted((one, other) => one - other)).toEqual(Array.from({ length: 36 }, (_, i) => i));
  const layer = mixLayer(shares({ '77491': 1 }), 0.5);
  const mix = orderedMix(layer);
  bandOrder.forEach((band, i) =>
    expect([mix[2 * i], mix[2 * i + 1]]).toEqual([layer[band]?.k, layer[band]?.s]),
  );
});

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
