import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { underRules } from '#lib/mapping/rules/under.ts';

/** The titles of the cards. */
export const underRuleTitles = {
  'nothing-under-it-nothing-drawn': 'Do not draw where there is nothing under it',
  'not-over-changed-skin': 'Not over lumps, scale, moles or new loss',
} as const satisfies Readonly<Record<(typeof underRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const underQuestionWords = {
  'nothing-under-a-part': 'Does a part of the outline have neither hair nor bone under it?',
  'skin-changed-or-new-loss':
    'Is the skin raised, scaly, itchy or lumpy, is there a mole, or was hair lost lately?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
