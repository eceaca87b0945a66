import type { FindRecipe } from '#calculators/findRecipe.ts';
import type { FindRecipeState } from '#calculators/findRecipeFields.ts';

let running: Worker | undefined;

/** Searches for one state beside the page. A newer question ends the older one. Rejected where the worker cannot start. */
export function askWorker(state: FindRecipeState, onProgress: (share: number) => void): Promise<FindRecipe> {
  running?.terminate();
  const worker = new Worker(new URL('./recipeWorker.ts', import.meta.url), { type: 'module' });
  running = worker;
  return new Promise((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Readonly<{ result?: FindRecipe; share?: number }>>) => {
      if (data.share !== undefined) onProgress(data.share);
      if (!data.result) return;
      worker.terminate();
      resolve(data.result);
    });
    worker.addEventListener('error', () => reject(new Error('The search could not run.')));
    worker.postMessage(state);
  });
}

/** Ends the search that runs. */
export function stopWorker(): void {
  running?.terminate();
  running = undefined;
}
