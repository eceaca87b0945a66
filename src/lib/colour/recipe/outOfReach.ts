import { bandRows, bottleUnits } from './bandRows.ts';
import { mixCells } from './mixCells.ts';
import type { RecipeTask } from './recipeTask.ts';

const cellCount = 2500;

/**
 * True where no mix of the bottles' pigments at any of the doses can come within a difference of the target
 * at all times, whatever its drops: proven by the floors of a few thousand cells, long before a search ends.
 * False proves nothing.
 */
export function isOutOfReach(task: RecipeTask, within: number): boolean {
  const cells = mixCells(task, bandRows(task), bottleUnits(task), cellCount);
  for (let cell = 0; cell < cells.cellCount; cell++) {
    if (!cells.isPossible(cell, task.mostWhiteShare)) continue;
    for (let dose = 0; dose < task.doses.length; dose++) if (cells.floorOf(cell, dose) < within) return false;
  }
  return true;
}
