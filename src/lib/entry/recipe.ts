import { findRecipe as insideFind } from '../colour/recipe/findRecipe.ts';
import { isOutOfReach as insideReach } from '../colour/recipe/outOfReach.ts';
import { recipeCount } from '../colour/recipe/recipes.ts';
import { sharesOf as insideShares, type RecipeTask } from '../colour/recipe/recipeTask.ts';
import * as of from './colourDomains.ts';
import {
  also,
  above0,
  between,
  called,
  list,
  maybe,
  refusing,
  shape,
  throwing,
  whole,
  type Domain,
  type Checked,
} from './domain.ts';
import { share } from './units.ts';

export type { Found, NoRecipe, RecipeResult } from '../colour/recipe/findRecipe.ts';
export type { Recipe } from '../colour/recipe/recipes.ts';
export type { RecipeTask } from '../colour/recipe/recipeTask.ts';
export type { Wanted } from '../colour/recipe/scoreWindow.ts';

/** A dose is kept as one byte for each recipe. */
const mostDoses = 256;
const mostDropsEver = 60;
/** Ten times the largest search of the site: minutes, not days. */
const mostSearched = 2e9;

const parts = shape<RecipeTask>({
  skin: of.skin,
  setting: of.setting,
  bottles: of.bottleList,
  ageing: of.ageing,
  doses: list(above0(10), mostDoses, 1),
  target: of.lab,
  times: of.timeList,
  mostBottles: whole(1, 64),
  mostDrops: whole(1, mostDropsEver),
  mostWhiteShare: share,
  mostDarker: maybe(between(0, 100)),
  mostLeanDeg: maybe(between(0, 180)),
});
const isSearchable = ({ bottles, doses, mostBottles, mostDrops }: RecipeTask) =>
  recipeCount(bottles.length, mostBottles, mostDrops) * doses.length <= mostSearched;
const task: Domain<RecipeTask> = also(
  parts,
  isSearchable,
  `be a search of at most ${mostSearched} recipes and doses together`,
);
const asked = shape({ near: of.difference, farEnough: of.difference, mostCounted: whole(1, 1_000_000) });

/** The nearest and the simplest recipe, exact over all recipes of whole drops and all doses given. */
export const findRecipe: Checked<typeof insideFind> = refusing(
  insideFind,
  'task onProgress asked',
  task,
  maybe(called<(share: number) => void>()),
  maybe(asked),
);
/** True where no mix at any of the doses can come within a difference (ΔE00) of the target at all times. False proves nothing. */
export const isOutOfReach: typeof insideReach = throwing(insideReach, 'task within', task, of.difference);
/** Shares of the pigments in a recipe: drops of each bottle, in the order of the bottles. */
export const sharesOf: typeof insideShares = throwing(
  insideShares,
  'recipe bottles',
  also(
    list(whole(0, mostDropsEver), 64, 1),
    (drops) => drops.some((count) => count > 0),
    'hold a drop at least',
  ),
  of.bottleList,
);
