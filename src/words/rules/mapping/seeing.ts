import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { seeingRules } from '#lib/mapping/rules/seeing.ts';

/** The titles of the cards. */
export const seeingRuleTitles = {
  'real-or-not': 'Real, or not shown to be real',
  'twenty-pairs-of-your-own': 'Twenty pairs of your own',
  'who-would-see-it': 'Who would see it?',
  'not-shown-is-not-equal': 'Not shown is not equal',
  'change-nothing-is-an-answer': 'Change nothing is an answer',
} as const satisfies Readonly<Record<(typeof seeingRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const seeingQuestionWords = {
  'comparisons-counted': 'Did you count how many comparisons you make?',
  'own-pairs': 'How many pairs of your own readings is your error taken from?',
  band: 'What does the difference show?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
