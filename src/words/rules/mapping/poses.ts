import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { posesRules } from '#lib/mapping/rules/poses.ts';

/** The titles of the cards. */
export const posesRuleTitles = {
  'compare-like-with-like': 'Compare like with like',
  'map-at-rest-and-upright': 'Map at rest and upright',
  'let-the-brows-settle': 'After toxin, let the brows settle',
  'measure-again-eyes-closed': 'Measure again, eyes closed',
} as const satisfies Readonly<Record<(typeof posesRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const posesQuestionWords = {
  'mapped-at-rest': 'Was the face at rest in the reading you map?',
  'mapped-upright': 'Was the client upright?',
  'mapped-on-normal-skin': 'Was the skin normal, neither numb nor swollen?',
  'brows-still-settling': 'May the brows still be moving after toxin?',
  'same-pose': 'Were both readings taken in the same pose?',
  'same-posture': 'Were both readings taken in the same posture?',
  'same-skin': 'Was the skin in the same state both times?',
  'eyes-closed-reading': 'Was there a reading with the eyes closed and the face relaxed?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
