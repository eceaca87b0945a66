import { reflectInLine as insideReflect, signedDistanceMm as insideDistance } from '../geometry/line.ts';
import { fitSimilarity as insideFit } from '../geometry/similarity.ts';
import { includesZero as insideIncludes, intervalAround as insideAround } from '../quantities/interval.ts';
import { drawFrom as insideDraw, seedFrom as insideSeed } from '../quantities/seed.ts';
import { between, either, refusing, text, throwing, type Checked } from './domain.ts';
import { factor, interval, line, point, points, seed } from './units.ts';

export type { Checked, NotAccepted } from './domain.ts';
export type { Direction } from '../geometry/direction.ts';
export type { PointMm } from '../geometry/point.ts';
export type { Line } from '../geometry/line.ts';
export type { Similarity, SimilarityFit } from '../geometry/similarity.ts';
export type { Interval } from '../quantities/interval.ts';
export type { Draw } from '../quantities/seed.ts';

/** Distance of a point from a line, positive on the side its normal points to, mm. */
export const signedDistanceMm: typeof insideDistance = throwing(insideDistance, 'point line', point, line);
/** The mirror image of a point in a line. */
export const reflectInLine: typeof insideReflect = throwing(insideReflect, 'point line', point, line);
/** A turn, a size and a shift that carry one list of points onto another as nearly as can be. */
export const fitSimilarity: Checked<typeof insideFit> = refusing(insideFit, 'from to', points, points);
/** value ± k times its standard uncertainty. */
export const intervalAround: typeof insideAround = throwing(
  insideAround,
  'value standardUncertainty k',
  between(-1e6, 1e6),
  between(0, 1e6),
  factor,
);
/** True when zero lies in an interval: the difference is not shown to be real. */
export const includesZero: typeof insideIncludes = throwing(insideIncludes, 'interval', interval);
/** A stream of numbers, 0 ≤ x < 1, from a seed: always the same for the same seed. */
export const drawFrom: typeof insideDraw = throwing(insideDraw, 'seed', seed);

const seedPart = either(text, between(-Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER));

/** One seed from any parts: texts and numbers. */
export function seedFrom(...parts: readonly (string | number)[]): number {
  for (const part of parts)
    if (seedPart.complaint(part)) throw new RangeError('seedFrom: every part must be a text or a number.');
  return insideSeed(...parts);
}
