import { levelLine } from './levelLine.ts';
import { midlineAndSides } from './midlineAndSides.ts';
import { usualDifference } from './usualDifference.ts';

/** Every calculator by id. */
export const calculators = { 'midline-and-sides': midlineAndSides, 'level-line': levelLine, 'usual-difference': usualDifference } as const;

export type CalculatorId = keyof typeof calculators;
