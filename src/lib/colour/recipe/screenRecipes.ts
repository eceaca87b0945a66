import { foldedWeights } from '../../tables/foldedWeights.ts';
import { bandCount } from '../bands.ts';
import { ciede2000 } from '../ciede2000.ts';
import { xyzToLab, type Lab } from '../lab.ts';
import { whiteOf } from '../observe.ts';
import { mixLayer } from '../pigments.ts';
import { leftOf } from '../uncertainHealing.ts';
import type { Recipe } from './recipes.ts';
import { keepsWhiteLimit, type RecipeTask } from './recipeTask.ts';
import { quickRise, rowLength, skinMap, type SkinMap } from './skinMap.ts';

/** A recipe at a dose with its quick score: the largest ΔE00 of all times, within `screenError` of the definition's. */
export type Screened = Readonly<{ recipe: Recipe; dose: number; drops: number; screen: number }>;

/**
 * The screen's error. C is off by at most 7.8e-6 of itself, and R = (n1 S + n2 K + n3 C)/(m1 S + m2 K + C) with m1, m2
 * not below 0, n3 (the bare skin) and R between 0 and 1: dR = (n3 − R) dC/(m1 S + m2 K + C), so |dR| ≤ 7.8e-6, and X, Y, Z
 * stay within 7.8e-6 of white. Above L* 20 that is 0.003 in L*, 0.05 in a* and 0.02 in b* at most, and less than 0.06 in
 * ΔE00, whose weights only shrink them here. Below L* 20 no recipe is dropped by its score.
 */
export const screenError = 0.06;
const darkestScreened = 20;

/** K and S of one part of a bottle, band after band: K, S, K, S … */
type Unit = Float64Array;

/**
 * Every recipe that can still be the best, the simplest within max(farEnough, best + near), or the best of its number of
 * drops. The rest are dropped as soon as their lightness or their score is out of reach. Sums run along the tree of
 * recipes: one more drop is one addition a band. `onProgress` hears which share of the first bottles is done.
 */
export function screenRecipes(task: RecipeTask, { near, farEnough }: Readonly<{ near: number; farEnough: number }>, onProgress?: (share: number) => void): readonly Screened[] {
  const { bottles, mostBottles, mostDrops, times, doses, target } = task;
  const score = quickScore(skinMap(task.skin, task.setting), target);
  const units = times.map((years) => {
    const left = leftOf(task.ageing, years);
    return bottles.map(({ shares }): Unit => Float64Array.from(mixLayer(shares, 1, left).flatMap(({ k, s }) => [k, s])));
  });
  const kept: Screened[] = [];
  const lowestOf = new Float64Array(mostDrops + 1).fill(Infinity);
  let lowest = Infinity;
  const recipe = new Array<number>(bottles.length).fill(0);
  const sums = Array.from({ length: mostBottles + 1 }, () => times.map(() => new Float64Array(2 * bandCount)));

  const judge = (mixed: readonly Unit[], drops: number): void => {
    for (const dose of doses) {
      const limit = Math.max(farEnough, lowest + near, lowestOf[drops] ?? Infinity) + 2 * screenError;
      let screen = 0;
      for (const sum of mixed) {
        screen = Math.max(screen, score(sum, dose / drops, limit));
        if (screen > limit) break;
      }
      if (screen > limit) continue;
      lowest = Math.min(lowest, screen);
      lowestOf[drops] = Math.min(lowestOf[drops] ?? Infinity, screen);
      kept.push({ recipe: recipe.slice(), dose, drops, screen });
    }
  };
  const white = bottles.map(({ shares }) => shares['77891']);
  const from = (first: number, used: number, drops: number, whiteDrops: number): void => {
    if (used === mostBottles) return;
    const parent = sums[used] ?? [];
    const own = sums[used + 1] ?? [];
    for (let bottle = first; bottle < bottles.length; bottle++) {
      own.forEach((sum, time) => sum.set(parent[time] ?? sum));
      for (let count = 1; drops + count <= mostDrops; count++) {
        own.forEach((sum, time) => addTo(sum, units[time]?.[bottle]));
        recipe[bottle] = count;
        const nextWhite = whiteDrops + count * (white[bottle] ?? 0);
        if (keepsWhiteLimit(nextWhite, drops + count, task)) judge(own, drops + count);
        from(bottle + 1, used + 1, drops + count, nextWhite);
      }
      recipe[bottle] = 0;
      if (used === 0) onProgress?.((bottle + 1) / bottles.length);
    }
  };
  from(0, 0, 0, 0);
  return kept;
}

function addTo(sum: Unit, unit: Unit | undefined): void {
  if (!unit) return;
  for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] ?? 0) + (unit[i] ?? 0);
}

/** Bands in the order of their weight in lightness: after the first 16 the rest can move Y by a twentieth at most. */
const byLuminance = foldedWeights.D65.y.map((weight, band) => ({ weight, band })).toSorted((one, other) => other.weight - one.weight);
const firstBands = 16;
const restOfY = byLuminance.slice(firstBands).reduce((sum, { weight }) => sum + weight, 0);

/** Scores a mixed layer (K, S by band, times `times`) against the target; Infinity where lightness alone is beyond the limit. */
function quickScore(map: SkinMap, target: Lab): (mixed: Unit, times: number, limit: number) => number {
  const white = whiteOf('D65');
  const { x: wx, y: wy, z: wz } = foldedWeights.D65;
  // One row a band in the order of luminance: five numbers of the skin, three weights, and where its K stands.
  const width = 9;
  const rows = new Float64Array(width * bandCount);
  byLuminance.forEach(({ band }, i) => {
    rows.set(map.subarray(band * rowLength, band * rowLength + 5), i * width);
    rows.set([wx[band] ?? 0, wy[band] ?? 0, wz[band] ?? 0, 2 * band], i * width + 5);
  });
  return (mixed, times, limit) => {
    let [x, y, z] = [0, 0, 0];
    for (let i = 0, at = 0; i < bandCount; i++, at += width) {
      if (i === firstBands && isOutOfReach(lightness(y), lightness(y + restOfY), target.l, limit)) return Infinity;
      const place = rows[at + 8] ?? 0;
      const k = times * (mixed[place] ?? 0);
      const s = times * (mixed[place + 1] ?? 0);
      const c = quickRise(k * (k + 2 * s));
      const r = ((rows[at] ?? 0) * s + (rows[at + 1] ?? 0) * k + (rows[at + 2] ?? 0) * c) / ((rows[at + 3] ?? 0) * s + (rows[at + 4] ?? 0) * k + c);
      x += r * (rows[at + 5] ?? 0);
      y += r * (rows[at + 6] ?? 0);
      z += r * (rows[at + 7] ?? 0);
    }
    const lab = xyzToLab({ x, y, z }, white);
    if (isOutOfReach(lab.l, lab.l, target.l, limit)) return Infinity;
    const difference = ciede2000(lab, target);
    return lab.l < darkestScreened ? Math.min(limit, difference) : difference;
  };
}

/** L* of a Y above the straight line near black; below it, 0 stands in: nothing there is dropped. */
function lightness(y: number): number {
  return Math.max(0, 116 * Math.cbrt(y / 100) - 16);
}

/** True where a lightness between `lo` and `hi` is farther from the target than the limit: ΔE00 is at least |ΔL*|/S_L. */
function isOutOfReach(lo: number, hi: number, targetL: number, limit: number): boolean {
  if (lo < darkestScreened) return false;
  const away = lo > targetL ? lo : hi < targetL ? hi : targetL;
  const from50 = ((away + targetL) / 2 - 50) ** 2;
  return Math.abs(away - targetL) > (limit + screenError) * (1 + (0.015 * from50) / Math.sqrt(20 + from50));
}
