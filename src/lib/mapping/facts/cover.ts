import { assumed, commonPractice, computed, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { coverMarginFactor, leaveBelowMm, marginTaperMm } from '../numbers/plan.ts';

const reviewed = '2026-11-25';

/** Cover of the old shape: the margin and what it adds. */
export const coverFacts = {
  'cover-margin-factor': {
    value: coverMarginFactor,
    unit: '1',
    reviewed,
    caveat: 'For one edge at one place; two edges side by side pass it a little more often.',
    backing: published(
      'nist-t-table',
      'Table 8, last row, column 0.05',
      '1.282 1.645 1.960 2.326 2.576 3.090',
    ),
  },
  'old-brow-thickness-mm': {
    value: 6.5,
    unit: 'mm',
    backing: assumed('A brow to work the growth out on.'),
    range: [4, 9],
    reviewed,
  },
  'margin-adds-least-mm': {
    value: 1,
    unit: 'mm',
    reviewed,
    backing: computed(
      'Twice the factor times an uncertainty of 0.3 mm: a margin above and one below.',
      'cover-margin-factor',
    ),
  },
  'margin-adds-most-mm': {
    value: 1.6,
    unit: 'mm',
    reviewed,
    backing: computed('Twice the factor times an uncertainty of 0.5 mm.', 'cover-margin-factor'),
  },
  'margin-adds-least-share': {
    value: 15,
    unit: '%',
    backing: computed(
      'Growth over the thickness it began with.',
      'margin-adds-least-mm',
      'old-brow-thickness-mm',
    ),
    reviewed,
  },
  'margin-adds-most-share': {
    value: 25,
    unit: '%',
    backing: computed(
      'Growth over the thickness it began with.',
      'margin-adds-most-mm',
      'old-brow-thickness-mm',
    ),
    reviewed,
  },
  'leave-below-mm': {
    value: leaveBelowMm,
    unit: 'mm',
    backing: assumed('Half the width of a sharp pencil line: a smaller move cannot be drawn.'),
    range: [0.1, 0.5],
    reviewed,
  },
  'margin-taper-mm': {
    value: marginTaperMm,
    unit: 'mm',
    range: [3, 8],
    reviewed,
    backing: assumed(
      'At the tail tip both edges meet and no margin has room: it shrinks to nothing over a stretch about as long as a brow is thick.',
    ),
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** Habits of the trade for correcting over old work. */
export const coverHabits = {
  'lower-raised-or-higher-lowered': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The lower side is raised to the higher one, or the higher one is lowered a little.',
    ),
  },
  'lighten-what-does-not-fit': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Old work that does not fit the approved outline is lightened first or left visible; the outline is not drawn round it.',
    ),
  },
} as const satisfies Readonly<Record<string, Practice>>;
