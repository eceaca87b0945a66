import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { coverRules } from '#lib/mapping/rules/cover.ts';

/** The titles of the cards. */
export const coverRuleTitles = {
  'approved-limits-stand-above-cover': 'Approved limits stand above cover',
  'never-chase-cover': 'Never chase cover',
  'a-brow-grows-at-every-refresh': 'A covered brow grows at every refresh',
} as const satisfies Readonly<Record<(typeof coverRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const coverQuestionWords = {
  'approved-limits-written': 'Did she approve how far each mark may move, and is it written down?',
  'old-work-past-the-limits': 'Does old work stand outside what she approved?',
  'growth-told': 'Was she told how much the brow grows?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
