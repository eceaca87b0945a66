import { findRecipeFor } from '#calculators/findRecipe.ts';
import type { FindRecipeState } from '#calculators/findRecipeFields.ts';

/** Runs the search beside the page, so that nothing on it stands still: a state comes in, progress and the result go out. */
addEventListener('message', ({ data }: MessageEvent<FindRecipeState>) => {
  postMessage({ result: findRecipeFor(data, (share) => postMessage({ share })) });
});
