import { type OutlineAndCoverState, outlineAndCoverFields } from './outlineAndCoverFields.ts';
import { type OutlineReport, outlineSums } from './outlineSums.ts';
import type { Calculator } from './spec.ts';

/**
 * Both outlines from ten marks: thickness straight across at any station, every trade check, area and the way
 * round.
 */
export const outlineAndCover: Calculator<OutlineAndCoverState, OutlineReport> = {
  ...outlineAndCoverFields,
  solve: outlineSums,
};
