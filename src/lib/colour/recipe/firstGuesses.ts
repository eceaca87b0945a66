import { mixWidth } from './bandRows.ts';
import { keepsWhiteLimit, type RecipeTask } from './recipeTask.ts';
import type { Recipe } from './recipes.ts';

const mostExchanges = 12;

/**
 * Good recipes found by climbing, one for each dose and number of drops: a drop is added where it helps most,
 * then single drops change bottles while that helps. They narrow the search from the start and need not be
 * the best.
 */
export function firstGuesses(
  { bottles, doses, mostBottles, mostDrops, mostWhiteShare }: RecipeTask,
  score: (recipe: Uint8Array, drops: number, dose: number, isRough: boolean) => number,
  hear: (drops: number, used: number, score: number) => void,
): void {
  const isAllowed = (recipe: Uint8Array, drops: number) => {
    let used = 0;
    let white = 0;
    recipe.forEach((count, bottle) => {
      if (count > 0) used++;
      white += count * (bottles[bottle]?.shares['77891'] ?? 0);
    });
    return used <= mostBottles && keepsWhiteLimit(white, drops, { mostWhiteShare });
  };
  doses.forEach((_, dose) => {
    let recipe = new Uint8Array(bottles.length);
    for (let drops = 1; drops <= mostDrops; drops++) {
      let best: Readonly<{ recipe: Uint8Array<ArrayBuffer>; score: number }> | undefined;
      const consider = (next: Uint8Array<ArrayBuffer>) => {
        if (!isAllowed(next, drops)) return;
        const found = score(next, drops, dose, true);
        if (!best || found < best.score) best = { recipe: next.slice(), score: found };
      };
      bottles.forEach((__, bottle) => consider(moved(recipe, undefined, bottle)));
      for (let round = 0; round < mostExchanges && best; round++) {
        const from: Readonly<{ recipe: Uint8Array<ArrayBuffer>; score: number }> = best;
        from.recipe.forEach((count, taken) => {
          if (count > 0)
            bottles.forEach((__, given) => given !== taken && consider(moved(from.recipe, taken, given)));
        });
        if (best === from) break;
      }
      if (!best) return;
      recipe = best.recipe;
      hear(drops, recipe.filter((count) => count > 0).length, score(recipe, drops, dose, false));
    }
  });
}

function moved(
  recipe: Uint8Array<ArrayBuffer>,
  taken: number | undefined,
  given: number,
): Uint8Array<ArrayBuffer> {
  const next = recipe.slice();
  if (taken !== undefined) next[taken] = (next[taken] ?? 0) - 1;
  next[given] = (next[given] ?? 0) + 1;
  return next;
}

/** Adds a recipe's bottles into one mix. */
export function addUp(
  recipe: Recipe | Uint8Array,
  units: Float64Array,
  firstUnitAt: number,
  into: Float64Array,
): void {
  into.fill(0);
  for (let bottle = 0; bottle < recipe.length; bottle++) {
    const count = recipe[bottle] ?? 0;
    if (count === 0) continue;
    const at = firstUnitAt + bottle * mixWidth;
    for (let i = 0; i < mixWidth; i++) into[i] = (into[i] ?? 0) + count * (units[at + i] ?? 0);
  }
}
