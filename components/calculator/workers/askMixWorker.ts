import type { MixByDrops } from '#calculators/mixByDrops.ts';
import type { MixByDropsState } from '#calculators/mixByDropsFields.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { askBeside } from './askBeside.ts';

/** A mix, and the bottles of one's own it may hold. */
export type AskedMix = Readonly<{ state: MixByDropsState; shelf: readonly OwnBottle[] }>;

/** The prediction for one mix, worked out beside the page. */
export const askMixWorker = askBeside<AskedMix, MixByDrops>(
  () => new Worker(new URL('./mixWorker.ts', import.meta.url), { type: 'module' }),
);
