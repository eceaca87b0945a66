import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';
const range = 'Brow motility in the central part of the lid fissure ranges from 7.57 to 9.02 mm.';
const opening = {
  upright: 'Upright measurements averaged 8.54 mm (95% CI, 8.19-8.90)',
  lying: 'supine measurements averaged 7.38 mm (95% CI, 7.00-7.76)',
};

/** How far a brow moves with its muscle, with gravity and after toxin. */
export const poseFacts = {
  'brow-raise-least-mm': {
    value: 7.57,
    unit: 'mm',
    backing: published('souza-cruz-2004', 'abstract, results', range),
    reviewed,
    caveat: 'From rest to raised as far as it goes, group with the least; 81 people from 6 to 80 years.',
  },
  'brow-raise-most-mm': {
    value: 9.02,
    unit: 'mm',
    backing: published('souza-cruz-2004', 'abstract, results', range),
    reviewed,
    caveat: 'From rest to raised as far as it goes, group with the most; 81 people from 6 to 80 years.',
  },
  'brow-raise-people': {
    value: 81,
    unit: 'people',
    backing: published(
      'souza-cruz-2004',
      'abstract, methods',
      'The motion range of the eyebrow was measured in 81 normal subjects divided into three age groups',
    ),
    reviewed,
  },
  'brow-rise-in-space-mm': {
    value: 3.4,
    unit: 'mm',
    backing: published(
      'karlin-2021',
      'report of results',
      'pupil-to-brow measurement displayed a 3.4 mm rise (P < .01)',
    ),
    reviewed,
    caveat: 'Portraits on Earth against portraits in space; not lying down.',
  },
  'brow-rise-in-space-people': {
    value: 18,
    unit: 'people',
    backing: published(
      'karlin-2021',
      'report of methods',
      'collected at least six front-facing portraits of 18 astronauts from the NASA image database',
    ),
    reviewed,
  },
  'brow-rise-weightless-mm': {
    value: 2.3,
    unit: 'mm',
    backing: published(
      'parabolic-flight',
      'abstract, results',
      'short-term microgravity induced a mean PTB increase of 2.3 mm',
    ),
    reviewed,
    caveat: '13 people, seconds of weightlessness in flight; one edge of the brow, the other rose by 2.4.',
  },
  'eye-opening-upright-mm': {
    value: 8.54,
    unit: 'mm',
    backing: published('supine-lids-2024', 'abstract, results', opening.upright),
    reviewed,
    caveat: '86 eyes of 43 people: the opening between the lids.',
  },
  'eye-opening-lying-mm': {
    value: 7.38,
    unit: 'mm',
    backing: published('supine-lids-2024', 'abstract, results', opening.lying),
    reviewed,
    caveat: 'The same eyes, lying on the back.',
  },
  'side-marks-moved-lying': {
    value: 52,
    unit: '%',
    backing: published(
      'body-positions-3d',
      'abstract, results',
      '94 out of 180 (52%) measurements of the bilateral landmarks showed significant displacements among the body positions',
    ),
    reviewed,
    caveat: 'Standing, sitting and lying; marks all over the face, not of brows alone.',
  },
  'lying-faces-photographed': {
    value: 53,
    unit: 'people',
    backing: published(
      'midface-gravity-2020',
      'abstract, methods',
      'A prospective study of 53 female patients',
    ),
    reviewed,
    caveat: 'From sitting to lying the tail of the brow rose; the abstract prints no millimetres for it.',
  },
  'brow-lower-after-toxin-weeks': {
    value: 2,
    unit: 'weeks',
    backing: published(
      'upper-face-toxin-2018',
      'abstract, results',
      '2 weeks after injection, the brow was lower at all the measured positions, with the exception of the lateral brow edge, which was higher',
    ),
    reviewed,
    caveat: '45 people, forehead and frown treated together.',
  },
  'brow-highest-after-toxin-weeks': {
    value: 12,
    unit: 'weeks',
    backing: published(
      'carruthers-2007',
      'abstract, results',
      'followed by a central and medial eyebrow elevation that peaked at 12 weeks after treatment',
    ),
    reviewed,
    caveat: '79 women, frown muscles alone, three of four doses.',
  },
  'brow-followed-after-toxin-weeks': {
    value: 20,
    unit: 'weeks',
    backing: published(
      'carruthers-2007',
      'abstract, methods',
      'at baseline and every 2 weeks after treatment for up to 20 weeks',
    ),
    reviewed,
  },
  'brow-still-lower-months': {
    value: 3,
    unit: 'months',
    backing: published(
      'brow-descent-2019',
      'report of results',
      'brow descent among women in the glabella-frontalis group diminished after three months but was still significant',
    ),
    reviewed,
    caveat:
      '20 women with forehead and frown treated; read again at 6 months, of which the report says nothing.',
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** Habits: no study was found for them. */
export const poseHabits = {
  'map-at-rest': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'A raised, frowning or talking brow is not mapped: the client looks straight ahead and lets her forehead go.',
    ),
  },
  'settle-after-toxin': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'After toxin in the upper face mapping waits until the brows have settled; how long differs, from about two weeks to until it has worn off.',
    ),
  },
} as const satisfies Readonly<Record<string, Practice>>;
