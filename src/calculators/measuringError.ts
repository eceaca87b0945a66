import {
  budgetMm,
  type Reading,
  type ReadingsNeeded,
  readingsNeeded,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { comparePasses, type PassComparison } from '#lib/mapping/uncertainty/comparePasses.ts';
import { type SpreadInterval, spreadInterval } from '#lib/mapping/uncertainty/spreadInterval.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import {
  caliperHalfWidthMm,
  pencilHalfWidthMm,
  tenComparisons,
  threadHalfWidthMm,
} from '#lib/mapping/numbers/start.ts';
import { type Repeat, repeatabilityMm, technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import { examplePairs } from './examplePairs.ts';
import { numberField } from './fields.ts';
import { pairsField, repeatsOf } from './pairsField.ts';
import type { Calculator } from './spec.ts';

export type MeasuringErrorState = Readonly<{
  pairs: string;
  pencil: number;
  caliper: number;
  thread: number;
  readings: number;
  comparisons: number;
  wanted: number;
}>;

export type MeasuringErrorResult = Readonly<{
  repeats: readonly Repeat[];
  /** Technical error of one reading with the ends that so many pairs leave open, mm. */
  tem: SpreadInterval;
  /** 95 of 100 pairs of readings differ by less, mm. */
  repeatMm: number;
  passes: PassComparison;
  budgetMm: number;
  /**
   * Smallest real difference if one comparison is made, and if all of them are judged together; with the ends
   * that come from the technical error's own, mm.
   */
  one: SpreadInterval;
  all: SpreadInterval;
  /** Readings a side to show the wanted difference among all comparisons. */
  needed: ReadingsNeeded;
}>;

const width = (key: string, startMm: number) =>
  numberField(key, startMm, { unit: 'mm', lo: 0, hi: 3, step: 0.05, decimals: 2 });

/** Own repeated readings to technical error, smallest real difference and readings needed. */
export const measuringError: Calculator<MeasuringErrorState, MeasuringErrorResult> = {
  id: 'measuring-error',
  fields: {
    pairs: pairsField('pairs', examplePairs, { unit: 'mm', lo: -200, hi: 200, most: 60 }),
    pencil: width('pencil', 2 * pencilHalfWidthMm),
    caliper: width('caliper', 2 * caliperHalfWidthMm),
    thread: width('thread', 2 * threadHalfWidthMm),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
    comparisons: numberField('comparisons', tenComparisons, {
      unit: '1',
      lo: 1,
      hi: 20,
      step: 1,
      decimals: 0,
    }),
    wanted: numberField('wanted', 1, { unit: 'mm', lo: 0.1, hi: 8, step: 0.1, decimals: 1 }),
  },
  solve: ({ pairs, pencil, caliper, thread, readings, comparisons, wanted }) => {
    const repeats = repeatsOf(pairs);
    const fit = technicalError(repeats);
    const temMm = fit.ok ? fit.temMm : 0;
    const tem = spreadInterval(temMm, repeats.length);
    const toolsMm = budgetMm([pencil, caliper, thread].map((widthMm) => ({ halfWidthMm: widthMm / 2 })));
    const kAll = familyCoverageFactor(Math.round(comparisons));
    const smallest = (k: number): SpreadInterval => {
      const from = (mm: number): Reading => ({
        temMm: mm,
        readings: Math.round(readings),
        budgetMm: toolsMm,
      });
      return {
        value: smallestRealDifferenceMm(from(tem.value), k),
        lo: smallestRealDifferenceMm(from(tem.lo), k),
        hi: smallestRealDifferenceMm(from(tem.hi), k),
      };
    };
    return {
      repeats,
      tem,
      repeatMm: repeatabilityMm(temMm),
      passes: comparePasses(repeats),
      budgetMm: toolsMm,
      one: smallest(familyCoverageFactor(1)),
      all: smallest(kAll),
      needed: readingsNeeded(wanted, { temMm, budgetMm: toolsMm }, kAll),
    };
  },
};
