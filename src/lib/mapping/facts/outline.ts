import { commonPractice, computed, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';
const chosen = 'Med-1/4 was the brow thickness most often considered to be ideal (61.2%)';
const levels =
  'very thin (VTn-1/6) (16% of eye width), thin (Tn-1/5) (20%), medium (Med-1/4) (25%), and thick (Tk-1/3) (33%)';
const asked = 'The 163 women and 38 men who visited a brow bar';
const drawings =
  'Visitors of one brow bar in Korea chose between four drawings; thickness there means at the outer eye corner.';

/** Thickness of brows, as printed and as worked out. */
export const outlineFacts = {
  'women-brows-measured': {
    value: 3600,
    unit: 'people',
    backing: published(
      'feminine-eyebrows',
      'abstract',
      'Standard digital photographs of 3600 women of six ethnicities, aged 18-84years',
    ),
    reviewed,
  },
  'brow-sides-go-together': {
    value: 0.7,
    unit: '1',
    reviewed,
    caveat: 'Women; a correlation says that sides go together, not that they are equal.',
    backing: published(
      'feminine-eyebrows',
      'abstract',
      'the criteria of both eyebrows (Left vs. Right) were found to be highly correlated (r>0.7, P<0.001)',
    ),
  },
  'thickness-medium-of-eye': {
    value: 25,
    unit: '%',
    backing: published('hwang-2018', 'abstract', levels),
    caveat: drawings,
    reviewed,
  },
  'thickness-thin-of-eye': {
    value: 20,
    unit: '%',
    backing: published('hwang-2018', 'abstract', levels),
    caveat: drawings,
    reviewed,
  },
  'thickness-thick-of-eye': {
    value: 33,
    unit: '%',
    backing: published('hwang-2018', 'abstract', levels),
    caveat: drawings,
    reviewed,
  },
  'thickness-medium-chosen': {
    value: 61.2,
    unit: '%',
    backing: published('hwang-2018', 'abstract, as its summary prints it', chosen),
    caveat: drawings,
    reviewed,
  },
  'thickness-women-asked': {
    value: 163,
    unit: 'people',
    backing: published('hwang-2018', 'abstract', asked),
    reviewed,
  },
  'own-thickness-raters': {
    value: 171,
    unit: 'people',
    reviewed,
    caveat: 'Young adults looking at 100 pictures; a poster, not a full article.',
    backing: published(
      'peissig-2025',
      'abstract',
      'Both younger (n=171) and older adults (n=36) participated in this study',
    ),
  },
  'straight-up-too-thick-30-deg': {
    value: 15.5,
    unit: '%',
    backing: computed(
      'On two edges that slope alike by 30°, straight up is the thickness divided by the cosine of 30°, which is 0.866.',
    ),
    reviewed,
  },
  'straight-up-too-thick-20-deg': {
    value: 6.4,
    unit: '%',
    backing: computed(
      'On two edges that slope alike by 20°, straight up is the thickness divided by the cosine of 20°, which is 0.940.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** Habits of the trade for the outline. */
export const outlineHabits = {
  'thickness-equal': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Both brows are made equally thick, place by place, and compared at the same places.',
    ),
  },
  'outline-looks-bolder': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The drawn outline looks bolder than the result, because it only marks where to work. The client is told so before she judges it.',
    ),
  },
} as const satisfies Readonly<Record<string, Practice>>;
