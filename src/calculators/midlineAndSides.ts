import type { LevelReference } from '#lib/mapping/marks/levelReference.ts';
import type { MarkSet, Pose, Posture, SkinState } from '#lib/mapping/marks/markSet.ts';
import {
  type FaceReading,
  type NoFaceReading,
  type ReadingChoices,
  readFace,
} from '#lib/mapping/compare/readFace.ts';
import {
  exampleBudget,
  exampleErrorMm,
  fewSeeMm,
  mostSeeMm,
  tenComparisons,
} from '#lib/mapping/numbers/start.ts';
import { choiceField, markField, numberField } from './fields.ts';
import { leaningNoseMarks } from './leaningNoseMarks.ts';
import { type MarkKey, type MarkPoints, markSetOf, namedMarks } from './marks.ts';
import type { Calculator, Field } from './spec.ts';
import type { PointMm } from '#lib/geometry/point.ts';

/** Judge each difference as if it stood alone, or all ten of the face together. */
export type Judged = 'together' | 'one-alone';

export type MidlineAndSidesState = MarkPoints &
  Readonly<{
    level: LevelReference;
    error: number;
    readings: number;
    judged: Judged;
    pose: Pose;
    posture: Posture;
    skin: SkinState;
  }>;

/** The sheet the marks lie on: wide enough for any face, millimetres. */
const sheet = { x: [-90, 90], y: [-140, 60] } as const;

function markFields(): { readonly [K in MarkKey]: Field<PointMm> } {
  const field = (key: MarkKey) => markField(key, leaningNoseMarks[key], sheet);
  const fields: Partial<Record<MarkKey, Field<PointMm>>> = {};
  for (const { key } of namedMarks) fields[key] = field(key);
  if (!hasEveryMark(fields)) throw new Error('A mark has no field.');
  return fields;
}

function hasEveryMark(
  fields: Partial<Record<MarkKey, Field<PointMm>>>,
): fields is Record<MarkKey, Field<PointMm>> {
  return namedMarks.every(({ key }) => fields[key] !== undefined);
}

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

/** One set of marks: midline, roll, which marks are trusted, left against right for ten numbers. */
export const midlineAndSides: Calculator<MidlineAndSidesState, FaceReading | NoFaceReading> = {
  id: 'midline-and-sides',
  fields: {
    ...markFields(),
    level: choiceField<LevelReference>('level', 'midline', ['midline', 'eye-corners', 'pupils']),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
    judged: choiceField<Judged>('judged', 'together', ['together', 'one-alone']),
    pose: choiceField<Pose>('pose', 'rest', ['rest', 'eyes-closed', 'raised', 'frown']),
    posture: choiceField<Posture>('posture', 'sitting', ['sitting', 'lying']),
    skin: choiceField<SkinState>('skin', 'normal', ['normal', 'numb', 'swollen']),
  },
  solve: (state) => readFace(readingOf(state), choicesOf(state)),
};
