import type { FindRecipe } from '#calculators/findRecipe.ts';
import type { AskedOfWorker, AskedRecipe, ToldByWorker } from './recipeWorker.ts';

/**
 * Where a search stands: which share of the recipes has been passed, and whether the target is known to be
 * out of reach.
 */
export type Searching = Readonly<{ share: number; isBeyond: boolean }>;

const mostWorkers = 4;
let running: readonly Worker[] = [];
let giveUp = () => {};

/**
 * Searches for one state beside the page, in as many workers as the device has to spare; the first ranks what
 * all have kept.
 * A newer question ends the older one. Rejected where a worker cannot start, or when stopped.
 */
export function askWorker(
  asked: AskedRecipe,
  onProgress: (searching: Searching) => void,
): Promise<FindRecipe> {
  stopWorker();
  const of = Math.max(1, Math.min(mostWorkers, navigator.hardwareConcurrency || 1));
  const workers = Array.from(
    { length: of },
    () => new Worker(new URL('./recipeWorker.ts', import.meta.url), { type: 'module' }),
  );
  running = workers;
  return new Promise((resolve, reject) => {
    const shares = workers.map(() => 0);
    const lists: ToldByWorker['kept'][] = workers.map(() => undefined);
    let isBeyond = false;
    const end = () => workers.forEach((worker) => worker.terminate());
    giveUp = () => {
      end();
      reject(new Error('The search was stopped.'));
    };
    const ask = (worker: Worker | undefined, question: AskedOfWorker) => worker?.postMessage(question);
    workers.forEach((worker, index) => {
      worker.addEventListener('message', ({ data }: MessageEvent<ToldByWorker>) => {
        if (data.result) {
          end();
          resolve(data.result);
          return;
        }
        if (data.isBeyond) isBeyond = true;
        if (data.share !== undefined) shares[index] = data.share;
        if (data.kept) lists[index] = data.kept;
        onProgress({ share: shares.reduce((sum, share) => sum + share, 0), isBeyond });
        const all = lists.flatMap((list) => list ?? []);
        if (data.kept && all.length === of) ask(workers[0], { ...asked, lists: all });
      });
      worker.addEventListener('error', () => {
        end();
        reject(new Error('The search could not run.'));
      });
      ask(worker, { ...asked, part: { index, of } });
    });
  });
}

/** Ends the search that runs, if one does. */
export function stopWorker(): void {
  if (running.length > 0) giveUp();
  running = [];
}
