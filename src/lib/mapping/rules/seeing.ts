import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of left against right, and who sees it. Ids are the addresses of their cards. */
export const seeingRules = [
  {
    id: 'real-or-not',
    when: { question: 'comparisons-counted', is: false },
    outcome: 'ask',
    facts: [
      'factor-95',
      'ten-comparisons',
      'false-alarm-of-ten',
      'factor-of-ten',
      'family-false-alarm',
      'repeat-factor',
      'caliper-error-near-eye-mm',
    ],
    disputedBy: ['example-error-mm', 'photo-error-near-eye-mm'],
    ...anywhere,
  },
  {
    id: 'twenty-pairs-of-your-own',
    when: { question: 'own-pairs', below: 20 },
    outcome: 'measure-again',
    facts: [
      'pairs-for-own-error',
      'own-error-up-to',
      'own-error-down-to',
      't-of-two-readings',
      't-of-three-readings',
      'unmarked-disagreement-mm',
      'marked-disagreement-mm',
    ],
    disputedBy: ['example-error-mm'],
    ...anywhere,
  },
  {
    id: 'who-would-see-it',
    when: { question: 'band', is: 'most-see' },
    outcome: 'tell',
    facts: [
      'seen-at-1-mm',
      'seen-at-6-mm',
      'few-see-mm',
      'almost-all-see-mm',
      'most-see-mm',
      'viewers-asked',
    ],
    disputedBy: ['own-brows-seen-mm'],
    ...anywhere,
  },
  {
    id: 'not-shown-is-not-equal',
    when: { question: 'band', is: 'not-shown' },
    outcome: 'tell',
    facts: [
      'unequal-at-front-mm',
      'unequal-at-middle-mm',
      'unequal-at-tail-mm',
      'over-1-mm-somewhere',
      'brows-unequal',
    ],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'change-nothing-is-an-answer',
    when: {
      any: [
        { question: 'band', is: 'not-shown' },
        { question: 'band', is: 'few-see' },
        { question: 'band', is: 'some-see' },
      ],
    },
    outcome: 'leave-as-is',
    facts: ['brows-unequal', 'over-1-mm-somewhere', 'few-see-mm'],
    disputedBy: ['own-brows-seen-mm'],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
