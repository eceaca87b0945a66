import { assumed, commonPractice, computed, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';
const saudi = 'a wider nasal width than intercanthal distance (92% of males and 56% of females)';
const nose = 'Nasal width (al-al) 43.2 3.8 40.7 3.7';
const corners = 'Intercanthal distance (en-en) 32.2 1.9 32.1 1.4';
const kenya = 'the orbito-nasal canon present in 14.5% of males and 18.9% of females';
const table = 'The copy read is the table alone: it does not say who was measured.';
const half =
  'Half the nose’s width less half the gap of the inner corners, from means: single faces differ more.';

/** Fronts and tails: what noses and eyes measure, and the habits of the trade. */
export const placingFacts = {
  'nose-wider-men': {
    value: 92,
    unit: '%',
    backing: published('saudi-canons-2015', 'abstract, results', saudi),
    caveat: '93 dental students, men; nose wider than the gap of the inner corners.',
    reviewed,
  },
  'nose-wider-women': {
    value: 56,
    unit: '%',
    backing: published('saudi-canons-2015', 'abstract, results', saudi),
    caveat: '75 dental students, women.',
    reviewed,
  },
  'nose-wider-nigeria': {
    value: 88.1,
    unit: '%',
    reviewed,
    caveat: 'Young adults; the abstract’s own counts of people do not add up.',
    backing: published(
      'nigerian-face-2018',
      'abstract',
      'less than the nasal width in majority (88.1%) of the participants',
    ),
  },
  'nose-as-wide-as-gap': {
    value: 40,
    unit: '%',
    backing: published('farkas-1985', 'abstract', 'width equals nose width in 40 percent'),
    caveat: '153 young adults.',
    reviewed,
  },
  'nose-as-wide-kenya-men': {
    value: 14.5,
    unit: '%',
    backing: published('sarna-2022', 'abstract, results', kenya),
    caveat: 'Kenyans of Indian descent; 130 people in all.',
    reviewed,
  },
  'nose-as-wide-kenya-women': {
    value: 18.9,
    unit: '%',
    backing: published('sarna-2022', 'abstract, results', kenya),
    caveat: 'Kenyans of Indian descent; 130 people in all.',
    reviewed,
  },
  'nose-width-first-mm': {
    value: 43.2,
    unit: 'mm',
    backing: published('face-table-2019', 'Table 9, first column', nose),
    caveat: table,
    reviewed,
  },
  'nose-width-second-mm': {
    value: 40.7,
    unit: 'mm',
    backing: published('face-table-2019', 'Table 9, second column', nose),
    caveat: table,
    reviewed,
  },
  'corner-gap-first-mm': {
    value: 32.2,
    unit: 'mm',
    backing: published('face-table-2019', 'Table 9, first column', corners),
    caveat: table,
    reviewed,
  },
  'corner-gap-second-mm': {
    value: 32.1,
    unit: 'mm',
    backing: published('face-table-2019', 'Table 9, second column', corners),
    caveat: table,
    reviewed,
  },
  'wing-beyond-corner-first-mm': {
    value: 5.5,
    unit: 'mm',
    backing: computed(half, 'nose-width-first-mm', 'corner-gap-first-mm'),
    reviewed,
  },
  'wing-beyond-corner-second-mm': {
    value: 4.3,
    unit: 'mm',
    backing: computed(half, 'nose-width-second-mm', 'corner-gap-second-mm'),
    reviewed,
  },
  'tail-falls-mm': {
    value: 2.5,
    unit: 'mm',
    reviewed,
    caveat:
      'For each 20 years of age, tail against outer eye corner; 1,024 people of different ages, seen once.',
    backing: published('glass-2014', 'abstract, results', 'the LBPL fell approximately 2.5 mm per 20 years'),
  },
  'nostril-middle-share': {
    value: mappingValues['nostril-middle-share'],
    unit: '%',
    backing: assumed(
      'The middle of the nostril, on the way from the nose’s middle to its wing. Set your own.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** Habits of the trade for front and tail. */
export const placingHabits = {
  'front-above-an-anchor': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The front starts on an upright line above the nose wing, the inner eye corner, or the middle of the nostril. Reviews for surgeons print wing and corner as if they were one line.',
    ),
  },
  'tail-inside-the-line': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The tail ends on or inside the line from the nose wing over the outer eye corner.',
    ),
  },
  'tail-tip-in-the-band': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The tail tip lies no lower than the front’s lower edge and no higher than the front’s top. Reviews for surgeons print both ends at about one level, or the tail a little higher.',
    ),
  },
  'lengths-equal': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice('Both brows are made equally long, measured the same way on both sides.'),
  },
} as const satisfies Readonly<Record<string, Practice>>;
