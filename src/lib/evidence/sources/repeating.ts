import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Tables and printed examples for repeated readings: chi-square, Student's t, within-subject spread. */
export const repeatingSources = {
  'nist-chi-square-table': {
    kind: 'data', short: 'NIST chi-square table', authors: 'NIST/SEMATECH',
    title: 'e-Handbook of Statistical Methods: lower critical values of the chi-square distribution',
    where: 'reprinted as Table 7b', address: 'https://www.scribd.com/document/587562220/Distribuicao-Chi-Quadrado', read: 'copy', readOn,
  },
  'nag-chi-square': {
    kind: 'data', short: 'NAG, g01tcc', authors: 'Numerical Algorithms Group',
    title: 'g01tcc: deviates of the chi-square distribution, example results', where: 'library manual, base results',
    address: 'https://support.nag.com/numeric/cl/nagdoc_latest/examples/baseresults/g01tcce.r.html', read: 'whole', readOn,
  },
  'boost-chi-square': {
    kind: 'data', short: 'Boost, gear data', authors: 'Maddock J, Bristow PA',
    title: 'Confidence intervals on the standard deviation: gear data of the NIST/SEMATECH e-Handbook with printed output',
    where: 'Boost.Math, doc/distributions/chi_squared_examples.qbk', address: 'https://github.com/boostorg/math', read: 'whole', readOn,
  },
  'boost-student-t': {
    kind: 'data', short: 'Boost, mercury', authors: 'Maddock J, Bristow PA',
    title: 'Confidence intervals on the mean with Student’s t: three readings of mercury, printed output',
    where: 'Boost.Math, doc/distributions/students_t_examples.qbk', address: 'https://github.com/boostorg/math', read: 'part', readOn,
  },
  'statpsych-sd': {
    kind: 'data', short: 'statpsych, ci.sd', authors: 'Bonett DG', year: 2026,
    title: 'ci.sd: confidence interval for a standard deviation, example with printed output', where: 'R package statpsych',
    address: 'https://rdrr.io/cran/statpsych/man/ci.sd.html', read: 'whole', readOn,
  },
  'statpsych-mean': {
    kind: 'data', short: 'statpsych, ci.mean', authors: 'Bonett DG',
    title: 'ci.mean: confidence interval for a mean, example with printed output', where: 'R package statpsych, version 2.0.0',
    address: 'https://www.rdocumentation.org/packages/statpsych/versions/2.0.0/topics/ci.mean', read: 'whole', readOn,
  },
  'bland-altman-1996': {
    kind: 'study', authors: 'Bland JM, Altman DG', year: 1996,
    title: 'Statistics notes: measurement error', where: 'BMJ 313:744; data of 20 children on a copied page', doi: '10.1136/bmj.313.7059.744', read: 'copy', readOn,
  },
  'houston-1983': {
    kind: 'study', authors: 'Houston WJB', year: 1983,
    title: 'The analysis of errors in orthodontic measurements', where: 'American Journal of Orthodontics 83:382–390',
    doi: '10.1016/0002-9416(83)90322-6', read: 'abstract', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
