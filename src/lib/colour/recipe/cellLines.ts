import { bandRows } from './bandRows.ts';
import type { MixCells } from './mixCells.ts';
import { mixSlopes, slopesWidth } from './mixSlopes.ts';
import type { RecipeTask } from './recipeTask.ts';

const firstRoom = 256;

/**
 * The straight lines of cells (mixSlopes.ts), worked out when a recipe first asks and kept: for recipes that
 * a whole cell's floor lets pass.
 */
export function cellLines(
  { skin, setting, target, doses, times }: RecipeTask,
  { cellCount, sizes, cellAt }: MixCells,
) {
  const slopes = mixSlopes(bandRows({ skin, setting }), target);
  const width = times.length * slopesWidth;
  const [, size1, size2, size3] = sizes;
  // 0 stands for not yet worked out.
  const places = new Int32Array(cellCount * doses.length);
  let lines = new Float64Array(firstRoom * width);
  let count = 0;
  const fill = (cell: number, dose: number): number => {
    if ((count + 1) * width > lines.length) {
      const longer = new Float64Array(2 * lines.length);
      longer.set(lines);
      lines = longer;
    }
    for (let time = 0; time < times.length; time++)
      slopes.fill(cellAt(cell, time), doses[dose] ?? 0, lines, count * width + time * slopesWidth);
    return (places[dose * cellCount + cell] = ++count);
  };
  const place = new Float64Array(4);
  return {
    /** Where a recipe lies, in slots along each axis: to be set before the question. */
    place,
    /**
     * False where the recipe at the place is proven to stay farther from the target than a limit, at one of
     * the times.
     */
    mayReach: (dose: number, limit: number): boolean => {
      const p0 = place[0] ?? 0;
      const p1 = place[1] ?? 0;
      const p2 = place[2] ?? 0;
      const p3 = place[3] ?? 0;
      const slot0 = Math.floor(p0);
      const slot1 = Math.floor(p1);
      const slot2 = Math.floor(p2);
      const slot3 = Math.floor(p3);
      const cell = ((slot0 * size1 + slot1) * size2 + slot2) * size3 + slot3;
      const at = ((places[dose * cellCount + cell] || fill(cell, dose)) - 1) * width;
      for (let time = 0; time < times.length; time++)
        if (
          slopes.floorAt(
            lines,
            at + time * slopesWidth,
            p0 - slot0 - 0.5,
            p1 - slot1 - 0.5,
            p2 - slot2 - 0.5,
            p3 - slot3 - 0.5,
          ) > limit
        )
          return false;
      return true;
    },
  };
}
