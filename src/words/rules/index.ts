import type { Question, RuleId } from '#lib/catalogue.ts';
import { colourQuestionWords, colourRuleTitles } from './colour.ts';
import { midlineQuestionWords, midlineRuleTitles } from './mapping/midline.ts';
import { levelQuestionWords, levelRuleTitles } from './mapping/level.ts';
import { posesQuestionWords, posesRuleTitles } from './mapping/poses.ts';
import { placingQuestionWords, placingRuleTitles } from './mapping/placing.ts';
import { outlineQuestionWords, outlineRuleTitles } from './mapping/outline.ts';
import { againQuestionWords, againRuleTitles } from './mapping/again.ts';
import { seeingQuestionWords, seeingRuleTitles } from './mapping/seeing.ts';
import { picturesQuestionWords, picturesRuleTitles } from './mapping/pictures.ts';
import { underQuestionWords, underRuleTitles } from './mapping/under.ts';
import { coverQuestionWords, coverRuleTitles } from './mapping/cover.ts';

const titles = {
  ...midlineRuleTitles,
  ...levelRuleTitles,
  ...posesRuleTitles,
  ...placingRuleTitles,
  ...outlineRuleTitles,
  ...againRuleTitles,
  ...seeingRuleTitles,
  ...picturesRuleTitles,
  ...underRuleTitles,
  ...coverRuleTitles,
  ...colourRuleTitles,
} as const;

const questions = {
  ...midlineQuestionWords,
  ...levelQuestionWords,
  ...posesQuestionWords,
  ...placingQuestionWords,
  ...outlineQuestionWords,
  ...againQuestionWords,
  ...seeingQuestionWords,
  ...picturesQuestionWords,
  ...underQuestionWords,
  ...coverQuestionWords,
  ...colourQuestionWords,
} as const;

/** The title of every rule's card. A rule without one does not compile, nor a title without a rule. */
export const ruleTitles = titles satisfies Readonly<Record<RuleId, string>> &
  Readonly<Partial<Record<Exclude<keyof typeof titles, RuleId>, never>>>;

/** Every question in words, as a learner is asked it, whatever the subject. */
export const questionWords = questions satisfies Readonly<Record<Question, string>> &
  Readonly<Partial<Record<Exclude<keyof typeof questions, Question>, never>>>;
