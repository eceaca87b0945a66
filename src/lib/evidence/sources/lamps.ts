import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Lamps to judge colours under, and what they do to faces. */
export const lampSources = {
  'white-leds-2018': {
    kind: 'study',
    short: 'Faces under 18 lamps',
    authors: 'Authors not in the copy read',
    year: 2018,
    title:
      'Colour differences in Caucasian and Oriental women’s faces illuminated by white light-emitting diode sources',
    where: 'International Journal of Cosmetic Science 40:244–255 (abstract in a library catalogue)',
    read: 'abstract',
    readOn,
  },
  'iso-3668-2017': {
    kind: 'standard',
    short: 'ISO 3668:2017',
    authors: 'International Organization for Standardization',
    year: 2017,
    title: 'Paints and varnishes: visual comparison of colour of paints',
    where: 'section 5, as reproduced on a page of standards',
    read: 'part',
    readOn,
  },
  'illuminant-a-docs': {
    kind: 'data',
    short: 'Illuminant A',
    authors: 'Documentation of an open colour library',
    title: 'White point A',
    where: 'docs.rs, palette 0.5.0, white_point::A',
    address: 'https://docs.rs/palette/0.5.0/palette/white_point/struct.A.html',
    read: 'part',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
