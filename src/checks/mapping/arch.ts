import { goldenShare } from '#lib/mapping/placing/goldenShare.ts';
import type { Check } from '../check.ts';

/** Placing the arch: the only number of it that is printed as a number to be computed. */
export const archChecks = [
  {
    id: 'golden-section',
    kind: 'table',
    source: 'planetmath-golden-ratio',
    where: 'first formula',
    what: 'whole to longer part of the golden section',
    printed: 1.618033988749895,
    unit: '1',
    tolerance: 1e-12,
    because: 'printed to twenty decimals',
    ours: (factor = 1) => factor / goldenShare,
  },
] as const satisfies readonly Check[];
