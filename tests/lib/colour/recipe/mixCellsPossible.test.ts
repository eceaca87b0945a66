import { expect, test } from 'vitest';
import { bottles, noPigment, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { bandRows, bottleUnits } from '#lib/colour/recipe/bandRows.ts';
import { mixAxes, pigmentMix } from '#lib/colour/recipe/mixAxes.ts';
import { mixBounds } from '#lib/colour/recipe/mixBounds.ts';
import { mixCells } from '#lib/colour/recipe/mixCells.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { base, withOwn } from './mixCellsTask.ts';

const cellsOf = (task: RecipeTask, wanted: number) =>
  mixCells(task, bandRows(task), bottleUnits(task), wanted);

test('[property] a cell is possible where its least shares add to at most 1 and hold no more white than allowed', () => {
  const cells = cellsOf(base, 400);
  const [size0, size1, size2, size3] = cells.sizes;
  const { axes } = mixAxes(base, bandRows(base), 400);
  const whiteAxis = axes.findIndex(({ pigment }) => pigment === '77891');
  const met = { yes: 0, tooMuch: 0, tooWhite: 0 };
  let cell = 0;
  for (let slot0 = 0; slot0 < size0; slot0++)
    for (let slot1 = 0; slot1 < size1; slot1++)
      for (let slot2 = 0; slot2 < size2; slot2++)
        for (let slot3 = 0; slot3 < size3; slot3++, cell++) {
          const least = [slot0, slot1, slot2, slot3].map(
            (slot, axis) => (axes[axis]?.lo ?? NaN) + (axes[axis]?.step ?? NaN) * slot,
          );
          const isTooMuch = least.reduce((sum, share) => sum + share, 0) > 1 + 1e-6;
          const isTooWhite = (least[whiteAxis] ?? NaN) > 0.3;
          expect(cells.isPossible(cell, 0.3)).toBe(!isTooMuch && !isTooWhite);
          expect(cells.isPossible(cell, 1)).toBe(!isTooMuch);
          met[isTooMuch ? 'tooMuch' : isTooWhite ? 'tooWhite' : 'yes']++;
        }
  expect(cell).toBe(cells.cellCount);
  expect(Math.min(...Object.values(met))).toBeGreaterThan(10);
  // On the edge counts as inside: black alone, and a limit that ends where a slot begins.
  expect(cellsOf({ ...base, bottles: bottles.slice(10) }, 10).isPossible(10, 1)).toBe(true);
  const [second, limit] = [
    2 * cells.sizes.slice(whiteAxis + 1).reduce((product, size) => product * size, 1),
    2 * (axes[whiteAxis]?.step ?? NaN),
  ];
  expect([cells.isPossible(second, limit), cells.isPossible(second, limit - 1e-6)]).toEqual([true, false]);
});

test.each([
  ['the palette', bottles],
  ['own spectra', withOwn],
] as const)(
  '[property] a cell at a time is the mix in its middle, half a slot along each axis, and the box its floor is made of: %s',
  (_, some) => {
    const task = { ...base, bottles: some };
    const rows = bandRows(task);
    const cells = cellsOf(task, 400);
    const { axes, rest } = mixAxes(task, rows, 400);
    const bounds = mixBounds(rows, task.target);
    const [, size1, size2, size3] = cells.sizes;
    for (const cell of [0, 7, Math.floor(cells.cellCount / 3), cells.cellCount - 1]) {
      const slots = [
        Math.floor(cell / (size1 * size2 * size3)),
        Math.floor(cell / (size2 * size3)) % size1,
        Math.floor(cell / size3) % size2,
        cell % size3,
      ];
      const floors = task.times.map((years, time) => {
        const left = leftOf(task.ageing, years);
        const alone = pigmentMix(rest, left);
        const moves = axes.map(({ pigment }) =>
          pigmentMix(pigment, left).map((value, i) => value - (alone[i] ?? NaN)),
        );
        const { middle, halves, box } = cells.cellAt(cell, time);
        expect(halves).toHaveLength(axes.length);
        alone.forEach((value, i) => {
          expect(middle[i]).toBeCloseTo(
            value +
              axes.reduce(
                (sum, { lo, step }, axis) =>
                  sum + (lo + step * ((slots[axis] ?? NaN) + 0.5)) * (moves[axis]?.[i] ?? NaN),
                0,
              ),
            9,
          );
          axes.forEach(({ step }, axis) =>
            expect(halves[axis]?.[i]).toBeCloseTo((step / 2) * (moves[axis]?.[i] ?? NaN), 9),
          );
        });
        return bounds.floor(box, 0.3);
      });
      expect(Math.max(...floors)).toBeCloseTo(cells.floorOf(cell, 1), 9);
    }
  },
);

test('[hand] the place says all of a mix where pigments add to 1 and nothing else is in any bottle', () => {
  const isWhole = (some: readonly Bottle[]) => cellsOf({ ...base, bottles: some }, 40).isWhole;
  const plain = { id: 'plain', shares: { ...noPigment, '77492': 0.6, '77499': 0.4 } };
  const own = Array.from({ length: 36 }, () => ({ k: 0.1, s: 0.1 }));
  expect([isWhole(bottles), isWhole([plain, { id: 'black', shares: { ...noPigment, '77499': 1 } }])]).toEqual(
    [true, true],
  );
  // One bottle alone has no axes to say anything.
  expect(isWhole([plain])).toBe(false);
  // More than its pigments, less than 1, and in one bottle of two alone.
  expect([
    isWhole([{ ...plain, shares: { ...plain.shares, own } }]),
    isWhole([{ id: 'thin', shares: { ...noPigment, '77492': 0.6, '77499': 0.3 } }]),
  ]).toEqual([false, false]);
  expect([
    isWhole([plain, { id: 'more', shares: { ...noPigment, '77491': 1, own } }]),
    isWhole([plain, { id: 'thin', shares: { ...noPigment, '77491': 0.9 } }]),
  ]).toEqual([false, false]);
});
