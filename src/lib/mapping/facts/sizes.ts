import { assumed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';
const matros =
  'was 15.7, 19.8, and 21.3 mm above the medial canthus, pupil, and lateral canthus, respectively';
const matrosOlder =
  'the brow was 19.1, 22.4, and 22.4 mm above the medial canthus, pupil, and lateral canthus, respectively';
const icdWidest = 'African 38.5 ± 3.2, Asian 36.4 ± 1.6';
const icdNarrowest = 'White 31.4 ± 2.5, and Middle Eastern 31.2 ± 1.5';
const women = 'upper margin above the plane of the inner corners, 36 women of 20 to 30 years';
const older = 'upper margin above the plane of the inner corners, 34 women of 50 to 60 years';

/** Sizes of faces: what practice faces are drawn from, and what a scale may rest on. */
export const sizeFacts = {
  'brow-height-inner-young-mm': {
    value: 15.7,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matros),
    caveat: women,
    reviewed,
  },
  'brow-height-pupil-young-mm': {
    value: 19.8,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matros),
    caveat: women,
    reviewed,
  },
  'brow-height-outer-young-mm': {
    value: 21.3,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matros),
    caveat: women,
    reviewed,
  },
  'brow-height-inner-older-mm': {
    value: 19.1,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matrosOlder),
    caveat: older,
    reviewed,
  },
  'brow-height-pupil-older-mm': {
    value: 22.4,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matrosOlder),
    caveat: older,
    reviewed,
  },
  'brow-height-outer-older-mm': {
    value: 22.4,
    unit: 'mm',
    backing: published('matros-2009', 'abstract, results', matrosOlder),
    caveat: older,
    reviewed,
  },
  'inner-corners-widest-group-mm': {
    value: 38.5,
    unit: 'mm',
    backing: published('bouhadana-2022', 'abstract, results', icdWidest),
    reviewed,
  },
  'inner-corners-narrowest-group-mm': {
    value: 31.2,
    unit: 'mm',
    backing: published('bouhadana-2022', 'abstract, results', icdNarrowest),
    reviewed,
  },
  'inner-corners-largest-spread-mm': {
    value: 3.2,
    unit: 'mm',
    backing: published('bouhadana-2022', 'abstract, results', icdWidest),
    reviewed,
  },
  'inner-corners-smallest-spread-mm': {
    value: 1.5,
    unit: 'mm',
    backing: published('bouhadana-2022', 'abstract, results', icdNarrowest),
    reviewed,
  },
  'inner-corners-people': {
    value: 22638,
    unit: 'people',
    backing: published(
      'bouhadana-2022',
      'abstract, results',
      '67 studies accounting for 22,638 patients and 118 ethnic cohorts were included',
    ),
    reviewed,
  },
  'pupils-apart-mm': {
    value: mappingValues['pupils-apart-mm'],
    unit: 'mm',
    range: [50, 75],
    reviewed,
    backing: published(
      'dodgson-2004',
      'abstract',
      'mean adult IPD is around 63 mm, the vast majority of adults have IPDs in the range 50-75 mm',
    ),
  },
  'outer-corners-men-mm': {
    value: 93,
    unit: 'mm',
    backing: published('jayaratne-2013', 'Table 2', 'Biocular width (ex-ex)Male5193.005.56'),
    caveat: '51 men of Hong Kong; the copy read runs the digits together.',
    reviewed,
  },
  'outer-corners-women-mm': {
    value: 88.39,
    unit: 'mm',
    backing: published('jayaratne-2013', 'Table 2', 'Female5288.393.74'),
    caveat: '52 women of Hong Kong; the copy read runs the digits together.',
    reviewed,
  },
  'eye-width-men-mm': {
    value: 27.64,
    unit: 'mm',
    backing: published('jayaratne-2013', 'Table 2', 'Right eye fissure length (ex-en)Male5127.641.67'),
    caveat: 'Right eye; the copy read runs the digits together.',
    reviewed,
  },
  'eye-width-women-mm': {
    value: 26.04,
    unit: 'mm',
    backing: published('jayaratne-2013', 'Table 2', 'Female5226.041.83'),
    caveat: 'Right eye; the copy read runs the digits together.',
    reviewed,
  },
  'iris-width-mm': {
    value: mappingValues['iris-width-mm'],
    unit: 'mm',
    range: [10.7, 12.58],
    reviewed,
    backing: published(
      'rufer-2005',
      'abstract, results',
      'The average corneal diameter was 11.71 +/- 0.42 mm.',
    ),
    caveat: '390 white people of 10 to 80 years; range as printed for women.',
  },
  'iris-width-spread-mm': {
    value: 0.42,
    unit: 'mm',
    backing: published(
      'rufer-2005',
      'abstract, results',
      'The average corneal diameter was 11.71 +/- 0.42 mm.',
    ),
    reviewed,
  },
  'iris-width-second-study-mm': {
    value: 11.8,
    unit: 'mm',
    range: [10.8, 12.8],
    reviewed,
    backing: published(
      'hashemi-2015',
      'abstract, results',
      'Mean WTW corneal diameter in this study was 11.80 mm (confidence interval: 11.78–11.81)',
    ),
    caveat: '4,787 people of 40 to 64 years in one Iranian town.',
  },
  'front-gap-mm': {
    value: 28,
    unit: 'mm',
    backing: assumed('Gap between the fronts of a practice face.'),
    range: [18, 38],
    reviewed,
  },
  'front-gap-spread-mm': {
    value: 3.4,
    unit: 'mm',
    backing: assumed('Its spread over practice faces.'),
    reviewed,
  },
  'height-difference-spread-mm': {
    value: 1.6,
    unit: 'mm',
    backing: assumed(
      'Spread of the height difference of practice faces, near the published mean differences.',
    ),
    reviewed,
  },
  'roll-spread-deg': {
    value: 3.2,
    unit: '°',
    backing: assumed('Spread of the roll of practice faces.'),
    reviewed,
  },
  'nose-lean-spread-mm': {
    value: 3,
    unit: 'mm',
    backing: assumed(
      'Spread of the nose base of practice faces: wider than published, so that there is something to find.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
