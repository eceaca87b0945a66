import { bandRows, bottleUnits, mixWidth } from './bandRows.ts';
import { cellLines } from './cellLines.ts';
import { addUp, firstGuesses } from './firstGuesses.ts';
import { keptRecipes, type KeptRecipes } from './keptRecipes.ts';
import { mixCells } from './mixCells.ts';
import { mixScorer, mostScreenError } from './mixScorer.ts';
import { keepsLook, keepsWhiteLimit, type RecipeTask } from './recipeTask.ts';
import { recipeCount } from './recipes.ts';
import { restBounds } from './restBounds.ts';
import { groupOf, scoreWindow, type Wanted } from './scoreWindow.ts';

/** One share of the search, for workers side by side: share `index` of `of`. */
export type Part = Readonly<{ index: number; of: number }>;
export type ScreenOptions = Readonly<{
  /** Hears which share of all recipes this part has passed: the shares of all parts add to 1. */
  onProgress?: ((share: number) => void) | undefined;
  part?: Part | undefined;
  /** Whether floors along straight lines inside cells are worked out; left out, where that pays. */
  hasLines?: boolean | undefined;
}>;

/**
 * Cells of the space of mixes: many for a long search, few where working them out would take longer than the
 * search.
 */
const cellsFor = (recipes: number) => Math.min(400_000, Math.max(500, recipes / 24));
/** Straight lines in cells pay from so many recipes on, where many share a cell. */
const manyRecipes = 10_000_000;
const progressSteps = 100;
/** Farther than any colour is from another: what climbing sees of a guess that is not allowed. */
const notAllowed = 1000;

/**
 * Every recipe that can still be the best, the simplest that is as good, the best of its number of drops, or
 * one of those that are counted, with its quick score; dropped is only what is proven to be none of these
 * (scoreWindow.ts), or not allowed (limits on look are judged on the colour to rounding, and only recipes
 * that keep them narrow the search). In order: climbing gives good recipes and with them the limits; the cell
 * of a recipe's place rules most out unseen (mixCells.ts), in a long search its place in the cell most others
 * (cellLines.ts); then the first bands bound its Y; then the quick score itself (mixScorer.ts). Sums run
 * along the tree of recipes and are only made where a recipe asks for its colour.
 */
export function screenRecipes(
  task: RecipeTask,
  wanted: Wanted,
  { onProgress, part = { index: 0, of: 1 }, hasLines }: ScreenOptions = {},
): KeptRecipes {
  const { bottles, mostBottles, mostDrops, times, doses, target } = task;
  const bottleCount = bottles.length;
  const rows = bandRows(task);
  const units = bottleUnits(task);
  const { quick, labOf } = mixScorer(task);
  const reach = scoreWindow(target, mostDrops, mostBottles, wanted);
  const rest = restBounds(rows, units, task);
  const scratch = new Float64Array(mixWidth);
  const all = recipeCount(bottleCount, mostBottles, mostDrops);

  const isLookLimited = task.mostDarker !== undefined || task.mostLeanDeg !== undefined;
  firstGuesses(
    task,
    (recipe, drops, dose, isRough) => {
      let worst = 0;
      for (let time = 0; time < times.length; time++) {
        addUp(recipe, units, time * bottleCount * mixWidth, scratch);
        // A guess that is not allowed narrows nothing, and climbing leaves it as soon as it can.
        if (isLookLimited && !keepsLook(labOf(scratch, 0, (doses[dose] ?? 0) / drops), task)) {
          if (!isRough) return Infinity;
          worst = Math.max(worst, notAllowed);
        }
        worst = Math.max(
          worst,
          quick(
            scratch,
            0,
            scratch,
            0,
            0,
            (doses[dose] ?? 0) / drops,
            isRough ? -mostScreenError : Infinity,
            -Infinity,
            Infinity,
            0,
            0,
          ),
        );
      }
      return worst;
    },
    reach.hear,
  );

  const cells = mixCells(task, rows, units, cellsFor(all));
  const { steps, floors, cellCount } = cells;
  const lines = (hasLines ?? all >= manyRecipes) && cells.isWhole ? cellLines(task, cells) : undefined;
  const [, size1, size2, size3] = cells.sizes;
  const kept = keptRecipes(bottleCount, reach.limits);
  const recipe = new Uint8Array(bottleCount);
  const white = bottles.map(({ shares }) => shares['77891']);
  // Sums of the bottles chosen so far, one for each level of the tree and time; made when first asked for.
  const sums = new Float64Array((mostBottles + 1) * times.length * mixWidth);
  const isReady = new Uint8Array(mostBottles + 1).fill(0);
  isReady[0] = 1;
  const chosen = new Int32Array(mostBottles + 1);
  const perDrop = Float64Array.from({ length: mostDrops + 1 }, (_, drops) => 1 / drops);
  const sumUp = (level: number): void => {
    if (isReady[level] === 1) return;
    sumUp(level - 1);
    const bottle = chosen[level] ?? 0;
    const count = recipe[bottle] ?? 0;
    for (let time = 0; time < times.length; time++) {
      const to = (level * times.length + time) * mixWidth;
      const from = to - times.length * mixWidth;
      const unit = (time * bottleCount + bottle) * mixWidth;
      for (let i = 0; i < mixWidth; i++)
        sums[to + i] = (sums[from + i] ?? 0) + count * (units[unit + i] ?? 0);
    }
    isReady[level] = 1;
  };

  const isLookKept = (level: number, bottle: number, count: number, amount: number): boolean =>
    times.every((_, time) => {
      const from = (level * times.length + time) * mixWidth;
      const unit = (time * bottleCount + bottle) * mixWidth;
      for (let i = 0; i < mixWidth; i++) scratch[i] = (sums[from + i] ?? 0) + count * (units[unit + i] ?? 0);
      return keepsLook(labOf(scratch, 0, amount), task);
    });

  const judge = (level: number, bottle: number, count: number, drops: number, dose: number): void => {
    sumUp(level);
    const group = groupOf(drops, level + 1, mostBottles);
    const limit = reach.limits[group] ?? 0;
    const amount = (doses[dose] ?? 0) / drops;
    let worst = 0;
    for (let time = 0; time < times.length; time++) {
      const at = 2 * (dose * times.length + time);
      const score = quick(
        sums,
        (level * times.length + time) * mixWidth,
        units,
        (time * bottleCount + bottle) * mixWidth,
        count,
        amount,
        limit,
        reach.yLo[group] ?? 0,
        reach.yHi[group] ?? 0,
        rest[at] ?? 0,
        rest[at + 1] ?? 0,
      );
      if (score > limit) return;
      if (score > worst) worst = score;
    }
    if (isLookLimited && !isLookKept(level, bottle, count, amount)) return;
    reach.hear(drops, level + 1, worst);
    reach.count(worst);
    kept.add(recipe, dose, group, worst);
  };

  const ask = (
    level: number,
    bottle: number,
    count: number,
    drops: number,
    dose: number,
    q0: number,
    q1: number,
    q2: number,
    q3: number,
  ): void => {
    if (lines) {
      const per = perDrop[drops] ?? 0;
      lines.place[0] = q0 * per;
      lines.place[1] = q1 * per;
      lines.place[2] = q2 * per;
      lines.place[3] = q3 * per;
      if (!lines.mayReach(dose, reach.limits[groupOf(drops, level + 1, mostBottles)] ?? 0)) return;
    }
    judge(level, bottle, count, drops, dose);
  };

  let visited = 0;
  let told = 0;
  let branch = 0;
  const pass = (recipes: number): void => {
    visited += recipes;
    if (visited - told < all / part.of / progressSteps) return;
    told = visited;
    onProgress?.(Math.min(1, visited / all));
  };
  const from = (
    first: number,
    level: number,
    drops: number,
    whiteDrops: number,
    p0: number,
    p1: number,
    p2: number,
    p3: number,
  ): void => {
    isReady[level] = level === 0 ? 1 : 0;
    for (let bottle = first; bottle < bottleCount; bottle++) {
      const at = 4 * bottle;
      const s0 = steps[at] ?? 0;
      const s1 = steps[at + 1] ?? 0;
      const s2 = steps[at + 2] ?? 0;
      const s3 = steps[at + 3] ?? 0;
      const whiteShare = white[bottle] ?? 0;
      for (let count = 1; drops + count <= mostDrops; count++) {
        // Recipes of one bottle belong to the first part, branches from the second bottle on to all in turn.
        if (level === 1 && branch++ % part.of !== part.index) continue;
        const sum = drops + count;
        const q0 = p0 + count * s0;
        const q1 = p1 + count * s1;
        const q2 = p2 + count * s2;
        const q3 = p3 + count * s3;
        recipe[bottle] = count;
        const nextWhite = whiteDrops + count * whiteShare;
        if ((level > 0 || part.index === 0) && keepsWhiteLimit(nextWhite, sum, task)) {
          const per = perDrop[sum] ?? 0;
          const cell =
            (((q0 * per) | 0) * size1 + ((q1 * per) | 0)) * size2 * size3 +
            ((q2 * per) | 0) * size3 +
            ((q3 * per) | 0);
          const group = groupOf(sum, level + 1, mostBottles);
          for (let dose = 0, place = cell; dose < doses.length; dose++, place += cellCount) {
            const byte = floors[place] ?? 0;
            if ((byte === 0 ? cells.fill(cell, dose) : byte) <= (reach.bytes[group] ?? 0))
              ask(level, bottle, count, sum, dose, q0, q1, q2, q3);
          }
        }
        if (level + 1 < mostBottles && sum < mostDrops && bottle + 1 < bottleCount) {
          chosen[level + 1] = bottle;
          from(bottle + 1, level + 1, sum, nextWhite, q0, q1, q2, q3);
        }
        if (level === 1) pass(1 + recipeCount(bottleCount - bottle - 1, mostBottles - 2, mostDrops - sum));
      }
      recipe[bottle] = 0;
    }
  };
  from(0, 0, 0, 0, 0, 0, 0, 0);
  onProgress?.(1 / part.of);
  return kept.done();
}
