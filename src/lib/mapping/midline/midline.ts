import type { Line } from '../../geometry/line.ts';
import type { PointMm } from '../../geometry/point.ts';
import { eigen2 } from '../../geometry/eigen2.ts';

/**
 * Two marks that ought to mirror each other. A mark that stands alone is its own partner: the same point
 * twice.
 */
export type MirrorMarks = Readonly<{ right: PointMm; left: PointMm }>;

export type NoMidline = Readonly<{ ok: false; reason: 'marks-do-not-fix-a-midline' }>;
export type MidlineFit =
  | Readonly<{
      ok: true;
      /** The normal points to the client's left. */
      line: Line;
      /** Weighted sum of squared mismatches |left − mirrored right|², mm². */
      costMm2: number;
      /** Gap between the two eigenvalues, mm²: how sharply the marks fix the direction. */
      eigenGapMm2: number;
      /** The same gap as a share of the marks' whole spread, 0 to 1. */
      eigenGapShare: number;
    }>
  | NoMidline;

/** Below this share of the spread, two directions at right angles fit about equally well. */
export const leastEigenGapShare = 0.01;

/**
 * The line in which the marks mirror each other best: least Σ w |left − mirrored right|².
 * With pair means m, single marks and x̄ their weighted mean, A = 4 Σ w (m − x̄)(m − x̄)ᵀ and D = Σ w (L −
 * R)(L − R)ᵀ, the normal is the eigenvector of the least eigenvalue of A − D, and c = n·x̄.
 * Same answer as object symmetry by reflect, relabel and Procrustes (Mardia, Bookstein & Moreton 2000;
 * Klingenberg, Barluenga & Meyer 2002). Weights ≥ 0, one for each entry; left out, all are 1.
 * Refused when the gap is small: all marks on one point, too few marks, or two directions as good as each
 * other.
 */
export function fitMidline(marks: readonly MirrorMarks[], weights?: readonly number[]): MidlineFit {
  let total = 0;
  let xMean = 0;
  let yMean = 0;
  for (let i = 0; i < marks.length; i++) {
    const mark = marks[i];
    if (mark === undefined) continue;
    const w = weights === undefined ? 1 : (weights[i] ?? 0);
    total += w;
    xMean += (w * (mark.right.xMm + mark.left.xMm)) / 2;
    yMean += (w * (mark.right.yMm + mark.left.yMm)) / 2;
  }
  xMean /= total;
  yMean /= total;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let spread = 0;
  let apart = 0;
  let towardsX = 0;
  let towardsY = 0;
  for (let i = 0; i < marks.length; i++) {
    const mark = marks[i];
    if (mark === undefined) continue;
    const w = weights === undefined ? 1 : (weights[i] ?? 0);
    const mx = mark.right.xMm + mark.left.xMm - 2 * xMean;
    const my = mark.right.yMm + mark.left.yMm - 2 * yMean;
    const dx = mark.left.xMm - mark.right.xMm;
    const dy = mark.left.yMm - mark.right.yMm;
    xx += w * (mx * mx - dx * dx);
    xy += w * (mx * my - dx * dy);
    yy += w * (my * my - dy * dy);
    spread += w * (mx * mx + my * my);
    apart += w * (dx * dx + dy * dy);
    towardsX += w * dx;
    towardsY += w * dy;
  }
  const { least, most, leastDirection } = eigen2({ xx, xy, yy });
  const eigenGapShare = (most - least) / (spread + apart);
  if (!(eigenGapShare >= leastEigenGapShare)) return { ok: false, reason: 'marks-do-not-fix-a-midline' };
  // The pairs say which way is the client's left; without pairs it is the picture's right.
  const towardsLeft = leastDirection.x * towardsX + leastDirection.y * towardsY || leastDirection.x;
  const sign = towardsLeft < 0 ? -1 : 1;
  const normal = { x: sign * leastDirection.x, y: sign * leastDirection.y };
  return {
    ok: true,
    line: { normal, offsetMm: normal.x * xMean + normal.y * yMean },
    costMm2: Math.max(0, least + apart),
    eigenGapMm2: most - least,
    eigenGapShare,
  };
}

/**
 * Half the mismatch between a mark and its mirrored partner, mm: for a single mark its distance from the
 * line, for a pair at equal heights the distance of the pair's middle from the line.
 */
export function mismatchMm({ right, left }: MirrorMarks, { normal, offsetMm }: Line): number {
  const across = normal.x * (left.xMm + right.xMm) + normal.y * (left.yMm + right.yMm) - 2 * offsetMm;
  const level = normal.x * (left.yMm - right.yMm) - normal.y * (left.xMm - right.xMm);
  return Math.hypot(across, level) / 2;
}
