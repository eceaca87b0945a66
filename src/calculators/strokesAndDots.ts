import { shareApart, shareAtRandom } from '#lib/colour/coverage/coverage.ts';
import { dotsWithin, type ShareWithin, strokesWithin } from '#lib/colour/coverage/coverageWithin.ts';
import { strokeValues } from '#lib/colour/numbers/strokes.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type Made = 'apart' | 'crossing' | 'dots';
/**
 * Millimetres, square millimetres, dots in one of them. Each …Off is a give or take that holds in 95 of 100
 * cases.
 */
export type StrokesAndDotsState = Readonly<{
  made: Made;
  count: number;
  length: number;
  width: number;
  spread: number;
  area: number;
  dots: number;
  dot: number;
  dotSpread: number;
  countOff: number;
  lengthOff: number;
  widthOff: number;
  spreadOff: number;
  areaOff: number;
  dotsOff: number;
}>;
export type StrokesAndDots = Readonly<{ fresh: ShareWithin; spread: ShareWithin }>;

const mm = (key: string, start: number, lo: number, hi: number, step = 0.01, decimals = 2) =>
  numberField(key, start, { unit: 'mm', lo, hi, step, decimals });

/**
 * The share of a brow that strokes or dots colour, fresh and after they have spread, with how sure that is.
 */
export const strokesAndDots: Calculator<StrokesAndDotsState, StrokesAndDots> = {
  id: 'strokes-and-dots',
  fields: {
    made: choiceField<Made>('made', 'apart', ['apart', 'crossing', 'dots']),
    count: numberField('count', 60, { unit: '1', lo: 1, hi: 300, step: 1, decimals: 0 }),
    length: mm('length', strokeValues.exampleStrokeMm, 2, 15, 0.5, 1),
    width: mm('width', 0.18, 0.05, 1),
    spread: mm('spread', strokeValues.strokeSpreadMm, 0.05, 1.5),
    area: numberField('area', strokeValues.exampleAreaMm2, {
      unit: 'mm²',
      lo: 100,
      hi: 500,
      step: 1,
      decimals: 1,
    }),
    dots: numberField('dots', 8, { unit: '1', lo: 0.5, hi: 20, step: 0.5, decimals: 1 }),
    dot: mm('dot', 0.2, 0.05, 1),
    dotSpread: mm('dotSpread', strokeValues.dotSpreadMm, 0.05, 1.5),
    countOff: numberField('countOff', 3, { unit: '1', lo: 0, hi: 50, step: 1, decimals: 0 }),
    lengthOff: mm('lengthOff', 0.5, 0, 3, 0.1, 1),
    widthOff: mm('widthOff', 0.03, 0, 0.3),
    spreadOff: mm('spreadOff', strokeValues.spreadOffMm, 0, 0.5),
    areaOff: numberField('areaOff', 15, { unit: 'mm²', lo: 0, hi: 100, step: 1, decimals: 0 }),
    dotsOff: numberField('dotsOff', 1, { unit: '1', lo: 0, hi: 5, step: 0.5, decimals: 1 }),
  },
  solve: ({
    made,
    count,
    length,
    width,
    spread,
    area,
    dots,
    dot,
    dotSpread,
    countOff,
    lengthOff,
    widthOff,
    spreadOff,
    areaOff,
    dotsOff,
  }) => {
    const asDots = (diameterMm: number, offMm: number) =>
      dotsWithin({ perMm2: dots, diameterMm }, { perMm2: dotsOff, diameterMm: offMm });
    const asStrokes = (widthMm: number, offMm: number) =>
      strokesWithin(
        { count, lengthMm: length, widthMm, areaMm2: area },
        { count: countOff, lengthMm: lengthOff, widthMm: offMm, areaMm2: areaOff },
        made === 'apart' ? shareApart : shareAtRandom,
      );
    return made === 'dots'
      ? { fresh: asDots(dot, widthOff), spread: asDots(dotSpread, spreadOff) }
      : { fresh: asStrokes(width, widthOff), spread: asStrokes(spread, spreadOff) };
  },
};
