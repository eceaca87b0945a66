import { budgetMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { archesApartMm, threadLengthMm } from '#lib/mapping/numbers/level.ts';
import { type TiltBehind, tiltBehind } from '#lib/mapping/level/tiltBehind.ts';
import {
  caliperHalfWidthMm,
  exampleErrorMm,
  pencilHalfWidthMm,
  threadHalfWidthMm,
} from '#lib/mapping/numbers/start.ts';
import { numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type LevelLineState = Readonly<{
  tilt: number;
  span: number;
  seen: number;
  hands: number;
  error: number;
  readings: number;
}>;
export type LevelLine = Readonly<{
  /** Height difference between two level points that the tilt makes, mm. */
  fakedMm: number;
  /** How much higher one end of the thread is held than the other, mm. */
  endMm: number;
  /**
   * Smallest real difference of one comparison, mm, and the tilt and the end of the thread that make as much.
   */
  realMm: number;
  holdWithin: TiltBehind;
  holdWithinEndMm: number;
  /** The tilt that would make the whole of the difference that was read. */
  behindSeen: TiltBehind;
}>;

const budget = budgetMm(
  [pencilHalfWidthMm, caliperHalfWidthMm, threadHalfWidthMm].map((halfWidthMm) => ({ halfWidthMm })),
);

/**
 * A line taken for level and its tilt: what it fakes between two points, and the tilt behind a difference
 * that was read.
 */
export const levelLine: Calculator<LevelLineState, LevelLine> = {
  id: 'level-line',
  fields: {
    tilt: numberField('tilt', 1, { unit: '°', lo: 0, hi: 6, step: 0.1, decimals: 1 }),
    span: numberField('span', archesApartMm, { unit: 'mm', lo: 20, hi: 130, step: 1, decimals: 1 }),
    seen: numberField('seen', 2, { unit: 'mm', lo: 0, hi: 20, step: 0.1, decimals: 1 }),
    hands: numberField('hands', threadLengthMm, { unit: 'mm', lo: 60, hi: 400, step: 5, decimals: 0 }),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: ({ tilt, span, seen, hands, error, readings }) => {
    const realMm = smallestRealDifferenceMm(
      { temMm: error, readings: Math.round(readings), budgetMm: budget },
      familyCoverageFactor(1),
    );
    return {
      fakedMm: fakedHeightMm(span, tilt),
      endMm: fakedHeightMm(hands, tilt),
      realMm,
      holdWithin: tiltBehind(realMm, span),
      holdWithinEndMm: (realMm * hands) / span,
      behindSeen: tiltBehind(seen, span),
    };
  },
};
