import { published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { unequalRangeMm } from '../numbers/start.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';
const hohman =
  'eyebrow elevation asymmetry gradually rose from 23% correct to 97% correct across the range of 1 mm to 6 mm';

/** Who sees a difference, and how unequal brows usually are. */
export const seeingFacts = {
  'seen-at-1-mm': {
    value: mappingValues['seen-at-1-mm'],
    unit: '%',
    backing: published('hohman-2014', 'abstract, results', hohman),
    reviewed,
    caveat: 'One woman raising her brows, changed by computer, seen on a screen.',
  },
  'seen-at-6-mm': {
    value: mappingValues['seen-at-6-mm'],
    unit: '%',
    backing: published('hohman-2014', 'abstract, results', hohman),
    reviewed,
    caveat: 'One woman raising her brows, changed by computer, seen on a screen.',
  },
  'few-see-mm': {
    value: mappingValues['few-see-mm'],
    unit: 'mm',
    backing: published('hohman-2014', 'abstract, results', hohman),
    reviewed,
    caveat: 'The smallest step shown in that study.',
  },
  'almost-all-see-mm': {
    value: mappingValues['almost-all-see-mm'],
    unit: 'mm',
    backing: published('hohman-2014', 'abstract, results', hohman),
    reviewed,
    caveat: 'The largest step shown in that study.',
  },
  'viewers-asked': {
    value: 145,
    unit: 'people',
    backing: published(
      'hohman-2014',
      'abstract, methods',
      'One hundred and forty-five participants viewed these photographs using an online survey',
    ),
    reviewed,
  },
  'most-see-mm': {
    value: mappingValues['most-see-mm'],
    unit: 'mm',
    backing: published(
      'chu-2011',
      'abstract, results',
      'At least 3 mm of facial asymmetry of the oral commissure, brow, or both was required before participants detected the asymmetry.',
    ),
    reviewed,
    caveat: 'A face changed by computer to look partly paralysed; a longer look finds less.',
  },
  'own-brows-seen-mm': {
    value: mappingValues['own-brows-seen-mm'],
    unit: 'mm',
    backing: published(
      'tiryaki-2007',
      'abstract, methods',
      'the minimal amount of asymmetry noticeable to the patients was 2 mm',
    ),
    reviewed,
    caveat: 'People who had asked for treatment, looking at themselves.',
  },
  'unequal-at-front-mm': {
    value: mappingValues['unequal-at-front-mm'],
    unit: 'mm',
    backing: published('eyelid-brow-2014', 'abstract, results', '1.34 mm (95% CI 1.14-1.54)'),
    range: unequalRangeMm.front,
    reviewed,
    caveat: 'Mean difference of the two sides; 100 people asking for lid surgery, mean age 57.7.',
  },
  'unequal-at-middle-mm': {
    value: mappingValues['unequal-at-middle-mm'],
    unit: 'mm',
    backing: published('eyelid-brow-2014', 'abstract, results', '1.77 mm (95% CI 1.47-2.07)'),
    range: unequalRangeMm.middle,
    reviewed,
    caveat: 'Mean difference of the two sides; 100 people asking for lid surgery, mean age 57.7.',
  },
  'unequal-at-tail-mm': {
    value: mappingValues['unequal-at-tail-mm'],
    unit: 'mm',
    backing: published('eyelid-brow-2014', 'abstract, results', '1.78 mm (95% CI 1.50-2.06)'),
    range: unequalRangeMm.tail,
    reviewed,
    caveat: 'Mean difference of the two sides; 100 people asking for lid surgery, mean age 57.7.',
  },
  'over-1-mm-somewhere': {
    value: 93,
    unit: '%',
    backing: published(
      'eyelid-brow-2014',
      'abstract, results',
      'Ninety-three percent of patients had at least one asymmetric measurement of greater than 1 mm.',
    ),
    reviewed,
    caveat: 'Lids and brows counted together.',
  },
  'over-2-mm-somewhere': {
    value: 75,
    unit: '%',
    backing: published(
      'eyelid-brow-2014',
      'abstract, results',
      'Seventy-five percent of patients studied had at least one measurement greater than 2 mm',
    ),
    reviewed,
    caveat: 'Lids and brows counted together.',
  },
  'over-3-mm-somewhere': {
    value: 37,
    unit: '%',
    backing: published(
      'eyelid-brow-2014',
      'abstract, results',
      '37 percent had at least one greater than 3 mm',
    ),
    reviewed,
    caveat: 'Lids and brows counted together.',
  },
  'brows-unequal': {
    value: mappingValues['brows-unequal'],
    unit: '%',
    backing: published('perumal-2018', 'abstract', 'Brow asymmetry was found in 88% of patients'),
    reviewed,
    caveat: '133 people asking for lid surgery.',
  },
  'right-lower': {
    value: mappingValues['right-lower'],
    unit: '%',
    backing: published(
      'perumal-2018',
      'abstract',
      'Of those patients who had asymmetry, 61% had the right brow lower',
    ),
    reviewed,
    caveat: '133 people asking for lid surgery.',
  },
} as const satisfies Readonly<Record<string, Fact>>;
