import { expect, test } from 'vitest';
import { bandRows, bottleUnits } from '#lib/colour/recipe/bandRows.ts';
import { cellLines } from '#lib/colour/recipe/cellLines.ts';
import { mixCells, type MixCells } from '#lib/colour/recipe/mixCells.ts';
import { mixSlopes, slopesWidth } from '#lib/colour/recipe/mixSlopes.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { base } from './mixCellsTask.ts';

const task: RecipeTask = { ...base, mostDrops: 6 };
const rows = bandRows(task);
const cells = mixCells(task, rows, bottleUnits(task), 300);
const [size0, size1, size2, size3] = cells.sizes;
const counts = (size: number) => Array.from({ length: size }, (_, slot) => slot);
/** Every cell by its slots, in the order in which cells are numbered. */
const everyCell = counts(size0).flatMap((slot0) =>
  counts(size1).flatMap((slot1) =>
    counts(size2).flatMap((slot2) => counts(size3).map((slot3) => [slot0, slot1, slot2, slot3] as const)),
  ),
);
/** Numbers that add to a slot without rounding. */
const inside = [0.125, 0.375, 0.625, 0.96875] as const;

const slopes = mixSlopes(rows, task.target);
const scratch = new Float64Array(slopesWidth);

/** The highest floor of all times at a place inside a cell, worked out by itself. */
function floorOf(cell: number, dose: number): number {
  const [p0, p1, p2, p3] = inside;
  return Math.max(
    ...task.times.map((_, time) => {
      slopes.fill(cells.cellAt(cell, time), task.doses[dose] ?? NaN, scratch, 0);
      return slopes.floorAt(scratch, 0, p0 - 0.5, p1 - 0.5, p2 - 0.5, p3 - 0.5);
    }),
  );
}

test('[property] in each cell, at each dose, the limit is the highest floor of all times; a cell is laid out once', () => {
  const asked: string[] = [];
  const heard: MixCells = {
    ...cells,
    cellAt: (cell, time) => {
      asked.push(`${cell} ${time}`);
      return cells.cellAt(cell, time);
    },
  };
  const lines = cellLines(task, heard);
  const all = everyCell.flatMap((slots, cell) =>
    task.doses.map((_, dose) => ({ slots, cell, dose, floor: floorOf(cell, dose) })),
  );
  // More than room is made for at first, twice.
  expect(all.length).toBeGreaterThan(512);
  expect(all.filter(({ floor }) => floor > 0).length).toBeGreaterThan(100);
  const wrongOf = (some: typeof all) =>
    some.filter(({ slots, dose, floor }) => {
      lines.place.set(slots.map((slot, axis) => slot + (inside[axis] ?? NaN)));
      const said = [floor - 1e-9, floor, floor + 1e-9].map((limit) => lines.mayReach(dose, limit));
      return said.join(' ') !== 'false true true';
    });
  expect(wrongOf(all)).toEqual([]);
  // Again, the other way round: what was kept is still there.
  expect(wrongOf(all.toReversed())).toEqual([]);
  expect(asked.toSorted()).toEqual(
    all.flatMap(({ cell }) => task.times.map((_, time) => `${cell} ${time}`)).toSorted(),
  );
});
