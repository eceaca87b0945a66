import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Papers and printed examples for errors of reading, from readings taken twice. */
export const technicalErrorSources = {
  'bland-repeatability': {
    kind: 'review',
    short: 'Bland 2005',
    authors: 'Bland M',
    year: 2005,
    title: 'What is the origin of the formula for repeatability?',
    where: 'University of York, frequently asked questions',
    address: 'http://www-users.york.ac.uk/~mb55/meas/repeat.htm',
    read: 'whole',
    readOn,
  },
  'bland-altman-1999': {
    kind: 'study',
    authors: 'Bland JM, Altman DG',
    year: 1999,
    title: 'Measuring agreement in method comparison studies',
    where: 'Statistical Methods in Medical Research 8:135–160',
    read: 'abstract',
    readOn,
  },
  'nicholls-repeatability': {
    kind: 'data',
    authors: 'Nicholls R',
    title: 'Repeatability coefficient',
    where: 'Statistics notes, section 1',
    address: 'https://rowannicholls.github.io/R/statistics/agreement/repeatability_coefficient.html',
    read: 'part',
    readOn,
  },
  'galvao-2012': {
    kind: 'study',
    authors: 'Galvão MCS, Sato JR, Coelho EC',
    year: 2012,
    title: 'Dahlberg formula – a novel approach for its evaluation',
    where: 'Dental Press Journal of Orthodontics 17',
    read: 'abstract',
    readOn,
  },
  'dahlberg-1940': {
    kind: 'study',
    authors: 'Dahlberg G',
    year: 1940,
    title: 'Statistical methods for medical and biological students',
    where: 'Allen and Unwin',
    read: 'none',
    readOn,
  },
  'perini-2005': {
    kind: 'study',
    authors: 'Perini TA, Oliveira GL, Ornellas JS, Oliveira FP',
    year: 2005,
    title: 'Technical error of measurement in anthropometry',
    where: 'Revista Brasileira de Medicina do Esporte 11:81–85',
    doi: '10.1590/S1517-86922005000100009',
    read: 'abstract',
    readOn,
  },
  anthrocheckr: {
    kind: 'data',
    short: 'anthrocheckr',
    authors: 'Nutriverse',
    title: 'anthrocheckr: technical error of measurement, example with data and printed output',
    where: 'calculate_tem and data-raw/standardisation.csv',
    address: 'https://github.com/nutriverse/anthrocheckr',
    read: 'whole',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
