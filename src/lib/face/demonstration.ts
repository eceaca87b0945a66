import { defaultBones, landmarksFrom } from './bones.ts';
import { defaultBrowPlan, plannedBrow } from './browPlan.ts';
import type { Face } from './face.ts';
import { faceMarks, landmarksOf } from './faceMarks.ts';
import { defaultForm } from './form.ts';
import { mapBrow, type Landmarks } from './landmarks.ts';
import { roundedMarks } from './readAgain.ts';

/** The client's right side is the higher one in the picture: the roll hides the lower right brow. */
const rollDeg = -1.5;

/**
 * An invented face: nose base 5 mm to the client's left, right brow 1.8 mm lower at the arch, small natural
 * differences elsewhere.
 */
function leaningLandmarks(): Landmarks {
  const bones = {
    ...defaultBones,
    intercanthalMm: 33,
    noseWidthMm: 36,
    eyeWidthMm: 30,
    noseLeanMm: 5,
    chinShiftMm: 0.4,
  };
  const left = plannedBrow(bones, { ...defaultBrowPlan, front: 14.6, archShare: 0.63 });
  const right = mapBrow(left, ([u, v]) => [u - 0.3, v]);
  const plain = landmarksFrom(bones, right, left);
  return {
    right: {
      ...plain.right,
      outerCorner: [plain.right.outerCorner[0] + 0.4, plain.right.outerCorner[1] - 0.3],
      pupil: [plain.right.pupil[0] + 0.2, -0.2],
      frontLower: [right.frontLower[0], right.frontLower[1] - 0.4],
      frontTop: [right.frontTop[0], right.frontTop[1] - 0.6],
      archTop: [right.archTop[0], right.archTop[1] - 1.8],
      archLower: [right.archLower[0], right.archLower[1] - 1.7],
      tail: [right.tail[0], right.tail[1] - 0.6],
    },
    left: {
      ...plain.left,
      innerCorner: [plain.left.innerCorner[0] + 0.3, plain.left.innerCorner[1] + 0.1],
      pupil: [plain.left.pupil[0], 0.2],
    },
    middle: { ...plain.middle, glabella: [0.2, 14], nasion: [0.3, 6] },
  };
}

/** The marks a careful reader would write down, to 0.1 mm. */
const markSet = roundedMarks(faceMarks(leaningLandmarks(), rollDeg));

const face: Face = {
  // The drawing stands on the rounded marks, so picture and numbers agree.
  landmarks: landmarksOf(markSet, rollDeg),
  form: { ...defaultForm, lid: 'open', browBone: 0.3, age: 0.2, mouthWidthMm: 50 },
  rollDeg,
};

/**
 * The demonstration of "The midline when the nose leans". Glabella and nasion stay within 0.3 mm of the true
 * midline; nose wings and subnasale carry the lean. The true midline of this invented face passes the origin,
 * rolled by -1.5°.
 */
export const leaningNoseFace = {
  face,
  markSet,
  truth: { rollDeg, leanMm: 5, archHeightDifferenceMm: 1.8 },
} as const;
