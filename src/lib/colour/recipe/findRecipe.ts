import { bottlesUsed, compareSimplicity, totalDrops, type Recipe } from './recipes.ts';
import { scorerOf, type RecipeTask } from './recipeTask.ts';
import { screenError, screenRecipes, type Screened } from './screenRecipes.ts';

/** A recipe at a dose, and how far it stays from the target (ΔE00, the largest of all times). */
export type Found = Readonly<{ recipe: Recipe; dose: number; score: number }>;
export type RecipeResult = Readonly<{
  ok: true;
  /** The nearest of all. */
  best: Found;
  /** The simplest of those within max(1, best + 0.5): fewest drops, then fewest bottles, then nearest. */
  simplest: Found;
  /** The nearest for each number of drops. */
  byDrops: readonly Found[];
  /** How many recipes stay within best + 0.5, all doses together. */
  nearBest: number;
}>;
export type NoRecipe = Readonly<{ ok: false; reason: 'nothing-allowed' }>;

/** Scores closer than this are ties: bottles are mixtures of the same pigments, and 1:1 is 2:2. */
const tie = 1e-6;
/** Recipes this much farther than the best are as good as it; nearer than `farEnough` all are. */
export const near = 0.5;
export const farEnough = 1;

/**
 * The nearest and the simplest recipe, exact over all recipes of whole drops and all doses given. A quick screen
 * scores every recipe; whatever could be a winner within the screen's error is worked out again by `scorerOf`,
 * which is the definition. Refused where the limit on white leaves nothing. Ties: score to 1e-6, then fewer drops, fewer bottles, earlier in the list, smaller dose first.
 */
export function findRecipe(task: RecipeTask, onProgress?: (share: number) => void): RecipeResult | NoRecipe {
  const exact = scorerOf(task);
  const screened = screenRecipes(task, { near, farEnough }, onProgress);
  if (screened.length === 0) return { ok: false, reason: 'nothing-allowed' };
  const lowest = screened.reduce((least, { screen }) => Math.min(least, screen), Infinity);
  const byDrops = Array.from({ length: task.mostDrops }, (_, i) => bestOf(screened.filter(({ drops }) => drops === i + 1), exact)).filter((one) => one !== undefined);
  const best = byDrops.reduce((one, other) => (comesFirst(other, one) ? other : one));
  const limit = Math.max(farEnough, best.score + near);
  const within = screened.filter(({ screen }) => screen <= limit + screenError);
  const fewest = byDrops.find(({ score }) => score <= limit) ?? best;
  const simplest = simplestOf(within.filter(({ drops }) => drops === totalDrops(fewest.recipe)), limit, exact) ?? best;
  const nearBest = screened.filter(({ screen }) => screen <= lowest + near).length;
  return { ok: true, best, simplest, byDrops, nearBest };
}

function comesFirst(one: Found, other: Found): boolean {
  const difference = Math.round(one.score / tie) - Math.round(other.score / tie);
  if (difference !== 0) return difference < 0;
  const simplicity = compareSimplicity(one.recipe, other.recipe);
  return simplicity !== 0 ? simplicity < 0 : one.dose < other.dose;
}

type Exact = (recipe: Recipe, dose: number) => number;

function found({ recipe, dose }: Screened, exact: Exact): Found {
  return { recipe, dose, score: exact(recipe, dose) };
}

function bestOf(screened: readonly Screened[], exact: Exact): Found | undefined {
  const lowest = screened.reduce((least, { screen }) => Math.min(least, screen), Infinity);
  let best: Found | undefined;
  for (const one of screened) {
    if (one.screen > lowest + 2 * screenError) continue;
    const next = found(one, exact);
    if (!best || comesFirst(next, best)) best = next;
  }
  return best;
}

/** The fewest bottles within the limit, then the nearest. */
function simplestOf(screened: readonly Screened[], limit: number, exact: Exact): Found | undefined {
  const kept = screened.map((one) => found(one, exact)).filter(({ score }) => score <= limit);
  return kept.reduce<Found | undefined>((first, one) => {
    if (!first) return one;
    const bottles = bottlesUsed(one.recipe) - bottlesUsed(first.recipe);
    return bottles < 0 || (bottles === 0 && comesFirst(one, first)) ? one : first;
  }, undefined);
}
