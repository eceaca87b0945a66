import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import type { Check } from '../check.ts';
import { sharmaPairs } from './sharmaPairs.ts';

/** Every printed pair. */
const printedPairs = sharmaPairs.map(([l1, a1, b1, l2, a2, b2, printed], i): Check => ({
  id: `ciede2000-pair-${i + 1}`,
  kind: 'table',
  source: 'sharma-2005',
  where: 'table 1',
  what: `colour difference of printed pair ${i + 1}`,
  printed,
  unit: '1',
  tolerance: 5e-5,
  because: 'four printed decimals: half a unit of the last',
  ours: (factor = 1) => factor * ciede2000({ l: l1, a: a1, b: b1 }, { l: l2, a: a2, b: b2 }),
}));

type Pair = readonly [number, number, number, number, number, number, number];
const elsewhere = (
  id: string,
  source: 'colormath-tests' | 'colour-science-tests',
  where: string,
  tolerance: number,
  [l1, a1, b1, l2, a2, b2, printed]: Pair,
): Check => ({
  id,
  kind: 'library',
  source,
  where,
  what: `colour difference of L* ${l1}, a* ${a1}, b* ${b1} and L* ${l2}, a* ${a2}, b* ${b2}`.replaceAll(
    ' -',
    ' −',
  ),
  printed,
  unit: '1',
  tolerance,
  because: 'as many decimals as are printed',
  ours: (factor = 1) => factor * ciede2000({ l: l1, a: a1, b: b1 }, { l: l2, a: a2, b: b2 }),
});

/**
 * CIEDE2000 against every printed pair, and against what other libraries print. A third vivid pair is printed
 * there (hues 191° apart, 68.23095): it adds a full turn to the mean hue where the rules of 2005 take one
 * off, and so differs by 0.00016 from us and from two other libraries.
 */
export const differenceChecks: readonly Check[] = [
  ...printedPairs,
  elsewhere(
    'ciede2000-dark',
    'colormath-tests',
    'test_cie2000_accuracy',
    5e-4,
    [0.9, 16.3, -2.22, 0.7, 14.2, -1.8, 1.523],
  ),
  elsewhere(
    'ciede2000-far',
    'colormath-tests',
    'test_cie2000_accuracy_2',
    5e-4,
    [32.8911, -53.0107, -43.3182, 77.1797, 25.5928, 17.9412, 78.772],
  ),
  elsewhere(
    'ciede2000-vivid-1',
    'colour-science-tests',
    'tests of CIEDE2000',
    1e-6,
    [100, 21.57210357, 272.2281935, 100, 426.67945353, 72.39590835, 94.03564903],
  ),
  elsewhere(
    'ciede2000-vivid-2',
    'colour-science-tests',
    'tests of CIEDE2000',
    1e-6,
    [100, 21.57210357, 272.2281935, 100, 74.05216981, 276.45318193, 14.87906419],
  ),
];
