import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { midlineRules } from '#lib/mapping/rules/midline.ts';

/** The titles of the cards. */
export const midlineRuleTitles = {
  'brows-never-feed-the-midline': 'The brows never feed the midline',
  'take-the-midline-from-many-marks': 'Take the midline from many marks',
  'which-mark-not-to-trust': 'Say which mark you do not trust',
} as const satisfies Readonly<Record<(typeof midlineRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const midlineQuestionWords = {
  'midline-uses-brows': 'Was a brow used to find the midline?',
  'midline-marks': 'How many marks was the midline taken from?',
  'marks-not-trusted': 'How many marks disagree with the rest?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
