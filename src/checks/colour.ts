import type { Check } from './check.ts';
import { coverageChecks } from './colour/coverage.ts';
import { differenceChecks } from './colour/differences.ts';
import { skinChecks } from './colour/skins.ts';
import { whiteChecks } from './colour/whites.ts';

/** Outside checks of everything colour computes. */
export const colourChecks: readonly Check[] = [...whiteChecks, ...differenceChecks, ...skinChecks, ...coverageChecks];
