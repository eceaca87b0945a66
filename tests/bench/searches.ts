import { bottles, type Bottle } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { pigmentIds, type Shares } from '#lib/colour/pigment/pigments.ts';
import { findRecipe, rankRecipes, wanted } from '#lib/colour/recipe/findRecipe.ts';
import { screenRecipes, type Part } from '#lib/colour/recipe/screenRecipes.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import type { KeptRecipes } from '#lib/colour/recipe/keptRecipes.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { drawFrom, drawWhole } from '#lib/quantities/seed.ts';
import { byCulori, plainSearch } from './plainSearch.ts';

/** Skins from light to deep with targets that are reached, nearly reached and out of reach. */
const places = [
  [63, 10, 19, 50, 10, 13],
  [72, 8, 16, 55, 9, 14],
  [45, 11, 17, 34, 9, 10],
  [54, 11, 18, 45, 12, 15],
  [63, 10, 19, 40, 6, 8],
  [63, 10, 19, 58, 14, 20],
  [36, 10, 14, 29, 9, 9],
  [68, 9, 17, 47, 8, 11],
] as const;

/** The twelve bottles and twelve more, drawn. */
const draw = drawFrom(24);
const more = Array.from({ length: 12 }, (_, i): Bottle => {
  const parts = pigmentIds.map(() => drawWhole(draw, 0, 7));
  const whole = parts.reduce((sum, part) => sum + part, 0) || 1;
  const shares = { '77891': 0, '77492': 1, '77491': 0, '77499': 0, '77266': 0 };
  return {
    id: `more-${i}`,
    shares: pigmentIds.reduce<Shares>((all, id, at) => ({ ...all, [id]: (parts[at] ?? 0) / whole }), shares),
  };
});

type Size = Readonly<{
  bottles: 12 | 24;
  mostDrops: 8 | 16;
  doses: readonly number[];
  times: readonly number[];
}>;
export function tasksOf({ bottles: count, mostDrops, doses, times }: Size): readonly RecipeTask[] {
  return places.map(([skinL, skinA, skinB, l, a, b]) => {
    const skin = skinOptics({ l: skinL, a: skinA, b: skinB });
    if (!skin.ok) throw new Error(skin.reason);
    return {
      skin,
      setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
      bottles: count === 24 ? [...bottles, ...more] : bottles,
      ageing: startAgeing,
      doses,
      times,
      target: { l, a, b },
      mostBottles: 4,
      mostDrops,
      mostWhiteShare: 1,
    };
  });
}

export const sevenDoses = [0.05, 0.1, 0.15, 0.2, 0.3, 0.45, 0.65];
export const fast = (task: RecipeTask) => findRecipe(task);
export const part = (task: RecipeTask, of: Part) => screenRecipes(task, wanted, { part: of });
export const ranked = (task: RecipeTask, lists: readonly KeptRecipes[]) => rankRecipes(task, lists);
/** Every recipe, by culori's difference and by our own. */
export const plainly = (task: RecipeTask, every = 1) => plainSearch(task, byCulori(task), every);
export const scalar = (task: RecipeTask, every = 1) =>
  plainSearch(task, ([l, a, b]) => ciede2000({ l, a, b }, task.target), every);
