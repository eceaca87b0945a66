import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Tables of angles. */
export const angleSources = {
  'sine-table': {
    kind: 'data',
    short: 'Table of sines',
    authors: 'Rockler Woodworking and Hardware',
    title: 'Right triangle formulas, calculator and table of trigonometric function values',
    where: 'table, degrees 1 to 45',
    address: 'http://www.rockler.com/how-to/calculator-table-trigonometric-function-values',
    read: 'part',
    readOn,
  },
  'oeis-a019812': {
    kind: 'data',
    short: 'OEIS A019812',
    authors: 'The On-Line Encyclopedia of Integer Sequences',
    title: 'Decimal expansion of sine of 3 degrees',
    where: 'A019812',
    address: 'https://oeis.org/A019812',
    read: 'copy',
    readOn,
  },
  'trig-table': {
    kind: 'data',
    short: 'Table of tangents',
    authors: 'calculator page',
    title: 'Table of common trigonometric values',
    where: 'row of 1 degree',
    read: 'whole',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
