import type { CoverState } from '#calculators/coverFields.ts';
import type { CoverTold } from '../cover/coverTold.ts';
import { askBeside } from './askBeside.ts';
import { askLatest } from './askLatest.ts';

/** Marks that stand still for so long are planned for, ms: none is, while one is dragged or a key is held. */
const stillMs = 120;

/** The plan of the last state asked about, worked out beside the page. */
export const askCoverWorker = askLatest(
  askBeside<CoverState, CoverTold>(
    () => new Worker(new URL('./coverWorker.ts', import.meta.url), { type: 'module' }),
  ),
  stillMs,
);
