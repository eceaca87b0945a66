import type { Rule } from '../evidence/rule.ts';
import type { ColourFactId } from './facts.ts';

/** What the rules of colour ask. Answers: yes/no, a number, or one of the words given. */
export const colourQuestions = ['skin-read-untouched'] as const;
export type ColourQuestion = (typeof colourQuestions)[number];

const anywhere = { jurisdiction: 'anywhere' } as const;

/** The rules of colour. Ids are the addresses of their cards. */
export const colourRules = [
  {
    id: 'read-the-skin-untouched', when: { question: 'skin-read-untouched', is: false }, outcome: 'measure-again',
    facts: ['read-skin-untouched'], disputedBy: [], ...anywhere,
  },
] as const satisfies readonly Rule<ColourQuestion, ColourFactId>[];

export type ColourRuleId = (typeof colourRules)[number]['id'];
