import type { Line } from '#lib/geometry/line.ts';
import { falseDifferences, type FalseDifferences, type NoFalseDifferences } from '#lib/mapping/pose/falseDifferences.ts';
import { poseFields, type PoseState } from './poseFields.ts';
import { headPoseOf } from './headPoseOf.ts';
import type { Calculator } from './spec.ts';

/** The false differences, and the midline as the picture's marks give it. */
export type PoseSeen = Omit<FalseDifferences, 'marks' | 'frame'> & Readonly<{ midline: Line }>;

/** What a picture of an exactly symmetric face shows as if it were a difference. */
export const pose: Calculator<PoseState, PoseSeen | NoFalseDifferences> = {
  id: 'pose',
  fields: poseFields,
  solve: (state) => {
    const seen = falseDifferences(headPoseOf(state));
    if (!seen.ok) return seen;
    const { marks: _, frame, ...numbers } = seen;
    return { ...numbers, midline: frame.midline };
  },
};
