import { mixWidth } from './bandRows.ts';
import { mixBounds } from './mixBounds.ts';
import { firstBands } from './mixScorer.ts';
import type { RecipeTask } from './recipeTask.ts';

/**
 * The least and the most that the bands after the first add to Y, for each dose and time, over all mixes of
 * the bottles.
 */
export function restBounds(
  rows: Float64Array,
  units: Float64Array,
  { bottles, times, doses, target }: RecipeTask,
): Float64Array {
  const rest = new Float64Array(2 * doses.length * times.length);
  const bounds = mixBounds(rows, target);
  times.forEach((_, time) => {
    const own = bottles.map((__, bottle) => units.subarray((time * bottles.length + bottle) * mixWidth));
    const end = (of: (...values: number[]) => number) =>
      Float64Array.from({ length: mixWidth }, (__, i) => of(...own.map((unit) => unit[i] ?? 0)));
    const box = { lo: end(Math.min), hi: end(Math.max) };
    doses.forEach((amount, dose) =>
      rest.set(bounds.restOfY(box, amount, firstBands), 2 * (dose * times.length + time)),
    );
  });
  return rest;
}
