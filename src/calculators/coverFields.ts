import type { PointMm } from '#lib/geometry/point.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { browMarks, type BrowMark, type Side } from '#lib/mapping/marks/markSet.ts';
import type { OldSkin } from '#lib/mapping/plan/planCorrections.ts';
import { exampleErrorMm } from '#lib/mapping/numbers/start.ts';
import { choiceField, markField, numberField } from './fields.ts';
import type { Calculator, Field } from './spec.ts';

/** Marks of the planned outline, and of the outline the old work was once drawn to. */
export type Shape = 'planned' | 'old';
export type CoverKey = `${Shape}${Capitalize<BrowMark>}${'R' | 'L'}`;
export type CoverPoints = Readonly<Record<CoverKey, PointMm>>;
export type Free = 'both' | 'right' | 'left';
export type CoverState = CoverPoints &
  Readonly<{
    spread: number;
    raise: number;
    lower: number;
    thickness: number;
    growth: number;
    free: Free;
    skin: OldSkin;
    margin: number;
    error: number;
    readings: number;
  }>;

const capital = {
  frontLower: 'FrontLower',
  frontTop: 'FrontTop',
  archTop: 'ArchTop',
  archLower: 'ArchLower',
  tail: 'Tail',
} as const;
const letter = { right: 'R', left: 'L' } as const;

/** The name of one mark in a state and an address: plannedArchTopR, oldTailL. */
export const coverKey = (shape: Shape, mark: BrowMark, side: Side): CoverKey =>
  `${shape}${capital[mark]}${letter[side]}`;

/**
 * The ferry pilot, invented: equal outlines, and under them old work whose arches stand far above what she
 * allows.
 */
const start: Readonly<
  Record<Shape, Readonly<Record<Side, Readonly<Record<BrowMark, readonly [number, number]>>>>>
> = {
  planned: {
    right: {
      frontLower: [16.2, 11.2],
      frontTop: [16.9, 17.8],
      archTop: [41.3, 20.5],
      archLower: [40.5, 14.7],
      tail: [56.4, 13.8],
    },
    left: {
      frontLower: [16.2, 11.2],
      frontTop: [16.9, 17.8],
      archTop: [41.3, 20.5],
      archLower: [40.5, 14.7],
      tail: [56.4, 13.8],
    },
  },
  old: {
    right: {
      frontLower: [18.2, 12.3],
      frontTop: [18.6, 17.2],
      archTop: [39, 22.9],
      archLower: [38.5, 16.6],
      tail: [53.2, 14.3],
    },
    left: {
      frontLower: [18, 12.2],
      frontTop: [18.4, 16.9],
      archTop: [39.4, 22.1],
      archLower: [38.8, 16],
      tail: [53, 14.3],
    },
  },
};

export type CoverMark = Readonly<{ key: CoverKey; shape: Shape; mark: BrowMark; side: Side }>;
/** Every mark in the order in which the panel lists it. */
export const coverMarks: readonly CoverMark[] = (['planned', 'old'] as const).flatMap((shape) =>
  (['right', 'left'] as const).flatMap((side) =>
    browMarks.map((mark) => ({ key: coverKey(shape, mark, side), shape, mark, side })),
  ),
);

const sheet = { x: [-90, 90], y: [-20, 60] } as const;

function markFields(): Readonly<Record<CoverKey, Field<PointMm>>> {
  const fields: Partial<Record<CoverKey, Field<PointMm>>> = {};
  for (const { key, shape, mark, side } of coverMarks) {
    const [uMm, vMm] = start[shape][side][mark];
    fields[key] = markField(key, { xMm: side === 'right' ? -uMm : uMm, yMm: vMm }, sheet);
  }
  if (!hasEveryMark(fields)) throw new Error('A mark of the cover has no field.');
  return fields;
}

function hasEveryMark(
  fields: Partial<Record<CoverKey, Field<PointMm>>>,
): fields is Record<CoverKey, Field<PointMm>> {
  return coverMarks.every(({ key }) => fields[key] !== undefined);
}

/** One brow of a state in the face's frame: the midline is x = 0 and the pupils lie on y = 0. */
export function browOf(points: CoverPoints, shape: Shape, side: Side): Brow {
  const place = (mark: BrowMark) => {
    const { xMm, yMm } = points[coverKey(shape, mark, side)];
    return { uMm: side === 'right' ? -xMm : xMm, vMm: yMm };
  };
  return {
    frontLower: place('frontLower'),
    frontTop: place('frontTop'),
    archTop: place('archTop'),
    archLower: place('archLower'),
    tail: place('tail'),
  };
}

/** The inputs of the cover, without its sum: the planner is fetched at the first change. */
export const coverFields: Calculator<CoverState, undefined> = {
  id: 'cover-the-old-shape',
  fields: {
    ...markFields(),
    spread: numberField('spread', 0.4, { unit: 'mm', lo: 0, hi: 2, step: 0.1, decimals: 1 }),
    raise: numberField('raise', 1, { unit: 'mm', lo: 0, hi: 6, step: 0.1, decimals: 1 }),
    lower: numberField('lower', 0.5, { unit: 'mm', lo: 0, hi: 6, step: 0.1, decimals: 1 }),
    thickness: numberField('thickness', 8, { unit: 'mm', lo: 2, hi: 20, step: 0.1, decimals: 1 }),
    growth: numberField('growth', 35, { unit: '%', lo: 0, hi: 200, step: 5, decimals: 0 }),
    free: choiceField<Free>('free', 'both', ['both', 'right', 'left']),
    // An answer about health: asked anew each time.
    skin: {
      ...choiceField<OldSkin>('skin', 'quiet', ['quiet', 'raised', 'itchy', 'scaly']),
      kept: 'memory',
    },
    margin: numberField('margin', 0.4, { unit: 'mm', lo: 0, hi: 2, step: 0.1, decimals: 1 }),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: () => undefined,
};
