import { ciede2000 } from '#lib/colour/ciede2000.ts';
import type { Check } from '../check.ts';
import { sharmaPairs } from './sharmaPairs.ts';

/** CIEDE2000 against every printed pair. */
export const differenceChecks = sharmaPairs.map(
  ([l1, a1, b1, l2, a2, b2, printed], i): Check => ({
    id: `ciede2000-pair-${i + 1}`, kind: 'table', source: 'sharma-2005', where: 'table 1', what: `colour difference of printed pair ${i + 1}`,
    printed, unit: '1', tolerance: 5e-5, because: 'four printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * ciede2000({ l: l1, a: a1, b: b1 }, { l: l2, a: a2, b: b2 }),
  }),
);
