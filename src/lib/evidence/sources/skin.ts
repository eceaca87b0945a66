import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Measured colours of skin, and what disturbs a reading. */
export const skinSources = {
  'skinoptics-ita': {
    kind: 'data', short: 'skinoptics', authors: 'Lima V', title: 'skinoptics: classes of the individual typology angle after Chardon 1991, Del Bino 2006, Del Bino and Bernerd 2013',
    where: 'github.com/victorportog/skinoptics, colors.py, commit 048ce98c', read: 'part', readOn,
  },
  'dermatest-colorimetry': {
    kind: 'data', short: 'Dermatest', authors: 'A skin-testing institute', title: 'Colorimetry: pigmentation of the skin',
    where: 'dermatest.de', address: 'http://dermatest.de/en/measuring-techniques/colorimetry', read: 'whole', readOn,
  },
  'han-2006': {
    kind: 'study', authors: 'Han K, Choi T, Son D', year: 2006, title: 'Skin color of Koreans: statistical evaluation of affecting factors',
    where: 'Skin Research and Technology 12:170–177', read: 'abstract', readOn,
  },
  'cooksey-2017': {
    kind: 'data', authors: 'Cooksey CC, Allen DW, Tsai BK', year: 2017, title: 'Reference data set of human skin reflectance',
    where: 'Journal of Research of NIST 122, article 26 (data read in an open copy)', doi: '10.6028/jres.122.026', read: 'copy', readOn,
  },
  'nanjing-skin': {
    kind: 'study', short: 'Nanjing skin study', authors: 'Authors not named in the copy read', title: 'Quantitative measurement of the colour of facial and forearm skin of healthy women',
    where: 'abstract, vip.suzhouinfo.cn 21187386', read: 'abstract', readOn,
  },
  'sun-two-weeks-2022': {
    kind: 'study', short: 'Two weeks of sun 2022', authors: 'Vision Research, authors not in the copy read', year: 2022, title: 'Skin color measurements before and after two weeks of sun exposure',
    where: 'Vision Research 192:107976', doi: '10.1016/j.visres.2021.107976', read: 'abstract', readOn,
  },
  'silicone-thresholds-2024': {
    kind: 'study', short: 'Silicone thresholds 2024', authors: 'Gazi University, authors not in the copy read', year: 2024, title: 'Perceptibility and acceptability thresholds of maxillofacial silicones for light and dark skin colours',
    where: 'Vision Research 223:108474', doi: '10.1016/j.visres.2024.108474', read: 'abstract', readOn,
  },
  'leow-2006': {
    kind: 'study', authors: 'Leow MEL, Ow RKK, Lee MH, Huak CY, Pho RWH', year: 2006, title: 'Assessment of colour differences in silicone hand and digit prostheses: perceptible and acceptable thresholds for fair and dark skin shades',
    where: 'Prosthetics and Orthotics International', doi: '10.1080/03093640500465096', read: 'abstract', readOn,
  },
  'blanching-1990': {
    kind: 'study', short: 'Blanching trial 1990', authors: 'Authors not in the copy read', year: 1990, title: 'Local blanching after epicutaneous application of a lidocaine-prilocaine cream: a double-blind randomized study among 50 healthy volunteers',
    where: 'Dermatologica 181:38–40', read: 'abstract', readOn,
  },
  'eilers-2013': {
    kind: 'study', authors: 'Eilers S, Bach DQ, Gaber R, Blatt H, Guevara Y, Nitsche K, Kundu RV, Robinson JK', year: 2013, title: 'Accuracy of self-report in assessing Fitzpatrick skin phototypes I through VI',
    where: 'JAMA Dermatology 149:1289–1294', doi: '10.1001/jamadermatol.2013.6101', read: 'abstract', readOn,
  },
  'he-2014': {
    kind: 'study', authors: 'He SY, McCulloch CE, Boscardin WJ, Chren MM, Linos E, Arron ST', year: 2014, title: 'Self-reported pigmentary phenotypes and race are significant but incomplete predictors of Fitzpatrick skin phototype',
    where: 'Journal of the American Academy of Dermatology 71:731–737', doi: '10.1016/j.jaad.2014.05.023', read: 'abstract', readOn,
  },
  'fadgi-grey-card': {
    kind: 'data', short: 'Digitization guidelines', authors: 'Federal Agencies Digital Guidelines Initiative', title: 'Glossary: gray card',
    where: 'digitizationguidelines.gov', address: 'http://www.digitizationguidelines.gov/term.php?term=graycard', read: 'part', readOn,
  },
  'kang-2025': {
    kind: 'study', authors: 'Kang S, Kim JK', year: 2025, title: 'Region-specific calibration achieves excellent inter-device reliability for smartphone dermatology',
    where: 'arXiv 2512.21988', read: 'abstract', readOn,
  },
  'srgb-primaries': {
    kind: 'data', short: 'sRGB primaries', authors: 'Several open test suites that agree', title: 'CIELAB (D65, 2°) of the sRGB primaries',
    where: 'as held by tests of open colour libraries', read: 'copy', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
