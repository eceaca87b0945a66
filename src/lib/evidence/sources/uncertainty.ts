import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Standards and printed worked examples for adding uncertainties. */
export const uncertaintySources = {
  'jcgm-100-2008': {
    kind: 'standard',
    short: 'GUM 2008',
    authors: 'Joint Committee for Guides in Metrology',
    year: 2008,
    title: 'Evaluation of measurement data – Guide to the expression of uncertainty in measurement (GUM)',
    where: 'JCGM 100:2008',
    address:
      'https://www.iso.org/sites/JCGM/GUM/JCGM100/C045315e-html/C045315e_FILES/MAIN_C045315e/04_e.html',
    read: 'part',
    readOn,
  },
  'nist-tn-1297': {
    kind: 'standard',
    short: 'NIST TN 1297',
    authors: 'Taylor BN, Kuyatt CE',
    year: 1994,
    title: 'Guidelines for evaluating and expressing the uncertainty of NIST measurement results',
    where: 'NIST Technical Note 1297, section 4',
    address:
      'https://www.nist.gov/pml/nist-technical-note-1297/nist-tn-1297-4-type-b-evaluation-standard-uncertainty',
    read: 'part',
    readOn,
  },
  'quam-2012': {
    kind: 'standard',
    short: 'EURACHEM/CITAC 2012',
    authors: 'EURACHEM / CITAC',
    year: 2012,
    title: 'Quantifying uncertainty in analytical measurement',
    where: 'Appendix E.1, copied page',
    read: 'copy',
    readOn,
  },
  'gtc-h1': {
    kind: 'data',
    short: 'GTC, gauge block',
    authors: 'Measurement Standards Laboratory of New Zealand',
    title: 'GUM Tree Calculator, gauge block example (GUM H.1) with printed output',
    where: 'GTC documentation, docs/API/GUM_H1.rst',
    address: 'https://github.com/MSLNZ/GTC',
    read: 'whole',
    readOn,
  },
  'gtc-a1': {
    kind: 'data',
    short: 'GTC, flask',
    authors: 'Measurement Standards Laboratory of New Zealand',
    title: 'GUM Tree Calculator, calibration standard example (CITAC A1) with printed output',
    where: 'GTC documentation, docs/API/CITAC_A1.rst',
    address: 'https://github.com/MSLNZ/GTC',
    read: 'whole',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
