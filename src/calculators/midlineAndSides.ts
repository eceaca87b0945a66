import type { MarkSet } from '#lib/mapping/marks/markSet.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import { hasRivalMidline } from '#lib/mapping/midline/rivalMidline.ts';
import {
  type FaceReading,
  type NoFaceReading,
  type ReadingChoices,
  readFace,
} from '#lib/mapping/compare/readFace.ts';
import { exampleBudget, fewSeeMm, mostSeeMm, tenComparisons } from '#lib/mapping/numbers/start.ts';
import { markSetOf } from './marks.ts';
import { type MidlineAndSidesState, midlineAndSidesFields } from './midlineAndSidesFields.ts';
import type { Calculator } from './spec.ts';

/** The marks of a state with how they were taken. */
export function readingOf(state: MidlineAndSidesState): MarkSet {
  return markSetOf(state, { pose: state.pose, posture: state.posture, skin: state.skin });
}

/** How a state's marks are judged. */
export function choicesOf({ level, error, readings, judged }: MidlineAndSidesState): ReadingChoices {
  return {
    levelReference: level,
    temMm: error,
    readings: Math.round(readings),
    budget: exampleBudget,
    comparisons: judged === 'together' ? tenComparisons : 'one',
    notice: { fewSeeMm, mostSeeMm },
  };
}

/** A reading, and whether a second midline fits its marks about as well. */
export type FaceRead = FaceReading & Readonly<{ hasRivalMidline: boolean }>;

/** One set of marks: midline, roll, which marks are trusted, left against right for ten numbers. */
export const midlineAndSides: Calculator<MidlineAndSidesState, FaceRead | NoFaceReading> = {
  ...midlineAndSidesFields,
  solve: (state) => {
    const marks = readingOf(state);
    const reading = readFace(marks, choicesOf(state));
    return reading.ok ? { ...reading, hasRivalMidline: hasRivalMidline(mirrorMarksOf(marks)) } : reading;
  },
};
