import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { placingRules } from '#lib/mapping/rules/placing.ts';

/** The titles of the cards. */
export const placingRuleTitles = {
  'fronts-equally-far': 'Fronts equally far, from the bridge',
  'name-the-front-anchor': 'Name the anchor of the front',
  'tail-inside-the-line': 'The tail ends inside its line, level with the front',
  'one-arch-for-both-sides': 'One arch for both sides',
  'arch-rules-are-starting-points': 'Arch rules are places to start',
} as const satisfies Readonly<Record<(typeof placingRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const placingQuestionWords = {
  'fronts-measured-from': 'Where was the midline taken for the fronts?',
  'front-anchor-named': 'Did you say above which mark the fronts start?',
  'tail-past-the-line': 'Does a tail end past the line from the nose wing over the outer eye corner?',
  'tail-tip-in-the-band': 'Does each tail tip lie between its front’s lower edge and its top?',
  'arches-planned': 'Is there one arch for both sides, or one for each?',
  'arch-rule-named': 'Did you say which rule placed the arch?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
