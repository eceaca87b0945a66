import type { Check } from './check.ts';
import { chartChecks } from './colour/chart.ts';
import { conversionChecks } from './colour/conversions.ts';
import { coverageChecks } from './colour/coverage.ts';
import { differenceChecks } from './colour/differences.ts';
import { layerChecks } from './colour/layers.ts';
import { skinChecks } from './colour/skins.ts';
import { whiteChecks } from './colour/whites.ts';

/** Outside checks of everything colour computes. */
export const colourChecks: readonly Check[] = [
  ...whiteChecks,
  ...differenceChecks,
  ...conversionChecks,
  ...chartChecks,
  ...skinChecks,
  ...layerChecks,
  ...coverageChecks,
];
