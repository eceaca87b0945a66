import { quarterTurn } from '../../geometry/direction.ts';
import type { Line } from '../../geometry/line.ts';
import type { PointMm } from '../../geometry/point.ts';
import type { MirrorMarks, NoMidline } from '../midline/midline.ts';

/** How a number moves when one mark moves 1 mm along the picture's x and along its y. */
export type Pull = Readonly<{ x: number; y: number }>;
export type MarkPulls = Readonly<{ right: Pull; left: Pull }>;

/** How the midline follows its marks: its angle (radians per mm) and its offset at the pivot (mm per mm). */
export type MidlineInfluence = Readonly<{
  ok: true;
  pivot: PointMm;
  angle: readonly MarkPulls[];
  offset: readonly MarkPulls[];
}>;

/**
 * 'whole': through the weights too, as the weights really follow the marks. 'fixed': as if the weights stood
 * still.
 */
export type Through = 'whole' | 'fixed';

/**
 * First-order change of the robust midline with each mark, exact for a fixed cut-off. The fit is where the
 * gradient of Σ ρ(a² + b²) in (θ, c) vanishes, with a = n·(L + R) − 2c across and b = t·(L − R) along the
 * line; so ∂(θ, c)/∂mark = −H⁻¹ ∂gradient/∂mark (implicit function theorem; for an M-estimator, Hampel's
 * influence function).
 * Angles turn about `pivot`, the middle of all marks. A single mark's pulls are the sum of its two sides.
 */
export function midlineInfluence(
  marks: readonly MirrorMarks[],
  line: Line,
  cutOffMm: number,
  through: Through = 'whole',
): MidlineInfluence | NoMidline {
  const n = line.normal;
  const t = quarterTurn(n);
  const count = Math.max(1, marks.length);
  const pivot = {
    xMm: marks.reduce((sum, { right, left }) => sum + (right.xMm + left.xMm) / 2, 0) / count,
    yMm: marks.reduce((sum, { right, left }) => sum + (right.yMm + left.yMm) / 2, 0) / count,
  };
  const cutOff = 4 * cutOffMm * cutOffMm;
  let haa = 0;
  let hac = 0;
  let hcc = 0;
  const slopes = marks.map(({ right, left }) => {
    const sumX = right.xMm + left.xMm - 2 * pivot.xMm;
    const sumY = right.yMm + left.yMm - 2 * pivot.yMm;
    const apartX = left.xMm - right.xMm;
    const apartY = left.yMm - right.yMm;
    const nSum = n.x * sumX + n.y * sumY;
    const tSum = t.x * sumX + t.y * sumY;
    const nApart = n.x * apartX + n.y * apartY;
    const b = t.x * apartX + t.y * apartY;
    const a = nSum - 2 * (line.offsetMm - n.x * pivot.xMm - n.y * pivot.yMm);
    const inside = Math.max(0, 1 - (a * a + b * b) / cutOff);
    const w = inside * inside;
    const slope = through === 'whole' ? (-2 * inside) / cutOff : 0;
    // S = a ∂a/∂θ + b ∂b/∂θ, half the change of a² + b² with the angle.
    const s = a * tSum - b * nApart;
    haa += w * (tSum * tSum - a * nSum + nApart * nApart - b * b) + 2 * slope * s * s;
    hac += -2 * w * tSum - 4 * slope * s * a;
    hcc += 4 * w + 8 * slope * a * a;
    const across = 2 * slope * a;
    const along = 2 * slope * b;
    return {
      leftN: [across * s + w * (tSum - b), -2 * (across * a + w)],
      rightN: [across * s + w * (tSum + b), -2 * (across * a + w)],
      leftT: [along * s + w * (a - nApart), -2 * along * a],
      rightT: [-along * s + w * (a + nApart), 2 * along * a],
    } as const;
  });
  const determinant = haa * hcc - hac * hac;
  if (!(determinant > 0 && hcc > 0)) return { ok: false, reason: 'marks-do-not-fix-a-midline' };
  const angleOf = ([ga, gc]: readonly [number, number]) => (hac * gc - hcc * ga) / determinant;
  const offsetOf = ([ga, gc]: readonly [number, number]) => (hac * ga - haa * gc) / determinant;
  const turned = (alongN: number, alongT: number): Pull => ({
    x: n.x * alongN + t.x * alongT,
    y: n.y * alongN + t.y * alongT,
  });
  return {
    ok: true,
    pivot,
    angle: slopes.map(({ rightN, rightT, leftN, leftT }) => ({
      right: turned(angleOf(rightN), angleOf(rightT)),
      left: turned(angleOf(leftN), angleOf(leftT)),
    })),
    offset: slopes.map(({ rightN, rightT, leftN, leftT }) => ({
      right: turned(offsetOf(rightN), offsetOf(rightT)),
      left: turned(offsetOf(leftN), offsetOf(leftT)),
    })),
  };
}
