import type { WhyItHealed } from '#calculators/whyItHealed.ts';
import type { WhyItHealedState } from '#calculators/whyItHealedFields.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { askBeside } from './askBeside.ts';

/** A healing, and the bottles of one's own its mix may hold. */
export type AskedWhy = Readonly<{ state: WhyItHealedState; shelf: readonly OwnBottle[] }>;

/** The map of healings of one state, worked out beside the page. */
export const askWhyWorker = askBeside<AskedWhy, WhyItHealed>(
  () => new Worker(new URL('./whyWorker.ts', import.meta.url), { type: 'module' }),
);
