import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bottles, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { bandOrder, bandRows, bottleUnits, mixWidth, orderedMix } from '#lib/colour/recipe/bandRows.ts';
import { addUp } from '#lib/colour/recipe/firstGuesses.ts';
import { mixAxes } from '#lib/colour/recipe/mixAxes.ts';
import { mixBounds } from '#lib/colour/recipe/mixBounds.ts';
import { mixCells, mostByte } from '#lib/colour/recipe/mixCells.ts';
import { mixScorer } from '#lib/colour/recipe/mixScorer.ts';
import { totalDrops } from '#lib/colour/recipe/recipes.ts';
import { scorerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { real } from '#tests/tools/real.ts';
import { task, shares } from './screenTask.ts';

const drops = fc
  .array(fc.integer({ min: 0, max: 4 }), { minLength: 12, maxLength: 12 })
  .filter((recipe) => totalDrops(recipe) > 0);

const mixed = (recipe: readonly number[], units: Float64Array, time: number) => {
  const mix = new Float64Array(mixWidth);
  addUp(recipe, units, time * bottles.length * mixWidth, mix);
  return mix;
};

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
