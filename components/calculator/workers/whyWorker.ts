import { whyWith } from '#calculators/whyItHealed.ts';
import type { AskedWhy } from './askWhyWorker.ts';

/**
 * Works the map out beside the page, so that nothing on it stands still: states come in, results go out in
 * the same order.
 */
addEventListener('message', ({ data: { state, shelf } }: MessageEvent<AskedWhy>) =>
  postMessage(whyWith(state, shelf)),
);
