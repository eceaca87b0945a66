import { ciede2000 } from '../ciede2000.ts';
import { bandCount } from '../bands.ts';
import { xyzToLab, type Lab } from '../lab.ts';
import { whiteOf } from '../observe.ts';
import { mixLayer } from '../pigments.ts';
import { foldedWeights } from '../../tables/foldedWeights.ts';
import { leftOf } from '../uncertainHealing.ts';
import { compareSimplicity, forEachRecipe, totalDrops, type Recipe } from './recipes.ts';
import { scoreOf, type RecipeTask } from './recipeTask.ts';
import { quickRise, rowLength, skinMap } from './skinMap.ts';

/** A recipe at a dose, and how far it stays from the target (ΔE00, the largest of all times). */
export type Found = Readonly<{ recipe: Recipe; dose: number; score: number }>;
export type RecipeResult = Readonly<{
  /** The nearest of all. */
  best: Found;
  /** The simplest of those within max(1, best + 0.5): fewest drops, then fewest bottles, then nearest. */
  simplest: Found;
  /** The nearest for each number of drops. */
  byDrops: readonly Found[];
  /** How many recipes stay within best + 0.5, all doses together. */
  nearBest: number;
}>;

/** Scores closer than this are ties: bottles are mixtures of the same pigments, and 1:1 is 2:2. */
const tie = 1e-6;
const near = 0.5;
const farEnough = 1;
/**
 * The screen's error. C is off by at most 7.8e-6 of itself, and R = (n1 S + n2 K + n3 C)/(m1 S + m2 K + C) with m1, m2
 * not below 0, n3 (the bare skin) and R between 0 and 1: dR = (n3 − R) dC/(m1 S + m2 K + C), so |dR| ≤ 7.8e-6, and X, Y, Z stay within
 * 7.8e-6 of white. Above L* 20 that is 0.003 in L*, 0.05 in a* and 0.02 in b* at most, and less than 0.06 in ΔE00, whose
 * weights only shrink them here. Below L* 20 nothing is screened: those recipes are worked out in full.
 */
const screenError = 0.06;
const darkestScreened = 20;

/**
 * The nearest and the simplest recipe, exact over all recipes of whole drops and all doses given. A quick screen
 * scores every recipe; whatever could be a winner within the screen's error is worked out again by `scoreOf`,
 * which is the definition. Ties: score to 1e-6, then fewer drops, fewer bottles, earlier in the list, smaller dose first.
 */
export function findRecipe(task: RecipeTask): RecipeResult {
  const screened = screenAll(task);
  const lowest = screened.reduce((least, { screen }) => Math.min(least, screen), Infinity);
  const byDrops = Array.from({ length: task.mostDrops }, (_, i) => bestOf(screened.filter(({ drops }) => drops === i + 1), task)).filter((found) => found !== undefined);
  const best = byDrops.reduce((one, other) => (comesFirst(other, one) ? other : one));
  const limit = Math.max(farEnough, best.score + near);
  const within = screened.filter(({ screen }) => screen <= limit + screenError);
  const fewest = byDrops.find(({ score }) => score <= limit) ?? best;
  const simplest = simplestOf(within.filter(({ drops }) => drops === totalDrops(fewest.recipe)), limit, task) ?? best;
  const nearBest = screened.filter(({ screen }) => screen <= lowest + near).length;
  return { best, simplest, byDrops, nearBest };
}

type Screened = Readonly<{ recipe: Recipe; dose: number; drops: number; screen: number }>;

function comesFirst(one: Found, other: Found): boolean {
  const difference = Math.round(one.score / tie) - Math.round(other.score / tie);
  if (difference !== 0) return difference < 0;
  const simplicity = compareSimplicity(one.recipe, other.recipe);
  return simplicity !== 0 ? simplicity < 0 : one.dose < other.dose;
}

function exact({ recipe, dose }: Screened, task: RecipeTask): Found {
  return { recipe, dose, score: scoreOf(recipe, dose, task) };
}

function bestOf(screened: readonly Screened[], task: RecipeTask): Found | undefined {
  const lowest = screened.reduce((least, { screen }) => Math.min(least, screen), Infinity);
  let best: Found | undefined;
  for (const one of screened) {
    if (one.screen > lowest + 2 * screenError) continue;
    const found = exact(one, task);
    if (!best || comesFirst(found, best)) best = found;
  }
  return best;
}

/** The fewest bottles within the limit, then the nearest. */
function simplestOf(screened: readonly Screened[], limit: number, task: RecipeTask): Found | undefined {
  const used = (recipe: Recipe) => recipe.filter((drops) => drops > 0).length;
  const kept = screened.map((one) => exact(one, task)).filter(({ score }) => score <= limit);
  return kept.reduce<Found | undefined>((first, one) => {
    if (!first) return one;
    const bottles = used(one.recipe) - used(first.recipe);
    return bottles < 0 || (bottles === 0 && comesFirst(one, first)) ? one : first;
  }, undefined);
}

/** Every recipe that could still matter, with its quick score. Those beyond reach of every answer are dropped on the way. */
function screenAll(task: RecipeTask): readonly Screened[] {
  const { bottles, mostBottles, mostDrops, times, doses, target } = task;
  const map = skinMap(task.skin, task.setting);
  // K and S of one part of each bottle at each time: bottle, then band, then K and S.
  const layers = times.map((years) => {
    const left = leftOf(task.ageing, years);
    return bottles.map(({ shares }) => Float64Array.from(mixLayer(shares, 1, left).flatMap(({ k, s }) => [k, s])));
  });
  const kept: Screened[] = [];
  /** The lowest screen so far, for each number of drops and over all. */
  const lowestOf = new Float64Array(mostDrops + 1).fill(Infinity);
  let lowest = Infinity;
  const mixed = new Float64Array(2 * bandCount);
  const score = screenScore(map, target);
  for (const dose of doses) {
    forEachRecipe(bottles.length, mostBottles, mostDrops, (recipe) => {
      const drops = totalDrops(recipe);
      const limit = Math.max(farEnough, lowest + near, lowestOf[drops] ?? Infinity) + 2 * screenError;
      let screen = 0;
      for (const layer of layers) {
        mixed.fill(0);
        for (let bottle = 0; bottle < recipe.length; bottle++) {
          const count = recipe[bottle] ?? 0;
          const unit = layer[bottle];
          if (count === 0 || !unit) continue;
          const part = (count * dose) / drops;
          for (let i = 0; i < mixed.length; i++) mixed[i] = (mixed[i] ?? 0) + part * (unit[i] ?? 0);
        }
        screen = Math.max(screen, score(mixed, limit));
        if (screen > limit) return;
      }
      if (screen < lowest) lowest = screen;
      if (screen < (lowestOf[drops] ?? 0)) lowestOf[drops] = screen;
      kept.push({ recipe: recipe.slice(), dose, drops, screen });
    });
  }
  return kept;
}

/** Scores a mixed layer quickly against the target; Infinity where the lightness alone is out of the limit. */
function screenScore(map: Float64Array, target: Lab): (mixed: Float64Array, limit: number) => number {
  const { x: wx, y: wy, z: wz } = foldedWeights.D65;
  const white = whiteOf('D65');
  const weights = Float64Array.from(wy.flatMap((y, band) => [wx[band] ?? 0, y, wz[band] ?? 0]));
  return (mixed, limit) => {
    let [x, y, z] = [0, 0, 0];
    for (let band = 0, at = 0, w = 0; band < bandCount; band++, at += rowLength, w += 3) {
      const k = mixed[2 * band] ?? 0;
      const s = mixed[2 * band + 1] ?? 0;
      const c = quickRise(k * (k + 2 * s));
      const r = ((map[at] ?? 0) * s + (map[at + 1] ?? 0) * k + (map[at + 2] ?? 0) * c) / ((map[at + 3] ?? 0) * s + (map[at + 4] ?? 0) * k + c);
      x += r * (weights[w] ?? 0);
      y += r * (weights[w + 1] ?? 0);
      z += r * (weights[w + 2] ?? 0);
    }
    const lab = xyzToLab({ x, y, z }, white);
    if (lab.l < darkestScreened) return Math.min(limit, ciede2000(lab, target));
    // ΔE00 is at least |ΔL*|/S_L.
    const middle = ((lab.l + target.l) / 2 - 50) ** 2;
    if (Math.abs(lab.l - target.l) > (limit + screenError) * (1 + (0.015 * middle) / Math.sqrt(20 + middle))) return Infinity;
    return ciede2000(lab, target);
  };
}
