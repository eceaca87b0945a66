import { markUncertaintyMm, budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import {
  type NoPlacing,
  type Placing,
  placeFrontAndTail,
  placingComparisons,
} from '#lib/mapping/placing/placeFrontAndTail.ts';
import type { PlacingMark, PlacingMarks } from '#lib/mapping/placing/placingMarks.ts';
import { exampleBudget } from '#lib/mapping/numbers/start.ts';
import type { FrontAndTailState } from './frontAndTailFields.ts';

/** The midline is settled and lies at zero, level is settled: the picture is the face's own frame. */
function marksOf(state: FrontAndTailState): PlacingMarks {
  const right = (mark: PlacingMark): FacePoint => ({
    uMm: -state[`${mark}R`].xMm,
    vMm: state[`${mark}R`].yMm,
  });
  const left = (mark: PlacingMark): FacePoint => ({ uMm: state[`${mark}L`].xMm, vMm: state[`${mark}L`].yMm });
  const of = (at: (mark: PlacingMark) => FacePoint) => ({
    noseWing: at('noseWing'),
    innerCorner: at('innerCorner'),
    outerCorner: at('outerCorner'),
    frontLower: at('frontLower'),
    frontTop: at('frontTop'),
    archTop: at('archTop'),
    tail: at('tail'),
  });
  return { right: of(right), left: of(left) };
}

/** What each anchor gives for the fronts, one distance for both sides, and every check of the tails. */
export const frontAndTailSums = (state: FrontAndTailState): Placing | NoPlacing =>
  placeFrontAndTail(marksOf(state), {
    anchor: state.anchor,
    ownMm: state.own,
    edge: state.edge,
    nostrilShare: state.nostril / 100,
    readingMm: markUncertaintyMm({
      temMm: state.error,
      readings: Math.round(state.readings),
      budgetMm: budgetMm(exampleBudget),
    }),
    k: familyCoverageFactor(placingComparisons),
  });
