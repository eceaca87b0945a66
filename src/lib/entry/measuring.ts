import {
  budgetMm as insideBudget,
  markUncertaintyMm as insideUncertainty,
  readingsNeeded as insideNeeded,
  smallestRealDifferenceMm as insideSmallest,
} from '../mapping/uncertainty/budget.ts';
import {
  falseAlarmRate as insideRate,
  familyCoverageFactor as insideFamily,
} from '../mapping/uncertainty/familyWise.ts';
import {
  repeatabilityMm as insideRepeat,
  technicalError as insideTechnical,
} from '../mapping/uncertainty/technicalError.ts';
import {
  differenceReachedByMm as insideReached,
  shareAtLeast as insideAtLeast,
} from '../mapping/compare/usualDifference.ts';
import { comparePasses as insidePasses } from '../mapping/uncertainty/comparePasses.ts';
import { meanOfReadings as insideMean } from '../mapping/uncertainty/meanOfReadings.ts';
import { spreadInterval as insideSpread } from '../mapping/uncertainty/spreadInterval.ts';
import { studentFactor as insideStudent } from '../mapping/uncertainty/studentFactor.ts';
import {
  afterFirstPass as insideAfter,
  browAfterFirstPass as insideBrowAfter,
  type AgainChoices,
} from '../mapping/again/afterFirstPass.ts';
import { fakedHeightMm as insideFaked } from '../mapping/level/fakedHeight.ts';
import { tiltBehind as insideTilt } from '../mapping/level/tiltBehind.ts';
import { compareHeights as insideHeights, type HeightReading } from '../mapping/compare/compareHeights.ts';
import { between, above0, list, maybe, refusing, shape, throwing, whole, type Checked } from './domain.ts';
import * as of from './mappingDomains.ts';
import { bothSides, degrees, errorMm, factor, lengthMm, onFaceMm, share } from './units.ts';

export type { BudgetLine, Reading, ReadingsNeeded } from '../mapping/uncertainty/budget.ts';
export type { PassComparison } from '../mapping/uncertainty/comparePasses.ts';
export type { MeanOfReadings } from '../mapping/uncertainty/meanOfReadings.ts';
export type { SpreadInterval } from '../mapping/uncertainty/spreadInterval.ts';
export type {
  AgainChoices,
  AgainRefusal,
  BrowAgain,
  BrowsAgain,
  MarkStep,
} from '../mapping/again/afterFirstPass.ts';
export type { NextStep, StopReason } from '../mapping/again/nextStep.ts';
export type { TiltBehind } from '../mapping/level/tiltBehind.ts';
export type { HeightReading, HeightsCompared } from '../mapping/compare/compareHeights.ts';

/** Technical error of measurement from pairs of readings, mm. */
export const technicalError: Checked<typeof insideTechnical> = refusing(
  insideTechnical,
  'repeats',
  of.repeats,
);

/** 95 of 100 pairs of readings differ by less, mm. */
export const repeatabilityMm: typeof insideRepeat = throwing(insideRepeat, 'temMm', errorMm);

/** Half-widths of a budget together as a standard uncertainty, mm. */
export const budgetMm: typeof insideBudget = throwing(insideBudget, 'lines', of.budgetLines);

/** Standard uncertainty of one mark, mm. */
export const markUncertaintyMm: typeof insideUncertainty = throwing(insideUncertainty, 'reading', of.reading);

/** The smallest difference that counts as real, mm, at a coverage factor. */
export const smallestRealDifferenceMm: typeof insideSmallest = throwing(
  insideSmallest,
  'reading k',
  of.reading,
  factor,
);

/** The fewest readings a side with which a difference counts as real. */
export const readingsNeeded: Checked<typeof insideNeeded> = refusing(
  insideNeeded,
  'wantedMm error k',
  above0(1000),
  shape({ temMm: errorMm, budgetMm: errorMm }),
  above0(50),
);

/** Whether a second pass reads apart from the first. */
export const comparePasses: Checked<typeof insidePasses> = refusing(insidePasses, 'repeats', of.repeats);

/** The mean of readings with its interval. */
export const meanOfReadings: Checked<typeof insideMean> = refusing(
  insideMean,
  'readingsMm',
  list(onFaceMm, 100_000),
);

/** How far a spread is fixed by the readings behind it. */
export const spreadInterval: typeof insideSpread = throwing(
  insideSpread,
  'value degreesOfFreedom',
  lengthMm,
  whole(1, 300),
);

/** Student's factor at 95 %, two-sided. */
export const studentFactor: typeof insideStudent = throwing(
  insideStudent,
  'degreesOfFreedom',
  whole(1, 1_000_000),
);

/** The chance of at least one false alarm in so many comparisons. */
export const falseAlarmRate: typeof insideRate = throwing(
  insideRate,
  'comparisons each',
  of.comparisons,
  maybe(share),
);

/** The coverage factor that keeps the chance of any false alarm in so many comparisons. */
export const familyCoverageFactor: typeof insideFamily = throwing(
  insideFamily,
  'comparisons overall',
  of.comparisons,
  maybe(between(1e-9, 0.999)),
);

/** Share of people whose two sides differ by at least so much, from the mean size of the difference. */
export const shareAtLeast: typeof insideAtLeast = throwing(
  insideAtLeast,
  'differenceMm meanSizeMm',
  onFaceMm,
  above0(1000),
);

/** The difference that a share of people reach or pass, mm. */
export const differenceReachedByMm: typeof insideReached = throwing(
  insideReached,
  'share meanSizeMm',
  between(1e-9, 1),
  above0(1000),
);

const againChoices = shape<AgainChoices>({
  reading: of.reading,
  comparisons: of.comparisons,
  chaseFromMm: lengthMm,
});

const takenTwice = shape({ approved: of.taken, now: of.taken });

/** One brow after the first pass against its approved outline: where to add, where to stop. */
export const browAfterFirstPass: Checked<typeof insideBrowAfter> = refusing(
  insideBrowAfter,
  'approved pigment taken choices',
  of.brow,
  of.brow,
  takenTwice,
  againChoices,
);

/** The same for both brows. */
export const afterFirstPass: Checked<typeof insideAfter> = refusing(
  insideAfter,
  'approved pigment taken choices',
  of.brows,
  of.brows,
  takenTwice,
  againChoices,
);

/** The height difference that a tilted line fakes over a span, mm. */
export const fakedHeightMm: typeof insideFaked = throwing(insideFaked, 'spanMm tiltDeg', lengthMm, degrees);

/** The tilt that would fake a height difference over a span, degrees. */
export const tiltBehind: Checked<typeof insideTilt> = refusing(
  insideTilt,
  'heightMm spanMm',
  onFaceMm,
  above0(1000),
);

const heights = shape<HeightReading>({ taken: of.taken, archMm: bothSides(onFaceMm) });

/** Left against right within two readings and, where they were taken alike, second against first. */
export const compareHeights: typeof insideHeights = throwing(
  insideHeights,
  'first second reading',
  heights,
  heights,
  of.reading,
);
