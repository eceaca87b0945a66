import type { Method } from '../evidence/method.ts';

/** The mathematics of mapping, for the Evidence pages. */
export const mappingMethods = {
  'midline-by-reflection': {
    sources: ['mardia-2000', 'klingenberg-2002'],
    file: 'src/lib/mapping/midline/midline.ts',
  },
  'weighing-marks-down': {
    sources: ['beaton-tukey-1974', 'statsmodels-biweight'],
    file: 'src/lib/mapping/midline/robustMidline.ts',
  },
  'technical-error': {
    sources: ['dahlberg-1940', 'galvao-2012', 'perini-2005'],
    file: 'src/lib/mapping/uncertainty/technicalError.ts',
  },
  repeatability: {
    sources: ['bland-repeatability', 'bland-altman-1999'],
    file: 'src/lib/mapping/uncertainty/technicalError.ts',
  },
  'adding-uncertainties': {
    sources: ['jcgm-100-2008', 'nist-tn-1297'],
    file: 'src/lib/mapping/uncertainty/budget.ts',
  },
  'few-readings': {
    sources: ['nist-t-table', 'jcgm-100-2008'],
    file: 'src/lib/mapping/uncertainty/studentFactor.ts',
  },
  'how-well-an-error-is-known': {
    sources: ['nist-chi-square-table', 'boost-chi-square'],
    file: 'src/lib/mapping/uncertainty/spreadInterval.ts',
  },
  'shift-and-scatter': {
    sources: ['houston-1983', 'bland-altman-1999'],
    file: 'src/lib/mapping/uncertainty/comparePasses.ts',
  },
  'many-comparisons': {
    sources: ['sidak-1967', 'sidak-article'],
    file: 'src/lib/mapping/uncertainty/familyWise.ts',
  },
  'anchors-of-the-front': {
    sources: ['yalcinkaya-2014', 'alex-2004'],
    file: 'src/lib/mapping/placing/anchorDistances.ts',
  },
  'outline-edges': { sources: ['beam-tables'], file: 'src/lib/mapping/outline/halfEdge.ts' },
  'thickness-across': {
    sources: ['parallel-lines-up', 'parallel-lines-down'],
    file: 'src/lib/mapping/outline/thickness.ts',
  },
  'plan-inside-limits': { sources: ['goldfarb-idnani-1983'], file: 'src/lib/mapping/plan/nearest.ts' },
  'least-left-uncovered': { sources: ['goldfarb-idnani-1983'], file: 'src/lib/mapping/plan/leastArea.ts' },
  'tail-line': { sources: ['yalcinkaya-2014', 'alex-2004'], file: 'src/lib/mapping/placing/tailLine.ts' },
} as const satisfies Readonly<Record<string, Method>>;
