import { answerFrom, isBeyond, recipeTaskOf, searchPart, type FindRecipe } from '#calculators/findRecipe.ts';
import type { FindRecipeState } from '#calculators/findRecipeFields.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { readyBottles } from '#lib/colour/own/readyBottles.ts';
import type { KeptRecipes } from '#lib/colour/recipe/keptRecipes.ts';
import type { Part } from '#lib/colour/recipe/screenRecipes.ts';

/** What is searched for, and the bottles of one's own beside the palette. */
export type AskedRecipe = Readonly<{ state: FindRecipeState; shelf: readonly OwnBottle[] }>;
/** A part of a search, or the lists of all parts to be ranked. */
export type AskedOfWorker = Readonly<AskedRecipe & ({ part: Part } | { lists: readonly KeptRecipes[] })>;
/** How far this part is, that nothing can reach the target, what this part kept, or the answer. */
export type ToldByWorker = Readonly<{
  share?: number;
  isBeyond?: boolean;
  kept?: KeptRecipes;
  result?: FindRecipe;
}>;

const tell = (told: ToldByWorker) => postMessage(told);

/** Searches beside the page, so that nothing on it stands still. */
addEventListener('message', ({ data }: MessageEvent<AskedOfWorker>) => {
  const task = recipeTaskOf(data.state, readyBottles(data.shelf));
  if ('ok' in task) return tell({ result: task });
  if ('lists' in data) return tell({ result: answerFrom(task, data.lists) });
  if (data.part.index === 0 && isBeyond(task)) tell({ isBeyond: true });
  tell({ kept: searchPart(task, data.part, (share) => tell({ share })) });
});
