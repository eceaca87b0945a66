import type { PointMm } from '#lib/geometry/point.ts';
import {
  type BrowMark,
  browMarks,
  type FacePair,
  type FaceSingle,
  facePairs,
  faceSingles,
  type MarkSet,
  type PairMarks,
  type Side,
  type Taken,
} from '#lib/mapping/marks/markSet.ts';

type SideLetter = 'R' | 'L';
/** One mark's name in a state and an address: innerCornerR, archTopL, chin. */
export type MarkKey = `${FacePair | BrowMark}${SideLetter}` | FaceSingle;
export type MarkPoints = Readonly<Record<MarkKey, PointMm>>;

export type NamedMark = Readonly<
  | { key: MarkKey; group: 'pair'; mark: FacePair; side: Side }
  | { key: MarkKey; group: 'single'; mark: FaceSingle }
  | { key: MarkKey; group: 'brow'; mark: BrowMark; side: Side }
>;

const sides = [
  ['R', 'right'],
  ['L', 'left'],
] as const;

/** Every mark of a face in the order in which it is read: eyes, nose, middle, brows. */
export const namedMarks: readonly NamedMark[] = [
  ...facePairs.flatMap((mark) =>
    sides.map(([letter, side]): NamedMark => ({ key: `${mark}${letter}`, group: 'pair', mark, side })),
  ),
  ...faceSingles.map((mark): NamedMark => ({ key: mark, group: 'single', mark })),
  ...browMarks.flatMap((mark) =>
    sides.map(([letter, side]): NamedMark => ({ key: `${mark}${letter}`, group: 'brow', mark, side })),
  ),
];

function both(points: MarkPoints, mark: FacePair | BrowMark): PairMarks {
  return { right: points[`${mark}R`], left: points[`${mark}L`] };
}

/** The marks of a state as one reading of a face. */
export function markSetOf(points: MarkPoints, taken: Taken): MarkSet {
  return {
    pairs: {
      innerCorner: both(points, 'innerCorner'),
      outerCorner: both(points, 'outerCorner'),
      pupil: both(points, 'pupil'),
      noseWing: both(points, 'noseWing'),
    },
    singles: {
      glabella: points.glabella,
      nasion: points.nasion,
      subnasale: points.subnasale,
      chin: points.chin,
    },
    brows: {
      frontLower: both(points, 'frontLower'),
      frontTop: both(points, 'frontTop'),
      archTop: both(points, 'archTop'),
      archLower: both(points, 'archLower'),
      tail: both(points, 'tail'),
    },
    taken,
  };
}

/** One mark of a reading. */
export function pointOf(set: MarkSet, named: NamedMark): PointMm {
  if (named.group === 'single') return set.singles[named.mark];
  return named.group === 'pair' ? set.pairs[named.mark][named.side] : set.brows[named.mark][named.side];
}
