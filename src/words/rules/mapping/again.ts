import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { againRules } from '#lib/mapping/rules/again.ts';

/** The titles of the cards. */
export const againRuleTitles = {
  'add-here-or-stop': 'Add here, or stop',
  'swollen-do-not-chase': 'On swollen skin, do not chase small gaps',
} as const satisfies Readonly<Record<(typeof againRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const againQuestionWords = {
  'pigment-ends': 'After the first pass: where does the pigment end, against the approved outline?',
  'skin-swollen-now': 'Is the skin swollen now?',
  'gap-mm': 'How large is the gap to the approved outline?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
