import { chaseFromMm } from '../numbers/again.ts';
import { anywhere, type MappingRule } from './mappingRule.ts';

/** The rules of measuring again after the first pass. Ids are the addresses of their cards. */
export const againRules = [
  {
    id: 'add-here-or-stop',
    when: { not: { question: 'pigment-ends', is: 'inside' } },
    outcome: 'leave-as-is',
    facts: ['add-or-stop', 'client-sees-in-mirror', 'upright-to-draw', 'factor-95'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'swollen-do-not-chase',
    when: {
      all: [
        { question: 'skin-swollen-now', is: true },
        { question: 'gap-mm', below: chaseFromMm },
      ],
    },
    outcome: 'wait',
    facts: ['swollen-chase-from-mm', 'skin-before-numbing-mm', 'skin-after-numbing-mm', 'pale-after-numbing'],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly MappingRule[];
