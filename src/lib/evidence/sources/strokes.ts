import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Strokes, dots and the share of a surface that things thrown at random cover. */
export const strokeSources = {
  'eames-2011': {
    kind: 'study',
    authors: 'Eames I',
    year: 2011,
    title: 'A mathematical model of how tattoos change with time',
    where: 'Mathematics Today, as quoted in two news reports of that year; the paper itself was not read',
    address: 'https://gizmodo.com/mathematician-can-predict-how-shitty-your-tattoo-will-l-5797247',
    read: 'copy',
    readOn,
  },
  'rajput-2021': {
    kind: 'review',
    authors: 'Rajput RJ',
    year: 2021,
    title: 'Hair transplant for eyebrow restoration',
    where: 'Indian Journal of Plastic Surgery 54(4):489–494',
    doi: '10.1055/s-0041-1739253',
    read: 'abstract',
    readOn,
  },
  'surgeon-page-2020': {
    kind: 'data',
    short: 'A surgeon’s page',
    authors: 'plasticsurgeondreaming.com',
    year: 2020,
    title: 'Eyebrow microblading: what you need to know',
    where: '13 December 2020',
    address:
      'https://plasticsurgeondreaming.com/index.php/2020/12/13/eyebrow-microblading-what-you-need-to-know',
    read: 'part',
    readOn,
  },
  'poisson-table': {
    kind: 'data',
    short: 'Poisson table',
    authors: 'Stats Masters',
    title: 'Poisson distribution table',
    where: 'cumulative probabilities, four decimals',
    address: 'https://statsmasters.pages.dev/tables/poisson-table',
    read: 'part',
    readOn,
  },
  'boolean-model-tests': {
    kind: 'data',
    short: 'Boolean model, R',
    authors: 'lacunaritycovariance (R package)',
    title: 'Tests of the simulation of a Boolean model of discs',
    where: 'test file on rbdd',
    address: 'https://search.r-project.org/CRAN/refmans/lacunaritycovariance/html/rbdd.html',
    read: 'part',
    readOn,
  },
  'disc-percolation': {
    kind: 'data',
    short: 'Random discs',
    authors: 'Becker J',
    title: 'Continuum percolation: random disk model and coverage',
    where: 'two pages of iris.joshua-becker.com, after Quintanilla & Ziff 2007',
    address: 'https://iris.joshua-becker.com/lab/continuum-percolation-disk-model-threshold/',
    read: 'part',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
