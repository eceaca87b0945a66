import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { levelRules } from '#lib/mapping/rules/level.ts';

/** The titles of the cards. */
export const levelRuleTitles = {
  'name-the-level-reference': 'Name what counts as level',
  'hold-the-line-level': 'Hold the line level before you read it',
  'taut-thread-levels': 'Check the levels with a taut thread',
} as const satisfies Readonly<Record<(typeof levelRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const levelQuestionWords = {
  'level-reference-named': 'Did you say what counts as level?',
  'line-held-level': 'Were both ends of the line checked against something level?',
  'thread-checked': 'Were the levels checked with a taut thread?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
