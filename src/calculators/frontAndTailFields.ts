import type { PointMm } from '#lib/geometry/point.ts';
import type { FrontAnchor } from '#lib/mapping/placing/anchorDistances.ts';
import type { FrontEdge } from '#lib/mapping/placing/drawnLengths.ts';
import { exampleErrorMm, nostrilMiddleShare } from '#lib/mapping/numbers/start.ts';
import { choiceField, markField, numberField } from './fields.ts';
import type { Calculator, Field } from './spec.ts';
import { type PlacingKey, placingKeys, wideNoseMarks } from './wideNoseMarks.ts';

export type FrontAndTailState = Readonly<Record<PlacingKey, PointMm>> &
  Readonly<{
    anchor: FrontAnchor | 'own';
    /** One's own distance from the midline, mm. */
    own: number;
    edge: FrontEdge;
    /** Place of the nostril's middle on the way from the nose's middle to its wing, %. */
    nostril: number;
    error: number;
    readings: number;
  }>;

const sheet = { x: [-90, 90], y: [-140, 60] } as const;

function markFields(): Readonly<Record<PlacingKey, Field<PointMm>>> {
  const fields: Partial<Record<PlacingKey, Field<PointMm>>> = {};
  for (const key of placingKeys) fields[key] = markField(key, wideNoseMarks[key], sheet);
  if (!hasEveryMark(fields)) throw new Error('A mark has no field.');
  return fields;
}

function hasEveryMark(
  fields: Partial<Record<PlacingKey, Field<PointMm>>>,
): fields is Record<PlacingKey, Field<PointMm>> {
  return placingKeys.every((key) => fields[key] !== undefined);
}

/**
 * The inputs without the sums, which a page fetches later. Choices are written out: the library's lists would
 * bring its sums along.
 */
export const frontAndTailFields = {
  id: 'front-and-tail',
  fields: {
    ...markFields(),
    anchor: choiceField<FrontAnchor | 'own'>('anchor', 'inner-corner', [
      'nose-wing',
      'inner-corner',
      'nostril-middle',
      'own',
    ]),
    own: numberField('own', 14, { unit: 'mm', lo: 4, hi: 35, step: 0.1, decimals: 1 }),
    edge: choiceField<FrontEdge>('edge', 'frontLower', ['frontLower', 'frontTop']),
    nostril: numberField('nostril', 100 * nostrilMiddleShare, {
      unit: '%',
      lo: 20,
      hi: 95,
      step: 1,
      decimals: 0,
    }),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
} as const satisfies Pick<Calculator<FrontAndTailState, unknown>, 'id' | 'fields'>;
