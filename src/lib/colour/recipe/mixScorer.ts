import { bandCount } from '../spectrum/bands.ts';
import { ciede2000 } from '../spaces/ciede2000.ts';
import { rise } from '../layers/kubelkaMunk.ts';
import { xyzToLab, type Lab } from '../spaces/lab.ts';
import { whiteOf } from '../spectrum/observe.ts';
import { bandRows, rowWidth } from './bandRows.ts';
import { labRoot } from './labRoot.ts';
import { quickDifference } from './quickDifference.ts';
import type { RecipeTask } from './recipeTask.ts';
import { largestFitted, riseOver, riseUnder } from './skinMap.ts';

/** After this many bands, in the order of their weight in lightness, the rest can hardly move Y. */
export const firstBands = 16;
/**
 * Quick scores are given only this near the target, darker, greener or yellower than it; beyond, the fine
 * score stands in.
 */
const nearDarker = 6;
const nearAside = 10;
/** A relative error of C at most, and so of a reflectance. */
const fractionError = 7.8e-6;

/**
 * The quick score's error. C = √u coth √u is off by at most 7.8e-6 of itself, and R = (n1 S + n2 K + n3
 * C)/(m1 S + m2 K + C) with m1, m2 not below 0 and n3 (the bare skin) and R between 0 and 1, so dR = (n3 − R)
 * dC/(m1 S + m2 K + C) and
 * |dR| ≤ 7.8e-6 in every band: X, Y and Z stay within 7.8e-6 of their white. The root f of CIELAB rises by
 * 1/3f² a unit at most, above its straight line by 1/3f² itself. A quick score is only given where L*, a* and
 * −b* are no lower than the target’s less a step, which bounds f(Y), f(X) = f(Y) + a* : 500 and f(Z) = f(Y) −
 * b* : 200 from below. So L* is off by 116 df(Y), a* by 500 (df(X) + df(Y)), b* by 200 (df(Y) + df(Z)); ΔE00
 * moves by at most 1 for a unit of L* and by at most 2 for a unit of a*b* (the stretch of a* by 1.5, and the
 * weights, which depend on the colour too).
 */
export function screenError({ l, a, b }: Lab): number {
  const fy = (l - nearDarker + 16) / 116;
  const slope = (f: number) => fractionError * Math.min(841 / 108, 1 / (3 * Math.max(0, f) ** 2));
  const dy = slope(fy);
  const dx = slope(fy + (a - nearAside) / 500);
  const dz = slope(fy - (b + nearAside) / 200);
  return 116 * dy + 2 * Math.hypot(500 * (dx + dy), 200 * (dy + dz));
}

/** The error anywhere: with every slope at its steepest. */
export const mostScreenError = 116 * 6.1e-5 + 2 * Math.hypot(500 * 1.22e-4, 200 * 1.22e-4);

export type MixScorer = Readonly<{
  /**
   * ΔE00 of the mix `base + count · unit`, times `amount`, within `screenError` of the target if it is at
   * most `limit`; Infinity, or a number above `limit`, where it lies above it, the limit counted with
   * `mostScreenError` of room. Infinity also where Y lies outside `yLo` to `yHi`. `restLo` and `restHi` bound
   * what the bands after the first add to Y.
   */
  quick: (
    bases: Float64Array,
    baseAt: number,
    units: Float64Array,
    unitAt: number,
    count: number,
    amount: number,
    limit: number,
    yLo: number,
    yHi: number,
    restLo: number,
    restHi: number,
  ) => number;
  /** ΔE00 of a mix times an amount, to rounding: the definition's sum in another order. */
  fine: (mix: Float64Array, at: number, amount: number) => number;
  /** The colour of a mix times an amount, to rounding. */
  labOf: (mix: Float64Array, at: number, amount: number) => Lab;
}>;

/** Scores mixes against the target of a task. */
export function mixScorer(task: Pick<RecipeTask, 'skin' | 'setting' | 'target'>): MixScorer {
  const rows = bandRows(task);
  const { target } = task;
  const white = whiteOf('D65');
  const nearBy = quickDifference(target);
  const scratch = new Float64Array(2 * bandCount);

  const labOf = (mix: Float64Array, at: number, amount: number): Lab => {
    let x = 0;
    let y = 0;
    let z = 0;
    for (let i = 0, row = 0; i < bandCount; i++, row += rowWidth) {
      const k = amount * (mix[at + 2 * i] ?? 0);
      const s = amount * (mix[at + 2 * i + 1] ?? 0);
      const c = rise({ k, s });
      const r =
        ((rows[row] ?? 0) * s + (rows[row + 1] ?? 0) * k + (rows[row + 2] ?? 0) * c) /
        ((rows[row + 3] ?? 0) * s + (rows[row + 4] ?? 0) * k + c);
      x += r * (rows[row + 5] ?? 0);
      y += r * (rows[row + 6] ?? 0);
      z += r * (rows[row + 7] ?? 0);
    }
    return xyzToLab({ x, y, z }, white);
  };
  const fine = (mix: Float64Array, at: number, amount: number): number =>
    ciede2000(labOf(mix, at, amount), target);

  const slowly = (
    bases: Float64Array,
    baseAt: number,
    units: Float64Array,
    unitAt: number,
    count: number,
    amount: number,
  ): number => {
    for (let i = 0; i < 2 * bandCount; i++)
      scratch[i] = (bases[baseAt + i] ?? 0) + count * (units[unitAt + i] ?? 0);
    return fine(scratch, 0, amount);
  };

  const quick: MixScorer['quick'] = (
    bases,
    baseAt,
    units,
    unitAt,
    count,
    amount,
    limit,
    yLo,
    yHi,
    restLo,
    restHi,
  ) => {
    let x = 0;
    let y = 0;
    let z = 0;
    const share = count * amount;
    for (
      let i = 0, row = 0, place = baseAt, unit = unitAt;
      i < bandCount;
      i++, row += rowWidth, place += 2, unit += 2
    ) {
      if (i === firstBands && (y + restHi < yLo || y + restLo > yHi)) return Infinity;
      const k = amount * (bases[place] ?? 0) + share * (units[unit] ?? 0);
      const s = amount * (bases[place + 1] ?? 0) + share * (units[unit + 1] ?? 0);
      // The fraction p/q of skinMap.ts, with q multiplied through: one division a band.
      const u = k * (k + 2 * s);
      if (u > largestFitted) return slowly(bases, baseAt, units, unitAt, count, amount);
      const p = riseOver(u);
      const q = riseUnder(u);
      const r =
        (((rows[row] ?? 0) * s + (rows[row + 1] ?? 0) * k) * q + (rows[row + 2] ?? 0) * p) /
        (((rows[row + 3] ?? 0) * s + (rows[row + 4] ?? 0) * k) * q + p);
      x += r * (rows[row + 5] ?? 0);
      y += r * (rows[row + 6] ?? 0);
      z += r * (rows[row + 7] ?? 0);
    }
    if (y < yLo || y > yHi) return Infinity;
    const fy = labRoot(y / white.y);
    const l = 116 * fy - 16;
    const a = 500 * (labRoot(x / white.x) - fy);
    const b = 200 * (fy - labRoot(z / white.z));
    const score = b > 0 && target.b > 0 ? nearBy(l, a, b) : ciede2000({ l, a, b }, target);
    if (score > limit + mostScreenError) return score;
    if (l >= target.l - nearDarker && a >= target.a - nearAside && b <= target.b + nearAside) return score;
    return slowly(bases, baseAt, units, unitAt, count, amount);
  };
  return { quick, fine, labOf };
}
