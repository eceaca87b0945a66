import {
  falseDifferences,
  type FalseDifferences,
  type NoFalseDifferences,
} from '#lib/mapping/pose/falseDifferences.ts';
import { headPoseOf } from './headPoseOf.ts';
import { poseFields, type PoseState } from './poseFields.ts';
import type { Calculator } from './spec.ts';

/** What a picture of an exactly symmetric face shows as if it were a difference. */
export const pose: Calculator<PoseState, FalseDifferences | NoFalseDifferences> = {
  id: 'pose',
  fields: poseFields,
  solve: (state) => falseDifferences(headPoseOf(state)),
};
