import { budgetMm, markUncertaintyMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Cubic } from '#lib/mapping/outline/halfEdge.ts';
import type { NoOutline, Outline } from '#lib/mapping/outline/outline.ts';
import { outlineCurves } from '#lib/mapping/outline/outlineCurves.ts';
import { outlineAreaMm2, outlinePerimeterMm } from '#lib/mapping/outline/outlineSize.ts';
import { type ShownTradeReport, tradeCheckCount, tradeChecks } from '#lib/mapping/outline/tradeChecks.ts';
import type { NoPlacing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { exampleBudget, nostrilMiddleShare } from '#lib/mapping/numbers/start.ts';
import { browsOnLevelFace } from './browsOnLevelFace.ts';
import type { OutlineAndCoverState } from './outlineAndCoverFields.ts';

/** One outline as it is drawn, and its size: all that a picture and a table need, without the sums. */
export type Shape = Readonly<{ curves: readonly Cubic[]; areaMm2: number; perimeterMm: number }>;
export type OutlineReport =
  | (ShownTradeReport & Readonly<{ shapes: Readonly<Record<Side, Shape | undefined>> }>)
  | NoPlacing;

/** Stations that are always there. */
const fixedStations = [0.25, 0.5, 0.75] as const;

/** All stations from front to tail, the learner's own among them. */
export function stationsOf({ station }: Pick<OutlineAndCoverState, 'station'>): readonly number[] {
  const own = station / 100;
  return fixedStations.some((share) => share === own)
    ? fixedStations
    : [...fixedStations, own].sort((a, b) => a - b);
}

/** Both outlines from their marks: thickness along the brow, every trade check, area and the way round. */
export function outlineSums(state: OutlineAndCoverState): OutlineReport {
  const stations = stationsOf(state);
  const report = tradeChecks(browsOnLevelFace(state), {
    anchor: state.anchor,
    ownMm: 0,
    nostrilShare: nostrilMiddleShare,
    edge: state.edge,
    stations,
    readingMm: markUncertaintyMm({
      temMm: state.error,
      readings: Math.round(state.readings),
      budgetMm: budgetMm(exampleBudget),
    }),
    k: familyCoverageFactor(tradeCheckCount(stations.length)),
  });
  if (!report.ok) return report;
  const { right, left } = report.outlines;
  return {
    ...report,
    outlines: { right: isMade(right), left: isMade(left) },
    shapes: { right: shapeOf(right), left: shapeOf(left) },
  };
}

/** Whether the marks make an outline: what it is made of is not sent with a page. */
const isMade = (outline: Outline | NoOutline) => (outline.ok ? ({ ok: true } as const) : outline);

function shapeOf(outline: Outline | NoOutline): Shape | undefined {
  return outline.ok
    ? {
        curves: outlineCurves(outline),
        areaMm2: outlineAreaMm2(outline),
        perimeterMm: outlinePerimeterMm(outline),
      }
    : undefined;
}
