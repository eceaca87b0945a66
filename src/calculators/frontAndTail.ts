import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { type FrontAndTailState, frontAndTailFields } from './frontAndTailFields.ts';
import { frontAndTailSums } from './frontAndTailSums.ts';
import type { Calculator } from './spec.ts';

/** What each anchor gives for the fronts, one distance for both sides, and every check of the tails. */
export const frontAndTail: Calculator<FrontAndTailState, Placing | NoPlacing> = {
  ...frontAndTailFields,
  solve: frontAndTailSums,
};
