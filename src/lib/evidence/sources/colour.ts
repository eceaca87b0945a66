import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Colorimetry and the optics of layers. */
export const colourSources = {
  'sharma-2005': {
    kind: 'study', authors: 'Sharma G, Wu W, Dalal EN', year: 2005,
    title: 'The CIEDE2000 color-difference formula: implementation notes, supplementary test data, and mathematical observations',
    where: 'Color Research & Application 30:21–30, table 1 (read in several open copies that agree)', read: 'copy', readOn,
  },
  'cie-015-2018': {
    kind: 'standard', short: 'CIE 015:2018', authors: 'International Commission on Illumination', year: 2018,
    title: 'Colorimetry, 4th edition: tables of illuminants, white points and chromaticities',
    where: 'as reproduced in colour-science/colour, colorimetry/datasets', doi: '10.25039/TR.015.2018', read: 'copy', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
