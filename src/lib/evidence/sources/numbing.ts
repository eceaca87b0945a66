import type { Source } from '../source.ts';

const readOn = '2026-11-30';

/** First aid after too much numbing cream, and for a fit. */
export const numbingSources = {
  'fda-numbing-2007': {
    kind: 'guidance',
    short: 'FDA advisory, 2007',
    authors: 'US Food and Drug Administration',
    place: 'United States',
    year: 2007,
    title: 'Hazards of using skin numbing products for cosmetic procedures',
    where: 'copy at spiritindia.com',
    address:
      'https://spiritindia.com/cosmetic-surgery-hazards-of-using-skin-numbing-products-for-cosmetic-procedures/',
    read: 'copy',
    readOn,
  },
  'fda-benzocaine-2011': {
    kind: 'guidance',
    short: 'FDA on benzocaine, 2011',
    authors: 'US Food and Drug Administration',
    place: 'United States',
    year: 2011,
    title: 'Drug safety communication: benzocaine sprays',
    where: 'copy at biospace.com',
    address:
      'https://www.biospace.com/fda-continues-to-receive-reports-of-a-rare-but-potentially-fatal-adverse-effect-with-benzocaine-sprays',
    read: 'copy',
    readOn,
  },
  'lignocaine-overdose': {
    kind: 'label',
    short: 'Lignocaine injection, label',
    authors: 'Monthly Index of Medical Specialities',
    place: 'Malaysia',
    title: 'Lignocaine injection: overdosage',
    where: 'copy of the monograph',
    read: 'copy',
    readOn,
  },
  'numbing-script-2019': {
    kind: 'label',
    short: 'Numbing cream script, 2019',
    authors: 'Not named',
    place: 'United States',
    year: 2019,
    title: 'Lidocaine and prilocaine cream: what a patient is told',
    where: 'text dated 17 June 2019',
    read: 'copy',
    readOn,
  },
  'cdc-seizures': {
    kind: 'guidance',
    short: 'CDC, seizures',
    authors: 'Centers for Disease Control and Prevention',
    place: 'United States',
    title: 'Get Seizure Smart: do I call',
    where: 'cdc.gov',
    address: 'https://www.cdc.gov/epilepsy/communications/features/firstaid.htm',
    read: 'part',
    readOn,
  },
  'cdc-seizures-2012': {
    kind: 'guidance',
    short: 'CDC, seizures, 2012',
    authors: 'Centers for Disease Control and Prevention',
    place: 'United States',
    year: 2012,
    title: 'First aid for seizures',
    where: 'archived page, 7 October 2012',
    address:
      'https://webarchive.library.unt.edu/web/20121007032603/http://www.cdc.gov/epilepsy/basics/first_aid.htm',
    read: 'copy',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
