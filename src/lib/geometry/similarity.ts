import type { PointMm } from './point.ts';

/** A turn, a size and a shift that carry one set of points onto another as nearly as can be. */
export type Similarity = Readonly<{
  /** Mean of the target minus mean of the source, mm: the shift of the middle, free of turn and size. */
  shift: PointMm;
  /** Counter-clockwise, degrees. */
  turnDeg: number;
  /** Target size over source size. */
  scale: number;
  /** Target minus carried source, one for each point, mm: the shape that is left. */
  residuals: readonly PointMm[];
  /** Root mean square length of the residuals, mm. */
  residualMm: number;
}>;
export type SimilarityFit =
  | (Similarity & Readonly<{ ok: true }>)
  | Readonly<{ ok: false; reason: 'points-do-not-fix-a-similarity' }>;

/**
 * Least squares t ≈ s e^{iφ} f + b, points read as complex numbers x + iy, both sets centred:
 * s e^{iφ} = Σ conj(f) t / Σ |f|² (Dryden & Mardia, Statistical Shape Analysis, full ordinary Procrustes in
 * the plane).
 * Points are matched by place in the list. Refused when the lists differ in length or the source is a single
 * point.
 */
export function fitSimilarity(from: readonly PointMm[], to: readonly PointMm[]): SimilarityFit {
  const refused = { ok: false, reason: 'points-do-not-fix-a-similarity' } as const;
  if (from.length !== to.length) return refused;
  const fromMean = meanPoint(from);
  const toMean = meanPoint(to);
  let real = 0;
  let imaginary = 0;
  let size = 0;
  const pairs = from.map((f, i) => {
    const t = to[i] ?? f;
    return {
      fx: f.xMm - fromMean.xMm,
      fy: f.yMm - fromMean.yMm,
      tx: t.xMm - toMean.xMm,
      ty: t.yMm - toMean.yMm,
    };
  });
  for (const { fx, fy, tx, ty } of pairs) {
    real += fx * tx + fy * ty;
    imaginary += fx * ty - fy * tx;
    size += fx * fx + fy * fy;
  }
  const a = real / size;
  const b = imaginary / size;
  if (!Number.isFinite(a) || !Number.isFinite(b)) return refused;
  const residuals = pairs.map(({ fx, fy, tx, ty }) => ({
    xMm: tx - (a * fx - b * fy),
    yMm: ty - (b * fx + a * fy),
  }));
  const squares = residuals.reduce((sum, { xMm, yMm }) => sum + xMm * xMm + yMm * yMm, 0);
  return {
    ok: true,
    shift: { xMm: toMean.xMm - fromMean.xMm, yMm: toMean.yMm - fromMean.yMm },
    turnDeg: (Math.atan2(b, a) * 180) / Math.PI,
    scale: Math.hypot(a, b),
    residuals,
    residualMm: Math.sqrt(squares / pairs.length),
  };
}

/** The mean of a list of points; the origin for an empty list. */
function meanPoint(points: readonly PointMm[]): PointMm {
  const n = Math.max(1, points.length);
  let xMm = 0;
  let yMm = 0;
  for (const p of points) {
    xMm += p.xMm / n;
    yMm += p.yMm / n;
  }
  return { xMm, yMm };
}
