import { underFacts } from './facts/under.ts';
import { archFacts } from './facts/arch.ts';
import { againFacts, againHabits } from './facts/again.ts';
import { coverFacts, coverHabits } from './facts/cover.ts';
import { habitFacts } from './facts/habits.ts';
import { measuringFacts } from './facts/measuring.ts';
import { midlineFacts } from './facts/midline.ts';
import { outlineFacts, outlineHabits } from './facts/outline.ts';
import { placingFacts, placingHabits } from './facts/placing.ts';
import { pictureFacts } from './facts/pictures.ts';
import { ownErrorFacts } from './facts/ownError.ts';
import { poseFacts, poseHabits } from './facts/poses.ts';
import { seeingFacts } from './facts/seeing.ts';
import { sizeFacts } from './facts/sizes.ts';

/** Every number and habit of mapping, by id. */
export const mappingFacts = {
  ...seeingFacts,
  ...midlineFacts,
  ...measuringFacts,
  ...ownErrorFacts,
  ...againFacts,
  ...againHabits,
  ...sizeFacts,
  ...poseFacts,
  ...habitFacts,
  ...placingFacts,
  ...placingHabits,
  ...outlineFacts,
  ...outlineHabits,
  ...coverFacts,
  ...coverHabits,
  ...pictureFacts,
  ...archFacts,
  ...poseHabits,
  ...underFacts,
} as const;

export type MappingFactId = keyof typeof mappingFacts;
