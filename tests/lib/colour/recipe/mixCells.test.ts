import { expect, test } from 'vitest';
import { bottleOf, bottles } from '#lib/colour/pigment/bottles.ts';
import { bandRows, bottleUnits, mixWidth } from '#lib/colour/recipe/bandRows.ts';
import { mixAxes, pigmentMix } from '#lib/colour/recipe/mixAxes.ts';
import { mixBounds } from '#lib/colour/recipe/mixBounds.ts';
import { mixCells, mostByte } from '#lib/colour/recipe/mixCells.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { base, withOwn } from './mixCellsTask.ts';

const cellsOf = (task: RecipeTask, wanted: number) =>
  mixCells(task, bandRows(task), bottleUnits(task), wanted);

const allCorners = Array.from({ length: 16 }, (_, bits) => [0, 1, 2, 3].map((axis) => (bits >> axis) & 1));

/**
 * The floor of a cell: the box round the mixes of its sixteen corners, widened by what a bottle holds beside
 * them, cut to what any bottle holds.
 */
function floorByCorners(task: RecipeTask, wanted: number, slots: readonly number[], dose: number): number {
  const rows = bandRows(task);
  const units = bottleUnits(task);
  const { axes, rest } = mixAxes(task, rows, wanted);
  const bounds = mixBounds(rows, task.target);
  const floors = task.times.map((years, time) => {
    const left = leftOf(task.ageing, years);
    const [restMix, ...mixes] = [rest, ...axes.map(({ pigment }) => pigment)].map((pigment) =>
      pigmentMix(pigment, left),
    );
    const mixed = (shares: readonly number[], i: number) => {
      const others = shares.reduce((sum, share) => sum + share, 0);
      return shares.reduce(
        (sum, share, axis) => sum + share * (mixes[axis]?.[i] ?? NaN),
        (1 - others) * (restMix?.[i] ?? NaN),
      );
    };
    const box = { lo: new Float64Array(mixWidth), hi: new Float64Array(mixWidth) };
    for (let i = 0; i < mixWidth; i++) {
      const corners = allCorners.map((ends) =>
        mixed(
          axes.map(({ lo, step }, axis) => lo + step * ((slots[axis] ?? NaN) + (ends[axis] ?? NaN))),
          i,
        ),
      );
      const own = task.bottles.map(
        (_, bottle) => units[(time * task.bottles.length + bottle) * mixWidth + i] ?? NaN,
      );
      const beside = task.bottles.map(
        ({ shares }, bottle) =>
          (own[bottle] ?? NaN) -
          mixed(
            axes.map(({ pigment }) => shares[pigment]),
            i,
          ),
      );
      box.lo[i] = Math.max(0, Math.min(...own), Math.min(...corners) + Math.min(...beside));
      box.hi[i] = Math.max(
        box.lo[i] ?? NaN,
        Math.min(Math.max(...own), Math.max(...corners) + Math.max(...beside)),
      );
    }
    return bounds.floor(box, task.doses[dose] ?? NaN);
  });
  return Math.max(...floors);
}

test.each([
  ['the palette', bottles],
  ['own spectra', withOwn],
  ['three pigments', bottles.slice(5, 9)],
  ['two', bottles.slice(10)],
  ['one bottle', bottles.slice(3, 4)],
] as const)('[property] the floor of a cell is that of the box round its sixteen corners: %s', (_, some) => {
  for (const target of [base.target, { l: 60, a: 4, b: 25 }, { l: 30, a: 6, b: -3 }]) {
    const task = { ...base, bottles: some, target };
    const cells = cellsOf(task, 400);
    const [size0, size1, size2, size3] = cells.sizes;
    const { axes } = mixAxes(task, bandRows(task), 400);
    expect(cells.sizes).toEqual([0, 1, 2, 3].map((axis) => (axes[axis]?.steps ?? 0) + 1));
    expect(cells.cellCount).toBe(size0 * size1 * size2 * size3);
    expect(cells.floors).toHaveLength(2 * cells.cellCount);
    // So many slots from where an axis starts lies the share of a bottle.
    some.forEach(({ shares }, bottle) =>
      axes.forEach(({ pigment, lo, step }, axis) =>
        expect(lo + step * (cells.steps[4 * bottle + axis] ?? NaN)).toBeCloseTo(shares[pigment], 9),
      ),
    );
    const kinds = new Set<number>();
    for (
      let cell = 0, step = Math.max(1, Math.floor(cells.cellCount / 12));
      cell < cells.cellCount;
      cell += step
    ) {
      const slots = [
        Math.floor(cell / (size1 * size2 * size3)),
        Math.floor(cell / (size2 * size3)) % size1,
        Math.floor(cell / size3) % size2,
        cell % size3,
      ];
      for (const dose of [0, 1]) {
        const [ours, plain] = [cells.floorOf(cell, dose), floorByCorners(task, 400, slots, dose)];
        expect(ours, `${cell} at ${dose}`).toBeCloseTo(plain, 5);
        // In steps of a twelfth, rounded down; the byte stands at its dose and cell.
        if (Math.abs((12 * plain) % 1) > 1e-3) {
          expect(cells.fill(cell, dose)).toBe(Math.min(255, 1 + Math.floor(12 * plain)));
          expect(cells.floors[dose * cells.cellCount + cell]).toBe(cells.fill(cell, dose));
        }
        kinds.add(Math.round(plain));
      }
    }
    if (cells.cellCount > 50) expect(kinds.size).toBeGreaterThan(3);
  }
});

test('[hand] slots along an axis, and what one drop of each bottle adds', () => {
  // Black and white: one axis, black from 0 to 1 in ten slots. A drop of black adds ten slots, of white none.
  const task = { ...base, bottles: bottles.slice(10) };
  const cells = cellsOf(task, 10);
  expect(cells.sizes).toEqual([11, 1, 1, 1]);
  expect(Array.from(cells.steps)).toEqual([10, 0, 0, 0, 0, 0, 0, 0]);
  // A bottle with a quarter of black as the darkest: half of it lies in the middle.
  const three = [
    bottleOf('a', { '77891': 1 }),
    bottleOf('b', { '77891': 7, '77499': 1 }),
    bottleOf('c', { '77891': 3, '77499': 1 }),
  ];
  expect(
    Array.from(cellsOf({ ...base, bottles: three }, 8).steps)
      .filter((_, i) => i % 4 === 0)
      .map((step) => Math.round(1e9 * step) / 1e9),
  ).toEqual([0, 4, 8]);
});

test('[hand] a floor out of every byte is kept as the highest; no limit opens a higher one', () => {
  const cells = cellsOf({ ...base, target: { l: 3, a: 60, b: 90 } }, 20);
  expect(cells.floorOf(0, 0)).toBeGreaterThan(255 / 12);
  expect(cells.fill(0, 0)).toBe(255);
  expect([mostByte(21.1), mostByte(21.2), mostByte(1000)]).toEqual([254, 255, 255]);
});
