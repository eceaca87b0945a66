import { commonPractice } from '../../evidence/backing.ts';
import type { Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';

/** Habits of the trade about colour, told without a source because none was found. */
export const colourHabits = {
  'read-skin-untouched': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'The colour of the skin is read before wiping, drawing or numbing: each of them reddens or whitens it for a while.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Practice>>;
