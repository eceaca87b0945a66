import { recipeCount } from '#lib/colour/recipe/recipes.ts';
import { fast, plainly, tasksOf } from '../bench/searches.ts';

/**
 * 24 bottles, at most 4 used, at most 16 drops, two targets: all 20,506,264 recipes one by one on culori, and
 * the search.
 */
export function wholeSearches() {
  const searches = tasksOf({ bottles: 24, mostDrops: 16, doses: [0.2], times: [0] })
    .slice(0, 2)
    .map((task) => {
      const started = performance.now();
      const plain = plainly(task);
      const plainMs = performance.now() - started;
      const from = performance.now();
      const ours = fast(task);
      const ms = performance.now() - from;
      if (!ours.ok) throw new Error(ours.reason);
      const apart = Math.max(
        Math.abs(ours.best.score - plain.score),
        ...ours.byDrops.map(({ score }, i) => Math.abs(score - (plain.dropsBest[i] ?? NaN))),
      );
      if (plain.searched !== recipeCount(24, 4, 16))
        throw new Error(`${plain.searched} recipes were searched.`);
      if (!(apart < 1e-9)) throw new Error(`The two searches differ by ${apart}.`);
      return {
        target: task.target,
        searched: plain.searched,
        best: ours.best.score,
        mostApart: apart,
        plainSeconds: Math.round(plainMs / 100) / 10,
        seconds: Math.round(ms / 10) / 100,
        ratio: Math.round(plainMs / ms),
      };
    });
  return { searches };
}
