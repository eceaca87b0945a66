import { includesZero, intervalAround, type Interval } from '../../quantities/interval.ts';
import type { Brow } from '../marks/brow.ts';
import { browMarks, type BrowMark, type Side } from '../marks/markSet.ts';
import { heightDifferenceShare, midlineShare } from '../placing/frameShare.ts';
import type { NoOutline } from './outline.ts';
import { limitVerdict, type LimitVerdict } from '../placing/limitVerdict.ts';
import { placeFrontAndTail, type NoPlacing, type PlacingChoices } from '../placing/placeFrontAndTail.ts';
import type { SideMarks } from '../placing/placingMarks.ts';
import {
  outlinesOf,
  stationPairs,
  type Outlines,
  type StationChoices,
  type StationPair,
} from './stationPairs.ts';

export type BrowsOnFace = Readonly<Record<Side, SideMarks & Brow>>;
/**
 * Front and tail choices, and the stations: shares of the level length from the front (0), measured at
 * `edge`, to the tail tip (1).
 */
export type TradeChoices = PlacingChoices & StationChoices;

/** Left against right: shown to differ, or not shown to. */
export const equalVerdicts = ['differs', 'not-shown'] as const;
export type EqualVerdict = (typeof equalVerdicts)[number];

/** What the two brows of one face are compared in, left minus right. `level-…`: heights of that mark. */
export type EqualCheckId = 'fronts-equally-far' | `level-${BrowMark}` | 'lengths' | 'thickness';
/** What each brow keeps for itself: room in mm, positive where it is kept. */
export const limitCheckIds = ['tail-over-front-lower', 'tail-under-front-top', 'tail-inside-line'] as const;
export type LimitCheckId = (typeof limitCheckIds)[number];

export type TradeCheck = Readonly<
  | {
      kind: 'equal';
      id: EqualCheckId;
      /** Of a thickness. */
      share?: number;
      value: Interval;
      verdict: EqualVerdict;
    }
  /** How far the front stands outward of the chosen anchor. */
  | { kind: 'anchor'; id: 'front-on-anchor'; side: Side; value: Interval; verdict: EqualVerdict }
  | { kind: 'limit'; id: LimitCheckId; side: Side; value: Interval; verdict: LimitVerdict }
>;
export type TradeReport = Readonly<{
  ok: true;
  outlines: Outlines;
  stations: readonly StationPair[];
  checks: readonly TradeCheck[];
}>;
/** What of a report is drawn, said and put into tables: of the outlines, whether the marks make one. */
export type ShownTradeReport = Omit<TradeReport, 'outlines'> &
  Readonly<{ outlines: Readonly<Record<Side, Readonly<{ ok: true }> | NoOutline>> }>;

/**
 * How many comparisons are shown together: fronts, five heights, lengths, a thickness each station, four for
 * each side.
 */
export function tradeCheckCount(stations: number): number {
  return 2 + browMarks.length + stations + 2 * (limitCheckIds.length + 1);
}

/**
 * Every check of the trade on two drawn brows, each with its interval: fronts equally far out, five heights
 * level, lengths and thicknesses equal, tail tip between the front's levels and inside the line nose wing –
 * outer eye corner, front on its anchor. The front is measured at `edge`. A thickness that cannot be read
 * makes no check; its station says why.
 */
export function tradeChecks(marks: BrowsOnFace, choices: TradeChoices): TradeReport | NoPlacing {
  const placing = placeFrontAndTail(marks, choices);
  if (!placing.ok) return placing;
  const { right, left } = marks;
  const { readingMm, k } = choices;
  const outlines = outlinesOf(marks);
  const stations = stationPairs(marks, outlines, choices);
  const equal = (id: EqualCheckId, value: Interval, share?: number): TradeCheck => ({
    kind: 'equal',
    id,
    ...(share === undefined ? {} : { share }),
    value,
    verdict: equalVerdict(value),
  });
  const level = (mark: BrowMark) =>
    equal(
      `level-${mark}`,
      intervalAround(
        left[mark].vMm - right[mark].vMm,
        heightDifferenceShare(left[mark].uMm + right[mark].uMm) * readingMm,
        k,
      ),
    );
  const limit = (id: LimitCheckId, side: Side, value: Interval): TradeCheck => ({
    kind: 'limit',
    id,
    side,
    value,
    verdict: limitVerdict(value),
  });
  const front = (side: Side): TradeCheck => {
    const value = intervalAround(
      placing.fronts[side].nowMm - placing.chosenMm,
      anchorShare(choices) * readingMm,
      k,
    );
    return { kind: 'anchor', id: 'front-on-anchor', side, value, verdict: equalVerdict(value) };
  };
  const ofSide = (side: Side): readonly TradeCheck[] => {
    const { overLower, underTop, inside } = placing.tails[side];
    return [
      front(side),
      limit('tail-over-front-lower', side, overLower),
      limit('tail-under-front-top', side, underTop),
      limit('tail-inside-line', side, inside),
    ];
  };
  return {
    ok: true,
    outlines,
    stations,
    checks: [
      equal('fronts-equally-far', placing.frontsApart),
      ...browMarks.map(level),
      equal('lengths', placing.lengthsApart),
      ...stations.flatMap(({ difference, share }) =>
        difference ? [equal('thickness', difference, share)] : [],
      ),
      ...ofSide('right'),
      ...ofSide('left'),
    ],
  };
}

function equalVerdict(value: Interval): EqualVerdict {
  return includesZero(value) ? 'not-shown' : 'differs';
}

/** The front's own reading, the midline it is measured from, and the mean of the two marks of its anchor. */
function anchorShare({ anchor, nostrilShare }: TradeChoices): number {
  const mean = { 'nose-wing': 1, 'inner-corner': 1, 'nostril-middle': nostrilShare, own: 0 }[anchor];
  return Math.sqrt(1 + midlineShare ** 2 + mean ** 2 / 2);
}
