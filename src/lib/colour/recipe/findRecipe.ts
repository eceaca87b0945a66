import { joinedRecipes, recipeAt, type KeptRecipes } from './keptRecipes.ts';
import { addUp } from './firstGuesses.ts';
import { bottleUnits, mixWidth } from './bandRows.ts';
import { mixScorer, screenError } from './mixScorer.ts';
import { bottlesUsed, compareSimplicity, totalDrops, type Recipe } from './recipes.ts';
import { scorerOf, type RecipeTask } from './recipeTask.ts';
import { screenRecipes } from './screenRecipes.ts';

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

/** The fine score and the definition sum the same numbers in another order; this is far more than rounding can part them. */
const fineError = 1e-7;

/**
 * The nearest and the simplest recipe, exact over all recipes of whole drops and all doses given. Refused where the limits on
 * white, darkness and hue leave nothing. Ties: score to 1e-6, then fewer drops, fewer bottles, earlier in the list, smaller dose first.
 */
export function findRecipe(task: RecipeTask, onProgress?: (share: number) => void): RecipeResult | NoRecipe {
  return rankRecipes(task, [screenRecipes(task, { near, farEnough }, { onProgress })]);
}

/**
 * The winners among what screens kept, of all parts together. What could win within the quick score's error gets the fine
 * score; what could then win within rounding gets the definition, `scorerOf`, in full.
 */
export function rankRecipes(task: RecipeTask, lists: readonly KeptRecipes[]): RecipeResult | NoRecipe {
  const kept = joinedRecipes(lists);
  if (kept.doses.length === 0) return { ok: false, reason: 'nothing-allowed' };
  const desk = rankDesk(task, kept);
  const places = desk.placesByDrops();
  const byDrops = places.map((some) => desk.best(some)).filter((one) => one !== undefined);
  const best = byDrops.reduce((one, other) => (comesFirst(other, one) ? other : one));
  const limit = Math.max(farEnough, best.score + near);
  const fewest = byDrops.find(({ score }) => score <= limit) ?? best;
  const simplest = desk.simplest(places[totalDrops(fewest.recipe) - 1] ?? [], limit) ?? best;
  const nearBest = desk.countWithin(best.score + near);
  return { ok: true, best, simplest, byDrops, nearBest };
}

function comesFirst(one: Found, other: Found): boolean {
  const difference = Math.round(one.score / tie) - Math.round(other.score / tie);
  if (difference !== 0) return difference < 0;
  const simplicity = compareSimplicity(one.recipe, other.recipe);
  return simplicity !== 0 ? simplicity < 0 : one.dose < other.dose;
}

function rankDesk(task: RecipeTask, kept: KeptRecipes) {
  const { bottles, doses, times, mostDrops } = task;
  const quickError = screenError(task.target);
  const exact = scorerOf(task);
  const { fine } = mixScorer(task);
  const units = bottleUnits(task);
  const mix = new Float64Array(mixWidth);
  const known = new Float64Array(kept.doses.length).fill(NaN);
  const quickOf = (place: number) => kept.scores[place] ?? Infinity;
  const doseOf = (place: number) => doses[kept.doses[place] ?? 0] ?? 0;
  const rowOf = (place: number) => kept.drops.subarray(place * bottles.length, (place + 1) * bottles.length);
  const fineOf = (place: number): number => {
    const before = known[place] ?? NaN;
    if (!Number.isNaN(before)) return before;
    const row = rowOf(place);
    const amount = doseOf(place) / row.reduce((sum, drops) => sum + drops, 0);
    const score = times.reduce((worst, _, time) => {
      addUp(row, units, time * bottles.length * mixWidth, mix);
      return Math.max(worst, fine(mix, 0, amount));
    }, 0);
    known[place] = score;
    return score;
  };
  const found = (place: number): Found => {
    const recipe = recipeAt(kept, place, bottles.length);
    return { recipe, dose: doseOf(place), score: exact(recipe, doseOf(place)) };
  };
  /** The first of some places by the definition. */
  const best = (places: readonly number[]): Found | undefined => {
    if (places.length === 0) return undefined;
    const first = places.reduce((one, other) => (quickOf(other) < quickOf(one) ? other : one), places[0] ?? 0);
    let lowest = fineOf(first);
    for (const place of places) if (quickOf(place) - quickError <= lowest) lowest = Math.min(lowest, fineOf(place));
    const most = lowest + tie + 2 * fineError;
    const near = places.filter((place) => quickOf(place) - quickError <= most && fineOf(place) <= most);
    return near.map(found).reduce<Found | undefined>((first, one) => (!first || comesFirst(one, first) ? one : first), undefined);
  };
  return {
    best,
    placesByDrops: (): readonly (readonly number[])[] => {
      const places = Array.from({ length: mostDrops }, (): number[] => []);
      kept.doses.forEach((_, place) => places[rowOf(place).reduce((sum, drops) => sum + drops, 0) - 1]?.push(place));
      return places;
    },
    /** The fewest bottles within the limit, then the nearest. */
    simplest: (places: readonly number[], limit: number): Found | undefined => {
      const within = places.filter((place) => quickOf(place) <= limit + quickError && fineOf(place) <= limit + fineError);
      for (let used = 1; used <= task.mostBottles; used++) {
        const first = best(within.filter((place) => bottlesUsed(recipeAt(kept, place, bottles.length)) === used));
        if (first && first.score <= limit) return first;
      }
      return undefined;
    },
    countWithin: (limit: number): number => {
      let count = 0;
      kept.scores.forEach((quick, place) => {
        if (quick <= limit - quickError || (quick <= limit + quickError && fineOf(place) <= limit)) count++;
      });
      return count;
    },
  };
}
