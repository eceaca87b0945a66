import { shareAtRandom, shareOfDots } from '#lib/colour/coverage/coverage.ts';
import type { Check } from '../check.ts';

/**
 * What stays bare when strokes of this load, n·l·w/A, lie as chance has it: the chance that no stroke lies
 * over a place.
 */
const bare = (load: number, printed: number): Check => ({
  id: `bare-at-load-${load}`,
  kind: 'table',
  source: 'poisson-table',
  where: `row of no event, column ${load.toFixed(1)}`,
  what: `skin left bare by crossing strokes whose areas add to ${load} of the brow`,
  printed,
  unit: '1',
  tolerance: 6e-5,
  because: 'four printed decimals',
  ours: (factor = 1) =>
    factor * (1 - shareAtRandom({ count: 100 * load, lengthMm: 10, widthMm: 0.2, areaMm2: 200 })),
});

const discs = (
  id: string,
  radius: number,
  perArea: number,
  printed: number,
  tolerance: number,
  because: string,
  source: 'boolean-model-tests' | 'disc-percolation',
  where: string,
): Check => ({
  id,
  kind: 'table',
  source,
  where,
  what: 'share covered by discs thrown at random',
  printed,
  unit: '1',
  tolerance,
  because,
  ours: (factor = 1) => factor * shareOfDots({ perMm2: perArea, diameterMm: 2 * radius }),
});

/** Strokes and dots against printed values of the same mathematics. */
export const coverageChecks = [
  bare(0.5, 0.6065),
  bare(1, 0.3679),
  bare(1.5, 0.2231),
  bare(2, 0.1353),
  discs(
    'discs-half-covered',
    10,
    2.2064e-3,
    0.5,
    1e-4,
    'the intensity is printed to five digits, chosen for a half',
    'boolean-model-tests',
    'comment on the first test',
  ),
  discs(
    'discs-at-threshold',
    1,
    1.128 / Math.PI,
    0.6763,
    2e-4,
    'four printed digits on either side',
    'disc-percolation',
    'intensity and area fraction at the threshold',
  ),
] as const satisfies readonly Check[];
