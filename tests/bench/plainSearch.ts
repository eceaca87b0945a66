import { differenceCiede2000 } from 'culori';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { forEachRecipe, totalDrops, type Recipe } from '#lib/colour/recipe/recipes.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { partedAt } from '#lib/colour/layers/skinOptics.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';

type Difference = (one: readonly [number, number, number]) => number;

/** CIEDE2000 to the target by culori. */
export function byCulori({ target }: Pick<RecipeTask, 'target'>): Difference {
  const difference = differenceCiede2000();
  const aim = { mode: 'lab65', ...target };
  return ([l, a, b]) => difference({ mode: 'lab65', l, a, b }, aim);
}

const white = (['x', 'y', 'z'] as const).map((axis) =>
  foldedWeights.D65[axis].reduce<number>((sum, weight) => sum + weight, 0),
);
const root = (ratio: number) => (ratio > 216 / 24389 ? Math.cbrt(ratio) : ((24389 / 27) * ratio + 16) / 116);

/**
 * The search written down plainly, for one dose and one date: every recipe in turn, its K and S summed, two
 * layers of Kubelka and Munk over the ground by hyperbolic cotangents, the surface, the coverage, X, Y, Z,
 * L*a*b*, the difference. `every`:
 * only each so-many-th recipe, to time a search that would take minutes.
 */
export function plainSearch(
  task: RecipeTask,
  difference: Difference,
  every = 1,
): Readonly<{ score: number; recipe: Recipe; dropsBest: readonly number[]; searched: number }> {
  const { skin, setting, bottles, ageing, doses, times, mostBottles, mostDrops } = task;
  const { above, under } = partedAt(skin, setting.depthMm, setting.veilShare);
  const veils = above.map(({ k, s }) => ({ k, s, c: coth(k, s) }));
  const left = leftOf(ageing, times[0] ?? 0);
  const units = bottles.map(({ shares }) => mixLayer(shares, 1, left));
  const { x: wx, y: wy, z: wz } = foldedWeights.D65;
  const dropsBest = new Array<number>(mostDrops).fill(Infinity);
  let [score, seen, searched] = [Infinity, 0, 0];
  let best: Recipe = [];
  forEachRecipe(bottles.length, mostBottles, mostDrops, (recipe) => {
    if (seen++ % every !== 0) return;
    searched++;
    const drops = totalDrops(recipe);
    const amount = (doses[0] ?? 0) / drops;
    let [x, y, z] = [0, 0, 0];
    for (let band = 0; band < 36; band++) {
      let k = 0;
      let s = 0;
      for (let bottle = 0; bottle < recipe.length; bottle++) {
        const count = recipe[bottle] ?? 0;
        if (count === 0) continue;
        k += count * amount * (units[bottle]?.[band]?.k ?? 0);
        s += count * amount * (units[bottle]?.[band]?.s ?? 0);
      }
      const ground = under[band] ?? 0;
      const c = coth(k, s);
      const layer = (s - ground * (k + s - c)) / (k + s + c - ground * s);
      const over = veils[band] ?? { k: 0, s: 0, c: 1 };
      const within =
        (over.s - layer * (over.k + over.s - over.c)) / (over.k + over.s + over.c - layer * over.s);
      const { outside, inside } = skin.surfaces[band] ?? { outside: 0, inside: 0 };
      const covered = outside + ((1 - outside) * (1 - inside) * within) / (1 - inside * within);
      const bare = skin.reflectance[band] ?? 0;
      const r = bare + setting.coverage * (covered - bare);
      x += r * (wx[band] ?? 0);
      y += r * (wy[band] ?? 0);
      z += r * (wz[band] ?? 0);
    }
    const [fx, fy, fz] = [root(x / (white[0] ?? 1)), root(y / (white[1] ?? 1)), root(z / (white[2] ?? 1))];
    const apart = difference([116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)]);
    dropsBest[drops - 1] = Math.min(dropsBest[drops - 1] ?? Infinity, apart);
    if (apart < score) {
      score = apart;
      best = recipe.slice();
    }
  });
  return { score, recipe: best, dropsBest, searched };
}

function coth(k: number, s: number): number {
  const x = Math.sqrt(k * (k + 2 * s));
  return x === 0 ? 1 : x / Math.tanh(x);
}
