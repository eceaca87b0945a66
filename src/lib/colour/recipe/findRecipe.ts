import { joinedRecipes, recipeAt, type KeptRecipes } from './keptRecipes.ts';
import { addUp } from './firstGuesses.ts';
import { bottleUnits, mixWidth } from './bandRows.ts';
import { mixScorer, screenError } from './mixScorer.ts';
import { compareSimplicity, totalDrops, type Recipe } from './recipes.ts';
import { scorerOf, type RecipeTask } from './recipeTask.ts';
import { dropsOf, groupOf, tie, type Wanted } from './scoreWindow.ts';
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
  /** How many recipes stay within best + 0.5, all doses together, or that they are more than are counted. */
  nearBest: number;
  hasMoreNear: boolean;
}>;
export type NoRecipe = Readonly<{ ok: false; reason: 'nothing-allowed' }>;

/** Recipes this much farther than the best are as good as it; nearer than `farEnough` all are. */
export const near = 0.5;
export const farEnough = 1;
/**
 * What the site asks for. Recipes near the best are counted up to one and a thousand others: more would say
 * nothing.
 */
export const wanted: Wanted = { near, farEnough, mostCounted: 1001 };

/**
 * The fine score and the definition sum the same numbers in another order; this is far more than rounding can
 * part them.
 */
const fineError = 1e-7;

/**
 * The nearest and the simplest recipe, exact over all recipes of whole drops and all doses given. Refused
 * where the limits on white, darkness and hue leave nothing. Ties: score to 1e-6, then fewer drops, fewer
 * bottles, earlier in the list, smaller dose first.
 */
export function findRecipe(
  task: RecipeTask,
  onProgress?: (share: number) => void,
  asked = wanted,
): RecipeResult | NoRecipe {
  return rankRecipes(task, [screenRecipes(task, asked, { onProgress })], asked);
}

/**
 * The winners among what screens kept, of all parts together. What could win within the quick score's error
 * gets the fine score; what could then win within rounding gets the definition, `scorerOf`, in full. The
 * count stops past `mostCounted`, where recipes that belong in it may have been left out (scoreWindow.ts).
 */
export function rankRecipes(
  task: RecipeTask,
  lists: readonly KeptRecipes[],
  asked = wanted,
): RecipeResult | NoRecipe {
  const kept = joinedRecipes(lists);
  if (kept.doses.length === 0) return { ok: false, reason: 'nothing-allowed' };
  const desk = rankDesk(task, kept);
  const places = desk.placesByDrops();
  const byDrops = places.map((some) => desk.best(some)).filter((one) => one !== undefined);
  const best = byDrops.reduce((one, other) => (comesFirst(other, one) ? other : one));
  const limit = Math.max(asked.farEnough, best.score + asked.near);
  const fewest = byDrops.find(({ score }) => score <= limit) ?? best;
  const simplest = desk.simplest(places[totalDrops(fewest.recipe) - 1] ?? [], limit) ?? best;
  const count = desk.countWithin(best.score + asked.near, asked.mostCounted + 1);
  return {
    ok: true,
    best,
    simplest,
    byDrops,
    nearBest: Math.min(count, asked.mostCounted),
    hasMoreNear: count > asked.mostCounted,
  };
}

function comesFirst(one: Found, other: Found): boolean {
  const difference = Math.round(one.score / tie) - Math.round(other.score / tie);
  if (difference !== 0) return difference < 0;
  const simplicity = compareSimplicity(one.recipe, other.recipe);
  return simplicity !== 0 ? simplicity < 0 : one.dose < other.dose;
}

function rankDesk(task: RecipeTask, kept: KeptRecipes) {
  const { bottles, doses, times, mostBottles, mostDrops } = task;
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
    let lowest = Infinity;
    for (const place of places)
      if (quickOf(place) - quickError <= lowest) lowest = Math.min(lowest, fineOf(place));
    const most = lowest + tie + 2 * fineError;
    const inReach = places.filter((place) => quickOf(place) - quickError <= most && fineOf(place) <= most);
    return inReach
      .map(found)
      .reduce<Found | undefined>((first, one) => (!first || comesFirst(one, first) ? one : first), undefined);
  };
  return {
    best,
    placesByDrops: (): readonly (readonly number[])[] => {
      const places = Array.from({ length: mostDrops }, (): number[] => []);
      kept.groups.forEach((group, place) => places[dropsOf(group, mostBottles) - 1]?.push(place));
      return places;
    },
    /** The fewest bottles within the limit, then the nearest. */
    simplest: (places: readonly number[], limit: number): Found | undefined => {
      for (let used = 1; used <= mostBottles; used++) {
        const first = best(
          places.filter(
            (place) =>
              kept.groups[place] ===
              groupOf(dropsOf(kept.groups[place] ?? 0, mostBottles), used, mostBottles),
          ),
        );
        if (first && first.score <= limit) return first;
      }
      return undefined;
    },
    /** How many places score within the limit, counted up to `most`. */
    countWithin: (limit: number, most: number): number => {
      let count = 0;
      for (let place = 0; place < kept.scores.length && count < most; place++) {
        const quick = quickOf(place);
        if (quick <= limit - quickError || (quick <= limit + quickError && fineOf(place) <= limit)) count++;
      }
      return count;
    },
  };
}
