import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { outlineRules } from '#lib/mapping/rules/outline.ts';

/** The titles of the cards. */
export const outlineRuleTitles = {
  'thickness-straight-across': 'Measure thickness straight across',
  'equal-thickness-both-brows': 'Equal thickness, place by place',
  'outline-looks-bolder': 'The drawn outline looks bolder',
} as const satisfies Readonly<Record<(typeof outlineRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const outlineQuestionWords = {
  'thickness-measured': 'Was the thickness measured straight across the brow or straight up?',
  'same-stations': 'Was the thickness compared at the same places of both brows?',
  'outline-told-bolder': 'Was the client told that the drawn outline looks bolder than the result?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
