import { mixFurther } from '#calculators/mixFurther.ts';
import type { AskedMix } from './askMixWorker.ts';

/** Works out the plots of a mix beside the page: mixes come in, plots go out in the same order. */
addEventListener('message', ({ data: { state, shelf } }: MessageEvent<AskedMix>) =>
  postMessage(mixFurther(state, shelf)),
);
