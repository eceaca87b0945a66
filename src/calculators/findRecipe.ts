import { type Bottle, bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { type Found, rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import type { KeptRecipes } from '#lib/colour/recipe/keptRecipes.ts';
import { isOutOfReach } from '#lib/colour/recipe/outOfReach.ts';
import { colourerOf, type RecipeTask, sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import type { Recipe } from '#lib/colour/recipe/recipes.ts';
import { type Part, screenRecipes } from '#lib/colour/recipe/screenRecipes.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { simulatedHealings } from '#lib/colour/healing/uncertainHealing.ts';
import { dosesSearched, findRecipeFields, type FindRecipeState } from './findRecipeFields.ts';
import { skinOf } from '#lib/colour/old/skinOf.ts';
import type { Calculator } from './spec.ts';

/**
 * One recipe with what it becomes: colours at six weeks and two years, and how many simulated healings stay
 * near the target.
 */
export type ShownRecipe = Readonly<{
  recipe: Recipe;
  dose: number;
  score: number;
  colours: readonly Lab[];
  near: number;
  whiteShare: number;
  /** Something in it is known by its swatch alone. */
  hasSwatch: boolean;
}>;
export type FindRecipe =
  | Readonly<{
      ok: true;
      works: boolean;
      simplest: ShownRecipe;
      best: ShownRecipe;
      byDrops: readonly Found[];
      /** Bottles searched beside the palette, by their ids: recipes count their drops after the palette's. */
      own: readonly string[];
      nearBest: number;
      hasMoreNear: boolean;
      /** The simplest is looked for among those no farther than this. */
      goodBelow: number;
      /** A difference below which a recipe counts as reaching the target. */
      reachedBelow: number;
      today: Lab;
      away: number;
      isOutsideMeasured: boolean;
    }>
  | Readonly<{ ok: false; reason: 'no-skin-like-spectrum' | 'old-pigment-not-reached' | 'nothing-allowed' }>;

const times = [0, 2];
/** A difference below which a recipe counts as reaching the target. */
const reached = modelValues.reachedBelow;
const draws = 200;
const seed = 1;

/** What a state asks to be searched, or why nothing can be. `own`: bottles beside the palette's. */
export function recipeTaskOf(
  state: FindRecipeState,
  own: readonly Bottle[] = [],
): RecipeTask | Extract<FindRecipe, { ok: false }> {
  const skin = skinOf(state);
  if (!skin.ok) return skin;
  const target = { l: state.targetL, a: state.targetA, b: state.targetB };
  const setting = { depthMm: state.depth, coverage: state.coverage / 100, veilShare: modelValues.veilShare };
  return {
    skin,
    setting,
    bottles: [...bottles, ...own],
    target,
    doses: dosesSearched,
    times,
    ageing: startAgeing,
    mostBottles: Math.round(state.bottles),
    mostDrops: Math.round(state.drops),
    mostWhiteShare: state.white / 100,
    mostDarker: state.darker,
    mostLeanDeg: state.lean,
  };
}

/** One part of the search; all parts together lead to an answer. */
export function searchPart(task: RecipeTask, part: Part, onProgress?: (share: number) => void): KeptRecipes {
  return screenRecipes(task, wanted, { part, onProgress });
}

/** True where it is proven before the search that nothing can reach the target. */
export const isBeyond = (task: RecipeTask): boolean => isOutOfReach(task, reached);

/**
 * The recipes that come nearest to a target colour, exact over all whole drops; or that none is predicted to.
 */
export function answerFrom(task: RecipeTask, lists: readonly KeptRecipes[]): FindRecipe {
  const { skin, setting, target } = task;
  const result = rankRecipes(task, lists);
  if (!result.ok) return result;
  const colours = colourerOf(task);
  const shown = ({ recipe, dose, score }: Found): ShownRecipe => {
    const shares = sharesOf(recipe, task.bottles);
    const healings = simulatedHealings(
      skin,
      { shares, dose, setting, ageing: startAgeing, doubts: startDoubts },
      times,
      draws,
      seed,
    );
    const near =
      healings.filter((healing) => healing.every((lab) => ciede2000(lab, target) <= reached)).length / draws;
    return {
      recipe,
      dose,
      score,
      colours: colours(recipe, dose),
      near,
      whiteShare: shares['77891'],
      hasSwatch: shares.own !== undefined,
    };
  };
  const today = spectrumToLab(skin.reflectance);
  return {
    ok: true,
    works: result.best.score < reached,
    simplest: shown(result.simplest),
    best: shown(result.best),
    byDrops: result.byDrops,
    own: task.bottles.slice(bottles.length).map(({ id }) => id),
    nearBest: result.nearBest,
    hasMoreNear: result.hasMoreNear,
    goodBelow: Math.max(wanted.farEnough, result.best.score + wanted.near),
    reachedBelow: reached,
    today,
    away: ciede2000(today, target),
    isOutsideMeasured: skin.isOutsideMeasured,
  };
}

/** The whole search in one go. */
function findRecipeFor(state: FindRecipeState): FindRecipe {
  const task = recipeTaskOf(state);
  return 'ok' in task ? task : answerFrom(task, [searchPart(task, { index: 0, of: 1 })]);
}

/** Find a recipe as a calculator: the search in one go, without its progress. */
export const findRecipe: Calculator<FindRecipeState, FindRecipe> = {
  ...findRecipeFields,
  solve: (state) => findRecipeFor(state),
};
