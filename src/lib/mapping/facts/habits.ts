import { commonPractice } from '../../evidence/backing.ts';
import type { Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';

/** Habits of the trade: no study was found for them, so none is claimed. */
export const habitFacts = {
  'fronts-equally-far': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Both fronts stand equally far from a midline taken high, at the bridge between the eyes, because noses lean lower down.',
    ),
  },
  'taut-thread-levels': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'A thread pulled taut across both brows shows whether they are level: at the lower edge, at the top of the fronts and at the arches.',
    ),
  },
  'one-side-lower': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'One side commonly stands lower than the other; it is told to the client before anything is drawn.',
    ),
  },
  'measure-again-eyes-closed': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Measure again with the eyes closed and the face relaxed: a lifted brow is not a different brow.',
    ),
  },
  'upright-to-draw': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Brows are mapped and approved upright, because skin moves when a client lies down.',
    ),
  },
  'client-sees-in-mirror': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The drawn outline is shown in a mirror and the client says yes before any colour goes in.',
    ),
  },
} as const satisfies Readonly<Record<string, Practice>>;
