import type { MixByDrops } from '#calculators/mixByDrops.ts';
import type { MixByDropsState } from '#calculators/mixByDropsFields.ts';
import { askBeside } from './askBeside.ts';

/** The prediction for one mix, worked out beside the page. */
export const askMixWorker = askBeside<MixByDropsState, MixByDrops>(() => new Worker(new URL('./mixWorker.ts', import.meta.url), { type: 'module' }));
