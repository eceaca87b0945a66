import { mixByDrops } from '#calculators/mixByDrops.ts';
import type { MixByDropsState } from '#calculators/mixByDropsFields.ts';

/** Simulates healings beside the page, so that nothing on it stands still: states come in, results go out in the same order. */
addEventListener('message', ({ data }: MessageEvent<MixByDropsState>) => postMessage(mixByDrops.solve(data)));
