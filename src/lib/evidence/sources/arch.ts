import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Studies of where the arch stands and where people like it. */
export const archSources = {
  'roth-2003': {
    kind: 'study',
    authors: 'Roth JM, Metzinger SE',
    year: 2003,
    title: 'Quantifying the arch position of the female eyebrow',
    where: 'Archives of Facial Plastic Surgery 5:235–239',
    read: 'abstract',
    readOn,
  },
  'sclafani-2010': {
    kind: 'study',
    authors: 'Sclafani AP, Jung M',
    year: 2010,
    title: 'Desired position, shape, and dynamic range of the normal adult eyebrow',
    where: 'Archives of Facial Plastic Surgery 12:123–127',
    doi: '10.1001/archfacial.2010.17',
    read: 'abstract',
    readOn,
  },
  'pham-2010': {
    kind: 'study',
    authors: 'Pham S, Wilhelmi B, Mowlavi A',
    year: 2010,
    title: 'Eyebrow peak position redefined',
    where: 'Aesthetic Surgery Journal 30:297–300',
    doi: '10.1177/1090820X10369918',
    read: 'abstract',
    readOn,
  },
  'biller-2009': {
    kind: 'study',
    authors: 'Biller JA, Kim DW',
    year: 2009,
    title: 'A contemporary assessment of facial aesthetic preferences',
    where: 'Archives of Facial Plastic Surgery 11',
    doi: '10.1001/archfacial.2008.543',
    read: 'abstract',
    readOn,
  },
  'hamamoto-2013': {
    kind: 'study',
    authors: 'Hamamoto AA, Liu TW, Wong BJ',
    year: 2013,
    title: 'Identifying ideal brow vector position: empirical analysis of three brow archetypes',
    where: 'Facial Plastic Surgery 29:76–82',
    doi: '10.1055/s-0033-1333841',
    read: 'abstract',
    readOn,
  },
  'planetmath-golden-ratio': {
    kind: 'data',
    short: 'PlanetMath',
    authors: 'PlanetMath',
    year: 2013,
    title: 'Golden ratio',
    where: 'planetmath.org, section 40A05',
    read: 'part',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
