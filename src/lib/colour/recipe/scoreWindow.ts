import { whiteOf } from '../spectrum/observe.ts';
import type { Lab } from '../spaces/lab.ts';
import { lightnessEdge } from './differenceFloor.ts';
import { lowestScores } from './lowestScores.ts';
import { mostByte } from './mixCells.ts';
import { screenError } from './mixScorer.ts';

/** Scores closer than this are ties: bottles are mixtures of the same pigments, and 1:1 is 2:2. */
export const tie = 1e-6;

/** Room for the fraction's error and for rounding in Y of 100. */
const slackY = 0.002;

/**
 * What a search asks for beside the nearest recipes: as good as the best is within `near` of it, or below
 * `farEnough`; those within `near` are counted up to `mostCounted`.
 */
export type Wanted = Readonly<{ near: number; farEnough: number; mostCounted: number }>;

/** The group of a recipe: all with so many drops of so many bottles. */
export function groupOf(drops: number, used: number, mostBottles: number): number {
  return drops * (mostBottles + 1) + used;
}

/** Drops of the recipes of a group. */
export function dropsOf(group: number, mostBottles: number): number {
  return Math.floor(group / (mostBottles + 1));
}

/**
 * What a recipe may score at most to matter, for each group. It matters as one of the nearest of its drops;
 * as the nearest of its group, where that is as good as the best; or in the count, while no more than
 * `mostCounted` are known to be nearer: if one that is left out belonged in the count, so would all of those,
 * and the count would be past its end without it. Quick scores are off by `screenError` each, and two that
 * tie differ by 1e-6, so a limit has room for both. Each is kept with its window of Y and its highest byte of
 * a floor, ready for the inner loop.
 */
export function scoreWindow(
  target: Lab,
  mostDrops: number,
  mostBottles: number,
  { near, farEnough, mostCounted }: Wanted,
) {
  const room = 2 * screenError(target) + 2 * tie;
  const groups = groupOf(mostDrops, mostBottles, mostBottles) + 1;
  const nearestIn = new Float64Array(groups).fill(Infinity);
  const nearestOf = new Float64Array(mostDrops + 1).fill(Infinity);
  let nearest = Infinity;
  const counted = lowestScores(mostCounted + 1);
  const limits = new Float64Array(groups).fill(Infinity);
  const yLo = new Float64Array(groups).fill(-Infinity);
  const yHi = new Float64Array(groups).fill(Infinity);
  const bytes = new Uint8Array(groups).fill(255);
  const yOf = (l: number) => (l > 8 ? ((l + 16) / 116) ** 3 : (l * 27) / 24389) * whiteOf('D65').y;
  const refresh = (group: number): void => {
    const asGood = Math.min(nearestIn[group] ?? Infinity, Math.max(farEnough, nearest + near));
    const limit =
      room +
      Math.max(
        asGood,
        nearestOf[dropsOf(group, mostBottles)] ?? Infinity,
        Math.min(nearest + near, counted.bound()),
      );
    if (limit === limits[group]) return;
    limits[group] = limit;
    yLo[group] = yOf(lightnessEdge(target.l, limit, 'darkest')) - slackY;
    yHi[group] = yOf(lightnessEdge(target.l, limit, 'lightest')) + slackY;
    bytes[group] = mostByte(limit);
  };
  const refreshDrops = (drops: number): void => {
    for (let used = 1; used <= mostBottles; used++) refresh(groupOf(drops, used, mostBottles));
  };
  const refreshAll = (): void => {
    for (let drops = 1; drops <= mostDrops; drops++) refreshDrops(drops);
  };
  return {
    limits,
    yLo,
    yHi,
    bytes,
    /** A recipe with this score exists. */
    hear: (drops: number, used: number, score: number): void => {
      const group = groupOf(drops, used, mostBottles);
      if (score >= (nearestIn[group] ?? Infinity)) return;
      nearestIn[group] = score;
      if (score < nearest) {
        nearestOf[drops] = score;
        nearest = score;
        refreshAll();
      } else if (score < (nearestOf[drops] ?? Infinity)) {
        nearestOf[drops] = score;
        refreshDrops(drops);
      } else refresh(group);
    },
    /** One more recipe, never the same twice, has this score. */
    count: (score: number): void => {
      if (counted.add(score)) refreshAll();
    },
  };
}
