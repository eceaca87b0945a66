import { mixWith } from '#calculators/mixByDrops.ts';
import type { AskedMix } from './askMixWorker.ts';

/**
 * Simulates healings beside the page, so that nothing on it stands still: mixes come in, results go out in
 * the same order.
 */
addEventListener('message', ({ data: { state, shelf } }: MessageEvent<AskedMix>) =>
  postMessage(mixWith(state, shelf)),
);
