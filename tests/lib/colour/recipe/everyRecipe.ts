import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { forEachRecipe, type Recipe } from '#lib/colour/recipe/recipes.ts';
import { colourerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';

// Searches small enough to look at every recipe, each in a few milliseconds: they judge every change of the
// search.

type Row = Readonly<{ recipe: Recipe; dose: number; score: number; drops: number; used: number }>;

/** Every recipe that the limits allow, at every dose, with the largest difference of all times. */
export function allRows(task: RecipeTask): readonly Row[] {
  const colours = colourerOf(task);
  const { target, mostDarker = Infinity, mostLeanDeg = 180 } = task;
  const lean = (a: number, b: number) =>
    Math.abs(((hueDeg(a, b) - hueDeg(target.a, target.b) + 540) % 360) - 180);
  const rows: Row[] = [];
  forEachRecipe(task.bottles.length, task.mostBottles, task.mostDrops, (reused) => {
    const recipe = reused.slice();
    const [drops, used] = [
      recipe.reduce((sum, count) => sum + count, 0),
      recipe.filter((count) => count > 0).length,
    ];
    const white =
      recipe.reduce((sum, count, bottle) => sum + count * (task.bottles[bottle]?.shares['77891'] ?? NaN), 0) /
      drops;
    if (white > task.mostWhiteShare + 1e-9) return;
    for (const dose of task.doses) {
      const labs = colours(recipe, dose);
      if (labs.some(({ l, a, b }) => target.l - l > mostDarker || lean(a, b) > mostLeanDeg)) continue;
      rows.push({ recipe, dose, drops, used, score: Math.max(...labs.map((lab) => ciede2000(lab, target))) });
    }
  });
  return rows;
}

const earlier = (one: Recipe, other: Recipe) => {
  const at = one.findIndex((count, bottle) => count !== other[bottle]);
  return at < 0 ? 0 : (other[at] ?? NaN) - (one[at] ?? NaN);
};

/**
 * Nearest first; of ties the fewest drops, then bottles, then the earliest bottles, then the smallest dose.
 */
export const inOrder = (one: Row, other: Row) =>
  Math.round(one.score * 1e6) - Math.round(other.score * 1e6) ||
  one.drops - other.drops ||
  one.used - other.used ||
  earlier(one.recipe, other.recipe) ||
  one.dose - other.dose;

export const found = ({ recipe, dose, score }: Row) => ({ recipe, dose, score });
