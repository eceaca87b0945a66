import type { WhyItHealed } from '#calculators/whyItHealed.ts';
import type { WhyItHealedState } from '#calculators/whyItHealedFields.ts';
import { askBeside } from './askBeside.ts';

/** The map of healings of one state, worked out beside the page. */
export const askWhyWorker = askBeside<WhyItHealedState, WhyItHealed>(() => new Worker(new URL('./whyWorker.ts', import.meta.url), { type: 'module' }));
