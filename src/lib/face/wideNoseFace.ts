import { defaultBones, landmarksFrom } from './bones.ts';
import { defaultBrowPlan, plannedBrow } from './browPlan.ts';
import type { Face } from './face.ts';
import { faceMarks, landmarksOf } from './faceMarks.ts';
import { defaultForm } from './form.ts';
import { roundedMarks } from './readAgain.ts';

const leanMm = 1.6;
const bones = { ...defaultBones, noseWidthMm: 40.4, noseLeanMm: leanMm };

/** How much longer the right tail is, and how far its tip lies below its own front. */
const longerMm = 3.4;
const belowMm = 1.2;

/** Both arches alike; the fronts have followed the nose a little; the right tail is long and low. */
function wideNoseMarks() {
  const left = plannedBrow(bones, { ...defaultBrowPlan, front: 16.4, tailInsideMm: 2, archShare: 0.62 });
  const frontMm = 15.6;
  const lengthMm = left.tail[0] - left.frontLower[0];
  const right = {
    ...left,
    frontLower: [frontMm, left.frontLower[1]],
    frontTop: [frontMm + defaultBrowPlan.frontSlantMm, left.frontTop[1]],
    tail: [frontMm + lengthMm + longerMm, left.frontLower[1] - belowMm],
  } as const;
  return roundedMarks(faceMarks(landmarksFrom(bones, right, left), 0));
}

const markSet = wideNoseMarks();
const face: Face = {
  landmarks: landmarksOf(markSet, 0),
  form: { ...defaultForm, lid: 'open', browBone: 0.3, age: 0.45 },
  rollDeg: 0,
};

/**
 * The demonstration of placing front and tail: an upright face (midline x = 0, pupils on y = 0) whose nose is
 * wider than the gap of its inner corners and leans to the client's left. Its right tail is 3.4 mm longer and
 * lies 1.2 mm below the front. Invented.
 */
export const wideNoseFace = { face, markSet, truth: { leanMm, longerMm, belowMm } } as const;
