import { mappingValues } from '../mapping/numbers/values.ts';
import { drawNormalWithin, drawOne, type Draw } from '../quantities/seed.ts';

/** A normal distribution inside limits: what a practice face's measure is drawn from. */
export type Norm = Readonly<{ mean: number; sd: number; lo: number; hi: number }>;

/**
 * Intercanthal distance, mean and standard deviation of six published cohorts (millimetres). Bouhadana,
 * Gornitsky, Saleh, Trabelsi & Borsuk 2022, Plast Reconstr Surg Glob Open 10:e4268, abstract read: 67
 * studies, 22,638 people. Each face draws one of the six, and nothing else of the face depends on which: no
 * mix of bones, hair and skin stands for a people.
 */
const intercanthalCohortsMm: readonly [Norm, ...Norm[]] = [
  { mean: 38.5, sd: 3.2, lo: 29, hi: 45 },
  { mean: 36.4, sd: 1.6, lo: 29, hi: 45 },
  { mean: 32.8, sd: 2.0, lo: 26, hi: 40 },
  { mean: 32.3, sd: 2.0, lo: 26, hi: 40 },
  { mean: 31.4, sd: 2.5, lo: 25, hi: 40 },
  { mean: 31.2, sd: 1.5, lo: 25, hi: 40 },
];

/**
 * The site's practice spreads. Only the cohorts above and the pupils' mean are published; the others are
 * assumed.
 */
export const practiceNorms = {
  /** Mean: Dodgson 2004. Spread assumed. */
  pupilDistanceMm: { mean: mappingValues['pupils-apart-mm'], sd: 3.5, lo: 54, hi: 73 },
  /** Between the lower front marks. */
  frontGapMm: { mean: 28, sd: 3.4, lo: 19, hi: 38 },
  frontThicknessMm: { mean: 7.3, sd: 1.2, lo: 4.2, hi: 10.5 },
  archThicknessMm: { mean: 6.5, sd: 1.2, lo: 3.4, hi: 9.8 },
  archShare: { mean: 0.62, sd: 0.05, lo: 0.48, hi: 0.76 },
  /** Left minus right, every brow mark alike. */
  heightDifferenceMm: { mean: 0, sd: 1.6, lo: -4.8, hi: 4.8 },
  /** Left brow turned against the mirrored right one; positive: outer end up. */
  browTiltDeg: { mean: 0, sd: 2.6, lo: -7, hi: 7 },
  browSize: { mean: 1, sd: 0.05, lo: 0.86, hi: 1.14 },
  rollDeg: { mean: 0, sd: 3.2, lo: -8, hi: 8 },
  noseLeanMm: { mean: 0, sd: 3, lo: -8, hi: 8 },
} as const satisfies Readonly<Record<string, Norm>>;

export function drawNorm(draw: Draw, { mean, sd, lo, hi }: Norm): number {
  return drawNormalWithin(draw, mean, sd, lo, hi);
}

export function drawIntercanthalMm(draw: Draw): number {
  return drawNorm(draw, drawOne(draw, intercanthalCohortsMm));
}
