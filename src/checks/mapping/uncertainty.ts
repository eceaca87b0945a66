import {
  differenceUncertaintyMm,
  markUncertaintyMm,
  rectangularMm,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { rowUncertainty } from '#lib/mapping/uncertainty/markRow.ts';
import { repeatabilityMm, technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import type { Check } from '../check.ts';

/**
 * First and second weight of ten children by the supervisor, kg: the first two columns of the printed data.
 */
const supervisorWeights = [
  [15.9, 16],
  [14.2, 14.3],
  [16.7, 16.7],
  [14.1, 14.2],
  [14.8, 14.6],
  [16.2, 16.1],
  [10.5, 10.5],
  [16.5, 16.4],
  [14.1, 14.3],
  [13.5, 13.5],
] as const;

function supervisorError(): number {
  const fit = technicalError(supervisorWeights.map(([firstMm, secondMm]) => ({ firstMm, secondMm })));
  return fit.ok ? fit.temMm : 0;
}

/** One reading of error 1 and nothing else. */
const bare = { temMm: 1, readings: 1, budgetMm: 0 } as const;
const eightDecimals = 'all printed decimals: half a unit of the last';

/** Technical error, half-widths, root sum of squares, repeatability. */
export const uncertaintyChecks = [
  {
    id: 'technical-error-weights',
    kind: 'table',
    source: 'anthrocheckr',
    where: 'calculate_tem, example',
    what: 'technical error of ten weights taken twice, kg',
    printed: 0.08062258,
    unit: '1',
    tolerance: 5e-9,
    because: eightDecimals,
    ours: (factor = 1) => factor * supervisorError(),
  },
  {
    id: 'half-width-1-5',
    kind: 'table',
    source: 'quam-2012',
    where: 'E.1, not less than 7 or more than 10',
    what: 'standard uncertainty of a half-width of 1.5',
    printed: 0.87,
    unit: '1',
    tolerance: 0.0045,
    because: 'printed to two decimals; held a little tighter than half a unit, so that 1 % turns it red',
    ours: (factor = 1) => factor * rectangularMm({ halfWidthMm: 1.5 }),
  },
  {
    id: 'gauge-temperature',
    kind: 'table',
    source: 'gtc-h1',
    where: 'components of uncertainty',
    what: 'part of a half-width of 0.05 degrees in the length of a gauge',
    printed: 16.599,
    unit: 'nm',
    tolerance: 0.0005,
    because: 'all printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * 5.0000623e7 * 11.5e-6 * rectangularMm({ halfWidthMm: 0.05 }),
  },
  {
    id: 'gauge-expansion',
    kind: 'table',
    source: 'gtc-h1',
    where: 'components of uncertainty',
    what: 'part of the expansion’s half-width in the length of a gauge',
    printed: 2.88679,
    unit: 'nm',
    tolerance: 5e-6,
    because: 'all printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * 5.0000623e7 * 0.1 * rectangularMm({ halfWidthMm: 1e-6 }),
  },
  {
    id: 'flask-volume',
    kind: 'table',
    source: 'gtc-a1',
    where: 'uncertainty budgets: the second, volume taken together',
    what: 'three parts of a volume, root sum of squares',
    printed: 0.666525,
    unit: 'mg/l',
    tolerance: 1e-6,
    because: 'six printed decimals, parts rounded to six',
    ours: (factor = 1) => factor * rowUncertainty([0.486284, 0.40935, 0.20054]),
  },
  {
    id: 'flask-concentration',
    kind: 'table',
    source: 'gtc-a1',
    where: 'uncertainty budgets: combined',
    what: 'volume, mass and purity, root sum of squares',
    printed: 0.835199,
    unit: 'mg/l',
    tolerance: 1e-6,
    because: 'six printed decimals, parts rounded to six',
    ours: (factor = 1) =>
      factor * markUncertaintyMm({ temMm: 0.666525, readings: 1, budgetMm: Math.hypot(0.49995, 0.0578967) }),
  },
  {
    id: 'repeat-factor',
    kind: 'table',
    source: 'nicholls-repeatability',
    where: 'RC = 2.77 times the within-subject deviation',
    what: 'factor from technical error to repeatability',
    printed: 2.77,
    unit: '1',
    tolerance: 0.005,
    because: 'printed to two decimals: half a unit of the last',
    ours: (factor = 1) => factor * repeatabilityMm(1),
  },
  {
    id: 'repeat-root-two',
    kind: 'hand',
    source: 'bland-repeatability',
    where: '1.96 times the root of 2',
    what: 'smallest real difference of one reading a side, error 1',
    printed: 2.77186,
    unit: '1',
    tolerance: 0.0001,
    because: 'the page rounds 1.95996 to 1.96',
    ours: (factor = 1) => smallestRealDifferenceMm(bare, factor * familyCoverageFactor(1)),
  },
  {
    id: 'difference-root-two',
    kind: 'hand',
    source: 'bland-repeatability',
    where: 'variance of a difference is the sum of two',
    what: 'uncertainty of a difference, error 1 a side',
    printed: 1.414214,
    unit: '1',
    tolerance: 5e-7,
    because: 'worked to six decimals',
    ours: (factor = 1) => differenceUncertaintyMm({ ...bare, temMm: factor }),
  },
] as const satisfies readonly Check[];
