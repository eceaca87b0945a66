import { drawFrom, seedFrom } from '../quantities/seed.ts';
import { budgetMm, differenceUncertaintyMm, smallestRealDifferenceMm } from '../mapping/budget.ts';
import type { MarkSet } from '../mapping/markSet.ts';
import { mappingValues } from '../mapping/values.ts';
import { landmarksFrom } from './bones.ts';
import { plannedBrow } from './browPlan.ts';
import { disturbanceFor, disturbedBrow, type PracticeLevel } from './disturbance.ts';
import { distinctPerson } from './distinctPerson.ts';
import type { Face } from './face.ts';
import { faceMarks } from './faceMarks.ts';
import { practiceBrowPlan } from './practiceBones.ts';
import { trueAnswers, type TrueAnswers } from './trueAnswers.ts';

export type PracticeFace = Readonly<{ face: Face; markSet: MarkSet; truth: TrueAnswers; solvable: boolean }>;

/**
 * A fresh face for a drill, always the same for a seed. The symmetric face behind it depends on the seed alone,
 * so levels 0 to 3 of one seed are one person with more and more to see.
 */
export function practiceFace(seed: number, level: PracticeLevel): PracticeFace {
  const { bones, form, age } = distinctPerson(seed);
  const right = plannedBrow(bones, practiceBrowPlan(drawFrom(seedFrom('brow', seed)), age));
  const disturbance = disturbanceFor(seed, level);
  const left = disturbedBrow(right, disturbance);
  const landmarks = landmarksFrom({ ...bones, noseLeanMm: disturbance.noseLeanMm }, right, left);
  const face: Face = { landmarks, form, rollDeg: disturbance.rollDeg };
  const truth = trueAnswers(face, disturbance);
  return { face, markSet: faceMarks(landmarks, disturbance.rollDeg), truth, solvable: isSettled(disturbance.heightDifferenceMm) };
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

/** False when the true difference lies within one standard uncertainty of the smallest real difference: a careful reader may answer either way. */
function isSettled(heightDifferenceMm: number): boolean {
  return Math.abs(Math.abs(heightDifferenceMm) - smallestRealMm) > uncertaintyMm;
}
