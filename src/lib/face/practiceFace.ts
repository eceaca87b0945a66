import { drawFrom, seedFrom } from '../quantities/seed.ts';
import {
  budgetMm,
  differenceUncertaintyMm,
  smallestRealDifferenceMm,
} from '../mapping/uncertainty/budget.ts';
import { browMarks, type MarkSet } from '../mapping/marks/markSet.ts';
import { mappingValues } from '../mapping/numbers/values.ts';
import { landmarksFrom } from './bones.ts';
import { plannedBrow } from './browPlan.ts';
import { disturbanceFor, disturbedBrow, type PracticeLevel } from './disturbance.ts';
import { distinctPerson } from './distinctPerson.ts';
import type { Face } from './face.ts';
import { faceMarks } from './faceMarks.ts';
import { practiceBrowPlan } from './practiceBones.ts';
import { middleInPicture, pictureForm, pictureLandmarks } from './pictureLandmarks.ts';
import { practicePicture, straightPicture, type PracticePicture } from './practicePicture.ts';
import { rolled } from './roll.ts';
import { trueAnswers, type TrueAnswers } from './trueAnswers.ts';

export type PracticeFace = Readonly<{
  face: Face;
  markSet: MarkSet;
  truth: TrueAnswers;
  solvable: boolean;
  picture: PracticePicture;
}>;

/**
 * A fresh face for a drill, always the same for a seed. The symmetric face behind it depends on the seed
 * alone, so all levels of one seed are one person with more and more to see. At level 4 face and marks are as
 * one picture shows them:
 * the truth stays the person's own, but for the place of the midline, which is the picture's. `picture` is
 * the one taken there.
 */
export function practiceFace(
  seed: number,
  level: PracticeLevel,
  picture: PracticePicture = practicePicture(seed),
): PracticeFace {
  const { bones, form, age } = distinctPerson(seed);
  const right = plannedBrow(bones, practiceBrowPlan(drawFrom(seedFrom('brow', seed)), age));
  const disturbance = disturbanceFor(seed, level);
  const left = disturbedBrow(right, disturbance);
  const landmarks = landmarksFrom({ ...bones, noseLeanMm: disturbance.noseLeanMm }, right, left);
  const face: Face = { landmarks, form, rollDeg: disturbance.rollDeg };
  const truth = trueAnswers(face, disturbance);
  if (level < 4)
    return {
      face,
      markSet: faceMarks(landmarks, face.rollDeg),
      truth,
      solvable: isSettled(disturbance.heightDifferenceMm),
      picture: straightPicture,
    };
  return photographed(face, truth, picture);
}

/** The same person in a picture. */
function photographed(
  { landmarks, form, rollDeg }: Face,
  truth: TrueAnswers,
  picture: PracticePicture,
): PracticeFace {
  const seen = pictureLandmarks(landmarks, picture.pose);
  const face: Face = { landmarks: seen, form: pictureForm(form, picture.pose.cameraMm), rollDeg };
  const heightV = truth.browHeightMm / Math.cos((rollDeg * Math.PI) / 180);
  const [midlineXAtBrowMm, browHeightMm] = rolled(middleInPicture(heightV, picture.pose), rollDeg);
  const seenMm =
    browMarks.reduce((sum, mark) => sum + seen.left[mark][1] - seen.right[mark][1], 0) / browMarks.length;
  return {
    face,
    markSet: faceMarks(seen, rollDeg),
    truth: { ...truth, midlineXAtBrowMm, browHeightMm },
    // A picture changes a height by less than two uncertainties: true and seen are then both real, or both
    // not.
    solvable: isSettled(truth.browHeightDifferenceMm) && isSettled(seenMm),
    picture,
  };
}

/** One careful reading a side with the site's example budget: pencil line, caliper, thread. */
const oneReading = {
  temMm: mappingValues['example-error-mm'],
  readings: 1,
  budgetMm: budgetMm([
    { halfWidthMm: mappingValues['pencil-half-width-mm'] },
    { halfWidthMm: mappingValues['caliper-half-width-mm'] },
    { halfWidthMm: mappingValues['thread-half-width-mm'] },
  ]),
} as const;
const smallestRealMm = smallestRealDifferenceMm(oneReading, mappingValues['factor-95']);
const uncertaintyMm = differenceUncertaintyMm(oneReading);

/**
 * False when the true difference lies within one standard uncertainty of the smallest real difference: a
 * careful reader may answer either way.
 */
function isSettled(heightDifferenceMm: number): boolean {
  return Math.abs(Math.abs(heightDifferenceMm) - smallestRealMm) > uncertaintyMm;
}
