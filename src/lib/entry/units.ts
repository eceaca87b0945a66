import type { PointMm } from '../geometry/point.ts';
import type { Line } from '../geometry/line.ts';
import type { Interval } from '../quantities/interval.ts';
import { also, between, each, list, shape, whole, type Domain } from './domain.ts';

// The ranges of the entry, by what is measured. They are wide: beyond them a number has the wrong unit or sign, or comes of no face and no skin.

/** A coordinate in a picture, mm. */
export const coordinateMm = between(-10_000, 10_000);
/** A coordinate on a face or a difference of two, mm. */
export const onFaceMm = between(-1000, 1000);
/** A length or an uncertainty, mm. */
export const lengthMm = between(0, 1000);
/** A technical error or a half-width, mm. */
export const errorMm = between(0, 50);
/** 0.6, never 60. */
export const share = between(0, 1);
export const degrees = between(-360, 360);
/** A coverage factor: 1.96 and the like. */
export const factor = between(0, 50);
export const years = between(0, 100);
/** Whole, and held exactly. */
export const seed = whole(0, Number.MAX_SAFE_INTEGER);
export const draws = whole(1, 100_000);
export const most = 100_000;

const direction = also(
  shape<{ x: number; y: number }>({ x: between(-1, 1), y: between(-1, 1) }),
  ({ x, y }) => Math.abs(Math.hypot(x, y) - 1) < 1e-6,
  'be a direction of length 1',
);
export const unitDirection = direction;
export const point: Domain<PointMm> = shape<PointMm>({ xMm: coordinateMm, yMm: coordinateMm });
export const points = list(point, most);
export const line: Domain<Line> = shape<Line>({ normal: direction, offsetMm: between(-20_000, 20_000) });
const intervalParts = shape<Interval>({
  value: between(-1e6, 1e6),
  lo: between(-1e8, 1e8),
  hi: between(-1e8, 1e8),
  standardUncertainty: between(0, 1e6),
  k: factor,
});
export const interval: Domain<Interval> = also(
  intervalParts,
  ({ lo, hi }) => lo <= hi,
  'have lo no higher than hi',
);

export const sides = ['right', 'left'] as const;
/** One of a kind for the client's right and left. */
export const bothSides = <T>(part: Domain<T>): Domain<Readonly<Record<(typeof sides)[number], T>>> =>
  each(sides, part);
