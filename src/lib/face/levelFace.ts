import { defaultBones, landmarksFrom } from './bones.ts';
import { defaultBrowPlan, plannedBrow } from './browPlan.ts';
import type { Face } from './face.ts';
import { faceMarks, landmarksOf } from './faceMarks.ts';
import { defaultForm } from './form.ts';
import { mapBrow } from './landmarks.ts';
import { roundedMarks } from './readAgain.ts';

/** The right brow of this invented face is lower at the arch and starts a little further out. */
function levelMarks() {
  const left = plannedBrow(defaultBones, { ...defaultBrowPlan, archShare: 0.63 });
  const right = {
    ...mapBrow(left, ([u, v]) => [u + 0.4, v - 0.5]),
    archTop: [left.archTop[0], left.archTop[1] - 1.4],
    archLower: [left.archLower[0], left.archLower[1] - 1.2],
  } as const;
  return roundedMarks(faceMarks(landmarksFrom(defaultBones, right, left), 0));
}

const markSet = levelMarks();
const face: Face = {
  landmarks: landmarksOf(markSet, 0),
  form: { ...defaultForm, lid: 'open', browBone: 0.3, age: 0.2 },
  rollDeg: 0,
};

/**
 * The demonstration of placing and outlining: an upright face whose midline is x = 0 and whose pupils lie on
 * y = 0, so that the picture is the face's own frame. Nothing leans; only the brows differ a little.
 * Invented.
 */
export const levelFace = { face, markSet } as const;
