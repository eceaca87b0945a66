import { budgetMm, markUncertaintyMm } from '#lib/mapping/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/familyWise.ts';
import { tradeCheckCount, tradeChecks, type TradeReport } from '#lib/mapping/outline/tradeChecks.ts';
import { type FrontAnchor, frontAnchors } from '#lib/mapping/placing/anchorDistances.ts';
import { type FrontEdge, frontEdges } from '#lib/mapping/placing/drawnLengths.ts';
import type { NoPlacing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { exampleBudget, exampleErrorMm, nostrilMiddleShare } from '#lib/mapping/startValues.ts';
import { browFields, type BrowPoints, browsOnLevelFace } from './browFields.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type OutlineAndCoverState = BrowPoints &
  Readonly<{
    /** The learner's own station, % of the length from the front. */
    station: number;
    edge: FrontEdge;
    anchor: FrontAnchor;
    error: number;
    readings: number;
  }>;

/** Stations that are always there. */
const fixedStations = [0.25, 0.5, 0.75] as const;

/** All stations from front to tail, the learner's own among them. */
export function stationsOf({ station }: Pick<OutlineAndCoverState, 'station'>): readonly number[] {
  const own = station / 100;
  return fixedStations.some((share) => share === own) ? fixedStations : [...fixedStations, own].sort((a, b) => a - b);
}

/** Both outlines from their marks: thickness along the brow, every trade check, area and the way round. */
export const outlineAndCover: Calculator<OutlineAndCoverState, TradeReport | NoPlacing> = {
  id: 'outline-and-cover',
  fields: {
    ...browFields(),
    station: numberField('station', 90, { unit: '%', lo: 5, hi: 98, step: 1, decimals: 0 }),
    edge: choiceField<FrontEdge>('edge', 'frontLower', frontEdges),
    anchor: choiceField<FrontAnchor>('anchor', 'inner-corner', frontAnchors),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: (state) => {
    const stations = stationsOf(state);
    return tradeChecks(browsOnLevelFace(state), {
      anchor: state.anchor,
      ownMm: 0,
      nostrilShare: nostrilMiddleShare,
      edge: state.edge,
      stations,
      readingMm: markUncertaintyMm({ temMm: state.error, readings: Math.round(state.readings), budgetMm: budgetMm(exampleBudget) }),
      k: familyCoverageFactor(tradeCheckCount(stations.length)),
    });
  },
};
