import type { PointMm } from '#lib/geometry/point.ts';
import { markUncertaintyMm, budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { type FrontAnchor, frontAnchors } from '#lib/mapping/placing/anchorDistances.ts';
import { type FrontEdge, frontEdges } from '#lib/mapping/placing/drawnLengths.ts';
import {
  type NoPlacing,
  type Placing,
  placeFrontAndTail,
  placingComparisons,
} from '#lib/mapping/placing/placeFrontAndTail.ts';
import type { PlacingMark, PlacingMarks } from '#lib/mapping/placing/placingMarks.ts';
import { exampleBudget, exampleErrorMm, nostrilMiddleShare } from '#lib/mapping/numbers/start.ts';
import { choiceField, markField, numberField } from './fields.ts';
import type { Calculator, Field } from './spec.ts';
import { type PlacingKey, placingKeys, wideNoseMarks } from './wideNoseMarks.ts';

export type FrontAndTailState = Readonly<Record<PlacingKey, PointMm>> &
  Readonly<{
    anchor: FrontAnchor | 'own';
    /** One's own distance from the midline, mm. */
    own: number;
    edge: FrontEdge;
    /** Place of the nostril's middle on the way from the nose's middle to its wing, %. */
    nostril: number;
    error: number;
    readings: number;
  }>;

const sheet = { x: [-90, 90], y: [-140, 60] } as const;

function markFields(): Readonly<Record<PlacingKey, Field<PointMm>>> {
  const fields: Partial<Record<PlacingKey, Field<PointMm>>> = {};
  for (const key of placingKeys) fields[key] = markField(key, wideNoseMarks[key], sheet);
  if (!hasEveryMark(fields)) throw new Error('A mark has no field.');
  return fields;
}

function hasEveryMark(
  fields: Partial<Record<PlacingKey, Field<PointMm>>>,
): fields is Record<PlacingKey, Field<PointMm>> {
  return placingKeys.every((key) => fields[key] !== undefined);
}

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
export const frontAndTail: Calculator<FrontAndTailState, Placing | NoPlacing> = {
  id: 'front-and-tail',
  fields: {
    ...markFields(),
    anchor: choiceField<FrontAnchor | 'own'>('anchor', 'inner-corner', [...frontAnchors, 'own']),
    own: numberField('own', 14, { unit: 'mm', lo: 4, hi: 35, step: 0.1, decimals: 1 }),
    edge: choiceField<FrontEdge>('edge', 'frontLower', frontEdges),
    nostril: numberField('nostril', 100 * nostrilMiddleShare, {
      unit: '%',
      lo: 20,
      hi: 95,
      step: 1,
      decimals: 0,
    }),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: (state) =>
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
    }),
};
