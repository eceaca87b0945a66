import type { PointMm } from '#lib/geometry/point.ts';
import { browMarks, type BrowMark } from '#lib/mapping/marks/markSet.ts';
import { markField } from './fields.ts';
import { levelFaceMarks } from './levelFaceMarks.ts';
import type { Field } from './spec.ts';

/** One brow mark's name in a state and an address: archTopL. */
export type BrowKey = `${BrowMark}${'R' | 'L'}`;
export type BrowPoints = Readonly<Record<BrowKey, PointMm>>;
export const browKeys: readonly BrowKey[] = browMarks.flatMap((mark) => [`${mark}R`, `${mark}L`] as const);

const sheet = { x: [-90, 90], y: [-140, 60] } as const;

/** The ten marks of both brows as movable fields; they start on the level face. */
export function browFields(): Readonly<Record<BrowKey, Field<PointMm>>> {
  const fields: Partial<Record<BrowKey, Field<PointMm>>> = {};
  for (const key of browKeys) fields[key] = markField(key, levelFaceMarks[key], sheet);
  if (!hasEveryMark(fields)) throw new Error('A brow mark has no field.');
  return fields;
}

function hasEveryMark(
  fields: Partial<Record<BrowKey, Field<PointMm>>>,
): fields is Record<BrowKey, Field<PointMm>> {
  return browKeys.every((key) => fields[key] !== undefined);
}
