import { falseAlarmRate, familyCoverageFactor } from '#lib/mapping/familyWise.ts';
import { medianToSpread } from '#lib/mapping/robustMidline.ts';
import { normalShareBelow, normalUpperPoint } from '#lib/quantities/normal.ts';
import type { Check } from '../check.ts';

const threeDecimals = 'printed to three decimals: half a unit of the last';

/** The normal curve, and how strict many comparisons must be. */
export const normalChecks = [
  {
    id: 'normal-upper-2-5', kind: 'table', source: 'nist-t-table', where: 'last row, infinite degrees of freedom', what: 'the value that 2.5 % lie above',
    printed: 1.96, unit: '1', tolerance: 0.0005, because: threeDecimals, ours: (factor = 1) => factor * normalUpperPoint(0.025),
  },
  {
    id: 'normal-upper-0-5', kind: 'table', source: 'nist-t-table', where: 'last row, infinite degrees of freedom', what: 'the value that 0.5 % lie above',
    printed: 2.576, unit: '1', tolerance: 0.0005, because: threeDecimals, ours: (factor = 1) => factor * normalUpperPoint(0.005),
  },
  {
    id: 'normal-upper-0-1', kind: 'table', source: 'nist-t-table', where: 'last row, infinite degrees of freedom', what: 'the value that 0.1 % lie above',
    printed: 3.09, unit: '1', tolerance: 0.0005, because: threeDecimals, ours: (factor = 1) => factor * normalUpperPoint(0.001),
  },
  {
    id: 'normal-upper-5', kind: 'table', source: 'keller-normal', where: 'example 8.4, answer', what: 'the value that 5 % lie above',
    printed: 1.644854, unit: '1', tolerance: 5e-7, because: 'printed to six decimals: half a unit of the last', ours: (factor = 1) => factor * normalUpperPoint(0.05),
  },
  {
    id: 'normal-share-2-8', kind: 'table', source: 'normal-table', where: 'standard normal probabilities, first column', what: 'share below −2.80',
    printed: 0.00256, unit: '1', tolerance: 5e-6, because: 'printed to five decimals: half a unit of the last', ours: (factor = 1) => factor * normalShareBelow(-2.8),
  },
  {
    id: 'normal-share-2-5', kind: 'table', source: 'normal-table', where: 'standard normal probabilities, first column', what: 'share below −2.50',
    printed: 0.00621, unit: '1', tolerance: 5e-6, because: 'printed to five decimals: half a unit of the last', ours: (factor = 1) => factor * normalShareBelow(-2.5),
  },
  {
    id: 'normal-scores-share', kind: 'table', source: 'python-statistics', where: 'test scores: share between 1100 and 1200', what: 'share between two scores, mean 1060, spread 195',
    printed: 18.4, unit: '%', tolerance: 0.05, because: 'printed to one decimal: half a unit of the last',
    ours: (factor = 1) => factor * 100 * (normalShareBelow((1200.5 - 1060) / 195) - normalShareBelow((1099.5 - 1060) / 195)),
  },
  {
    id: 'normal-scores-quartile', kind: 'table', source: 'python-statistics', where: 'test scores: quartiles', what: 'upper quartile, mean 1060, spread 195',
    printed: 1192, unit: '1', tolerance: 0.5, because: 'printed as a whole number', ours: (factor = 1) => 1060 + 195 * factor * normalUpperPoint(0.25),
  },
  {
    id: 'factor-one-95', kind: 'table', source: 'nist-tn-1297', where: '4.3, factors for 95 and 99 percent', what: 'coverage factor of one comparison at 95 %',
    printed: 1.96, unit: '1', tolerance: 0.0005, because: threeDecimals, ours: (factor = 1) => factor * familyCoverageFactor(1),
  },
  {
    id: 'factor-one-99', kind: 'table', source: 'nist-tn-1297', where: '4.3, factors for 95 and 99 percent', what: 'coverage factor of one comparison at 99 %',
    printed: 2.576, unit: '1', tolerance: 0.0005, because: threeDecimals, ours: (factor = 1) => factor * familyCoverageFactor(1, 0.01),
  },
  {
    id: 'half-inside', kind: 'table', source: 'nist-tn-1297', where: '4.4, even chance of lying inside', what: 'spread from the half-width that holds one half',
    printed: 1.48, unit: '1', tolerance: 0.005, because: 'printed to two decimals: half a unit of the last', ours: (factor = 1) => factor / normalUpperPoint(0.25),
  },
  {
    id: 'level-of-ten', kind: 'table', source: 'sidak-article', where: 'example: 5 % and 10 tests', what: 'level of each of ten tests, back from our coverage factor',
    printed: 0.005116, unit: '1', tolerance: 5e-7, because: 'printed to six decimals: half a unit of the last',
    ours: (factor = 1) => 2 * normalShareBelow(-factor * familyCoverageFactor(10)),
  },
  {
    id: 'alarm-of-three', kind: 'table', source: 'sidak-adjusted', where: 'example output', what: 'chance of a false alarm in three tests at 9/256 each',
    printed: 0.10180432, unit: '1', tolerance: 5e-9, because: 'eight printed decimals: half a unit of the last', ours: (factor = 1) => factor * falseAlarmRate(3, 9 / 256),
  },
  {
    id: 'alarm-of-three-again', kind: 'table', source: 'sidak-adjusted', where: 'example output', what: 'the same at 1/64 each',
    printed: 0.04614639, unit: '1', tolerance: 5e-9, because: 'eight printed decimals: half a unit of the last', ours: (factor = 1) => falseAlarmRate(3, factor / 64),
  },
  {
    id: 'alarm-of-ten', kind: 'table', source: 'multiplicity-note', where: 'ten tests at 0.05', what: 'chance of a false alarm in ten tests',
    printed: 0.4012631, unit: '1', tolerance: 5e-8, because: 'seven printed decimals: half a unit of the last', ours: (factor = 1) => factor * falseAlarmRate(10),
  },
  {
    id: 'median-to-spread', kind: 'table', source: 'r-mad', where: 'the constant: its default', what: 'from the median of errors to their spread',
    printed: 1.4826, unit: '1', tolerance: 5e-5, because: 'printed to four decimals: half a unit of the last', ours: (factor = 1) => factor * medianToSpread,
  },
  {
    id: 'median-to-spread-reason', kind: 'hand', source: 'r-mad', where: 'the constant: its reason, 1 over the upper quartile', what: 'our constant times our own quartile gives 1',
    printed: 1, unit: '1', tolerance: 5e-5, because: 'the constant has four decimals', ours: (factor = 1) => factor * medianToSpread * normalUpperPoint(0.25),
  },
] as const satisfies readonly Check[];
