import type { LevelReference } from '#lib/mapping/marks/levelReference.ts';
import type { Pose, Posture, SkinState } from '#lib/mapping/marks/markSet.ts';
import { exampleErrorMm } from '#lib/mapping/numbers/start.ts';
import { choiceField, markField, numberField } from './fields.ts';
import { leaningNoseMarks } from './leaningNoseMarks.ts';
import { type MarkKey, type MarkPoints, namedMarks } from './marks.ts';
import type { Field } from './spec.ts';
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

/** The inputs without the sums, which a lesson fetches at the first change. */
export const midlineAndSidesFields = {
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
} as const;
