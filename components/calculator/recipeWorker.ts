import { answerFrom, isBeyond, recipeTaskOf, searchPart, type FindRecipe } from '#calculators/findRecipe.ts';
import type { FindRecipeState } from '#calculators/findRecipeFields.ts';
import type { KeptRecipes } from '#lib/colour/recipe/keptRecipes.ts';
import type { Part } from '#lib/colour/recipe/screenRecipes.ts';

/** A part of a search, or the lists of all parts to be ranked. */
export type AskedOfWorker = Readonly<{ state: FindRecipeState; part: Part } | { state: FindRecipeState; lists: readonly KeptRecipes[] }>;
/** How far this part is, that nothing can reach the target, what this part kept, or the answer. */
export type ToldByWorker = Readonly<{ share?: number; isBeyond?: boolean; kept?: KeptRecipes; result?: FindRecipe }>;

const tell = (told: ToldByWorker) => postMessage(told);

/** Searches beside the page, so that nothing on it stands still. */
addEventListener('message', ({ data }: MessageEvent<AskedOfWorker>) => {
  const task = recipeTaskOf(data.state);
  if ('ok' in task) return tell({ result: task });
  if ('lists' in data) return tell({ result: answerFrom(task, data.lists) });
  if (data.part.index === 0 && isBeyond(task)) tell({ isBeyond: true });
  tell({ kept: searchPart(task, data.part, (share) => tell({ share })) });
});
