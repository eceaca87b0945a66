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
  'burns-2015': {
    kind: 'study', authors: 'Burns SA', year: 2015, title: 'Generating reflectance curves from sRGB triplets',
    where: 'scottburns.us, 29 April 2015; page 10, the hyperbolic tangent form, 4 June 2019', address: 'http://scottburns.us/reflectance-curves-from-srgb/', read: 'part', readOn,
  },
  'prahl-moaveni': {
    kind: 'data', short: 'Prahl', authors: 'Prahl S', title: 'Tabulated molar extinction coefficient for hemoglobin in water (after Schmitt and Moaveni)',
    where: 'omlc.org', address: 'http://omlc.org/spectra/hemoglobin/moaveni.html', read: 'whole', readOn,
  },
  'jacques-1998': {
    kind: 'review', authors: 'Jacques SL', year: 1998, title: 'Skin optics',
    where: 'Oregon Medical Laser Center News, January 1998', address: 'https://omlc.org/news/jan98/skinoptics.html', read: 'part', readOn,
  },
  'jacques-melanosome': {
    kind: 'data', short: 'Jacques, melanosome', authors: 'Jacques SL', year: 1998, title: 'Melanosome absorption coefficient',
    where: 'omlc.org, 7 July 1998', address: 'http://omlc.ogi.edu/spectra/melanin/mua.html', read: 'whole', readOn,
  },
  'ross-2001': {
    kind: 'study', authors: 'Ross EV, Yashar S, Michaud N, Fitzpatrick R, Geronemus R, Tope WD, Anderson RR', year: 2001, title: 'Tattoo darkening and nonresponse after laser treatment',
    where: 'Archives of Dermatology 137:33–37', doi: '10.1001/archderm.137.1.33', read: 'abstract', readOn,
  },
  'picosecond-brows': {
    kind: 'study', short: 'Picosecond brow study', authors: 'Authors not in the copy read', title: 'Laser removal of cosmetic eyebrow tattoos with a picosecond laser',
    where: 'abstract, discovery.researcher.life', read: 'abstract', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
