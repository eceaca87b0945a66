import { defaultBones, landmarksFrom } from './bones.ts';
import { defaultBrowPlan, plannedBrow } from './browPlan.ts';
import type { Face } from './face.ts';
import { faceMarks, landmarksOf } from './faceMarks.ts';
import { defaultForm } from './form.ts';
import { roundedMarks } from './readAgain.ts';

const brow = plannedBrow(defaultBones, { ...defaultBrowPlan, archShare: 0.63 });
const markSet = roundedMarks(faceMarks(landmarksFrom(defaultBones, brow, brow), 0));
const face: Face = {
  landmarks: landmarksOf(markSet, 0),
  form: { ...defaultForm, lid: 'open', browBone: 0.3, age: 0.2 },
  rollDeg: 0,
};

/**
 * The demonstration of tilt and pose: the level face with its left brow on both sides, so that every
 * difference seen on it comes from the line or the pose and none from the face. Invented.
 */
export const equalFace = { face, markSet } as const;
