import type { Rule } from '../../evidence/rule.ts';
import type { MappingFactId } from '../facts.ts';

/** What the rules of covering old work ask. */
export const coverQuestions = ['approved-limits-written', 'old-work-past-the-limits', 'growth-told'] as const;

type CoverRule = Rule<(typeof coverQuestions)[number], MappingFactId>;

const anywhere = { jurisdiction: 'anywhere' } as const;

/** The rules of covering old work. Ids are the addresses of their cards. */
export const coverRules = [
  {
    id: 'approved-limits-stand-above-cover',
    when: { question: 'approved-limits-written', is: false },
    outcome: 'ask',
    facts: ['lighten-what-does-not-fit', 'leave-below-mm'],
    disputedBy: ['lower-raised-or-higher-lowered'],
    ...anywhere,
  },
  {
    id: 'never-chase-cover',
    when: { question: 'old-work-past-the-limits', is: true },
    outcome: 'wait',
    facts: ['lighten-what-does-not-fit', 'margin-adds-least-mm', 'margin-adds-most-mm'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'a-brow-grows-at-every-refresh',
    when: { question: 'growth-told', is: false },
    outcome: 'tell',
    facts: [
      'cover-margin-factor',
      'old-brow-thickness-mm',
      'margin-adds-least-mm',
      'margin-adds-most-mm',
      'margin-adds-least-share',
      'margin-adds-most-share',
    ],
    disputedBy: ['example-error-mm'],
    ...anywhere,
  },
] as const satisfies readonly CoverRule[];
