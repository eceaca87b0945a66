import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of level lines. Ids are the addresses of their cards. */
export const levelRules = [
  {
    id: 'name-the-level-reference',
    when: { question: 'level-reference-named', is: false },
    outcome: 'ask',
    facts: ['tilt-1-deg-fakes-mm', 'tilt-2-deg-fakes-mm', 'arches-apart-mm', 'head-tilt-repeat-deg'],
    disputedBy: ['head-tilt-usual-deg'],
    ...anywhere,
  },
  {
    id: 'hold-the-line-level',
    when: { question: 'line-held-level', is: false },
    outcome: 'measure-again',
    facts: [
      'tilt-1-deg-fakes-mm',
      'tilt-3-deg-fakes-mm',
      'arches-apart-mm',
      'thread-length-mm',
      'head-tilt-repeat-deg',
      'tilt-seen-deg',
    ],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'taut-thread-levels',
    when: { question: 'thread-checked', is: false },
    outcome: 'measure-again',
    facts: ['taut-thread-levels', 'one-side-lower', 'right-lower', 'thread-half-width-mm'],
    disputedBy: ['tilt-1-deg-fakes-mm'],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
