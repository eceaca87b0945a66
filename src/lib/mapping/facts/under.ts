import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';

/** What a shape sits on: hair, bone, or nothing. */
export const underFacts = {
  'brow-loss-comes-first': {
    value: 39,
    unit: '%',
    reviewed,
    caveat:
      'Of people with one scarring kind of hair loss (frontal fibrosing alopecia), as a letter retells another study.',
    backing: published(
      'anzai-2016',
      'letter, first paragraph',
      'Eyebrow alopecia is thought to precede scalp alopecia in 39% of cases',
    ),
  },
  'brow-against-rim-people': {
    value: 40,
    unit: 'people',
    reviewed,
    caveat:
      'Women wanted the lower border just below the bone’s edge near the nose, at the edge in the middle, several millimetres above it at the outer corner. Men wanted it lower. The range of movement was greater at the tail in women, near the nose in men.',
    backing: published(
      'sclafani-2010',
      'abstract, methods',
      'Photographs were taken of 40 adult subjects in 5 poses',
    ),
  },
  'outer-end-groups': {
    value: 20,
    unit: 'people',
    reviewed,
    caveat:
      'In each of two age groups. The outer end moved least of four places, and lay lower in the older group.',
    backing: published('son-2017', 'abstract, methods', 'the younger group, n=20; mean age, 24.8 years'),
  },
  'shape-sits-on-something': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'A shape is drawn where hair or the bone of the brow lies under it. Where neither does, it looks painted on.',
    ),
  },
  'off-bone-moves': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'A tail below the edge of the bone lies on soft skin. It folds when she closes the eye and smiles; what folds is off the bone.',
    ),
  },
  'follow-the-cowlick': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Where the hair turns, strokes follow the hair or stay out. Strokes against it show as a patch.',
    ),
  },
  'not-over-changed-skin': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Nothing is drawn over raised, scaly, itchy or lumpy skin, over moles, or where hair was lost lately without a reason. A doctor looks first.',
    ),
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
