import { againRules } from './rules/again.ts';
import { coverRules } from './rules/cover.ts';
import { levelRules } from './rules/level.ts';
import { midlineRules } from './rules/midline.ts';
import { outlineRules } from './rules/outline.ts';
import { picturesRules } from './rules/pictures.ts';
import { placingRules } from './rules/placing.ts';
import { posesRules } from './rules/poses.ts';
import { seeingRules } from './rules/seeing.ts';
import { underRules } from './rules/under.ts';

export { mappingQuestions, type MappingQuestion } from './rules/questions.ts';

/** The rules of mapping, one file a thread. */
export const mappingRules = [
  ...midlineRules,
  ...levelRules,
  ...posesRules,
  ...placingRules,
  ...outlineRules,
  ...againRules,
  ...seeingRules,
  ...picturesRules,
  ...underRules,
  ...coverRules,
] as const;
