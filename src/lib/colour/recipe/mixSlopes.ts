import { bandCount } from '../spectrum/bands.ts';
import { rise } from '../layers/kubelkaMunk.ts';
import { whiteOf } from '../spectrum/observe.ts';
import type { Lab } from '../spaces/lab.ts';
import { rowWidth } from './bandRows.ts';
import { chromaOf } from './differenceFloor.ts';
import { labRoot } from './labRoot.ts';
import type { MixBox } from './mixBounds.ts';
import { quickDifference } from './quickDifference.ts';
import { quickRise } from './skinMap.ts';

/**
 * Numbers to a cell: Y, X − Y and Y − Z (each over its white) in its middle with four slopes each, then how
 * far L* and a*b* may be off.
 */
export const slopesWidth = 17;

/**
 * The fraction for √u coth √u moves a reflectance by less than this, and itself by less than so much of it
 * (mixScorer.ts).
 */
const fractionError = 8e-6;

/** Room for rounding, and for what bottles hold beyond their pigments. */
const slack = 1e-7;

/** The middle of a cell, its ends, and what half a slot along each axis adds to K and S; all at unit dose. */
export type MixCell = Readonly<{ middle: Float64Array; box: MixBox; halves: readonly Float64Array[] }>;

/**
 * The colours of a cell as straight lines. Along a way from the middle R = N/D with N, D straight in S, K and
 * C, so that R′ = (N′ − R·D′)/D and R″ = ((n3 − R)·C″ − 2·D′·R′)/D; a straight line is off by at most half
 * the largest |R″| of the cell.
 * C = √u coth √u = 1 + 2 Σ u/(u + k²π²) over k = 1, 2, … rises and bends down: 0 < C′ ≤ min(1/3, 1/(2√u)) and
 * |C″| ≤ 2·C′/(u + π²) by u, both largest at the least u. Sums of bands give the errors of Y, X − Y and Y −
 * Z.
 * L*, a* and b* follow by the root f: f(y) is off by f′ times the error of y; f(y + d) − f(y) by f′ times the
 * error of d, and by the error of y times as much as f′ varies over the cell.
 */
export function mixSlopes(rows: Float64Array, target: Lab) {
  const white = whiteOf('D65');
  const nearBy = quickDifference(target);
  const targetChroma = chromaOf(target);
  const values = new Float64Array(15);
  const errors = new Float64Array(3);

  const addBand = (band: number, { middle, box, halves }: MixCell, amount: number): void => {
    const row = band * rowWidth;
    const n1 = rows[row] ?? 0;
    const n2 = rows[row + 1] ?? 0;
    const n3 = rows[row + 2] ?? 0;
    const m1 = rows[row + 3] ?? 0;
    const m2 = rows[row + 4] ?? 0;
    const k = amount * (middle[2 * band] ?? 0);
    const s = amount * (middle[2 * band + 1] ?? 0);
    const kLo = Math.min(k, amount * (box.lo[2 * band] ?? 0));
    const kHi = Math.max(k, amount * (box.hi[2 * band] ?? 0));
    const sLo = Math.min(s, amount * (box.lo[2 * band + 1] ?? 0));
    const sHi = Math.max(s, amount * (box.hi[2 * band + 1] ?? 0));
    const u = k * (k + 2 * s);
    const c = rise({ k, s });
    const d = m1 * s + m2 * k + c;
    const r = (n1 * s + n2 * k + n3 * c) / d;
    const cu = riseSlope(u, c);
    const byC = (n3 - r) * cu * 2;
    const byK = (n2 - m2 * r + byC * (k + s)) / d;
    const byS = (n1 - m1 * r + byC * k) / d;

    const uLo = kLo * (kLo + 2 * sLo);
    const cuMost = Math.min(1 / 3, 0.5 / Math.sqrt(uLo));
    const dk = Math.max(kHi - k, k - kLo);
    const ds = Math.max(sHi - s, s - sLo);
    const u1 = 2 * (kHi + sHi) * dk + 2 * kHi * ds;
    const c1 = cuMost * u1;
    const c2 = ((2 * cuMost) / (uLo + Math.PI ** 2)) * u1 * u1 + cuMost * (2 * dk * dk + 4 * dk * ds);
    const dLo = (m1 * sLo + m2 * kLo + quickRise(uLo)) * (1 - fractionError);
    const rLo = seen(row, kHi, sLo) - fractionError;
    const rHi = seen(row, kLo, sHi) + fractionError;
    const most = (n: number, m: number) => Math.max(Math.abs(n - m * rLo), Math.abs(n - m * rHi));
    const r1 = (most(n1, m1) * ds + most(n2, m2) * dk + most(n3, 1) * c1) / dLo;
    const bend = (most(n3, 1) * c2 + 2 * (m1 * ds + m2 * dk + c1) * r1) / dLo / 2;

    const y = (rows[row + 6] ?? 0) / white.y;
    const xy = (rows[row + 5] ?? 0) / white.x - y;
    const yz = y - (rows[row + 7] ?? 0) / white.z;
    for (let axis = -1; axis < 4; axis++) {
      const half = halves[axis];
      const add =
        axis < 0
          ? r
          : half
            ? 2 * amount * (byK * (half[2 * band] ?? 0) + byS * (half[2 * band + 1] ?? 0))
            : 0;
      const at = axis + 1;
      values[at] = (values[at] ?? 0) + y * add;
      values[at + 5] = (values[at + 5] ?? 0) + xy * add;
      values[at + 10] = (values[at + 10] ?? 0) + yz * add;
    }
    errors[0] = (errors[0] ?? 0) + y * bend;
    errors[1] = (errors[1] ?? 0) + Math.abs(xy) * bend;
    errors[2] = (errors[2] ?? 0) + Math.abs(yz) * bend;
  };
  const seen = (row: number, k: number, s: number): number => {
    const c = quickRise(k * (k + 2 * s));
    return (
      ((rows[row] ?? 0) * s + (rows[row + 1] ?? 0) * k + (rows[row + 2] ?? 0) * c) /
      ((rows[row + 3] ?? 0) * s + (rows[row + 4] ?? 0) * k + c)
    );
  };
  /** The most that Y plus so many times a difference moves over the cell, errors and all. */
  const reachOf = (from: number, times: number): number => {
    let sum = (errors[0] ?? 0) + (from > 0 ? (errors[from / 5] ?? 0) : 0);
    for (let axis = 1; axis <= 4; axis++)
      sum += Math.abs((values[axis] ?? 0) + (from > 0 ? times * (values[from + axis] ?? 0) : 0)) / 2;
    return sum;
  };

  return {
    /** Writes the lines of a cell at a dose from a place on. Returns how far L*, a* and b* may be off. */
    fill: (
      cell: MixCell,
      amount: number,
      into: Float64Array,
      at: number,
    ): readonly [number, number, number] => {
      values.fill(0);
      errors.fill(slack);
      for (let band = 0; band < bandCount; band++) addBand(band, cell, amount);
      // Shares that add to more than 1 leave less than none of a pigment: such a middle has no colour, and
      // nothing is said.
      if (cell.middle.some((value) => value < 0)) values.fill(NaN);
      into.set(values, at);
      const [eY, eXY, eYZ] = [errors[0] ?? 0, errors[1] ?? 0, errors[2] ?? 0];
      const y = values[0] ?? 0;
      const x = y + (values[5] ?? 0);
      const z = y - (values[10] ?? 0);
      const [aboutY, aboutX, aboutZ] = [reachOf(0, 0), reachOf(5, 1), reachOf(10, -1)];
      const varies = (other: number, about: number) =>
        rootSlope(Math.min(y - aboutY, other - about)) - rootSlope(Math.max(y + aboutY, other + about));
      const offA = 500 * (rootSlope(x - aboutX) * eXY + varies(x, aboutX) * eY);
      const offB = 200 * (rootSlope(z - aboutZ) * eYZ + varies(z, aboutZ) * eY);
      const offL = 116 * rootSlope(y - aboutY) * eY;
      into[at + 15] = offL;
      into[at + 16] = Math.hypot(offA, offB);
      return [offL, offA, offB];
    },
    /**
     * The lowest ΔE00 that a mix can have at a place of the cell, each from −½ to ½ from its middle. 0 where
     * a hue says too little.
     */
    floorAt: (lines: Float64Array, at: number, p0: number, p1: number, p2: number, p3: number): number => {
      const y =
        (lines[at] ?? 0) +
        (lines[at + 1] ?? 0) * p0 +
        (lines[at + 2] ?? 0) * p1 +
        (lines[at + 3] ?? 0) * p2 +
        (lines[at + 4] ?? 0) * p3;
      const xy =
        (lines[at + 5] ?? 0) +
        (lines[at + 6] ?? 0) * p0 +
        (lines[at + 7] ?? 0) * p1 +
        (lines[at + 8] ?? 0) * p2 +
        (lines[at + 9] ?? 0) * p3;
      const yz =
        (lines[at + 10] ?? 0) +
        (lines[at + 11] ?? 0) * p0 +
        (lines[at + 12] ?? 0) * p1 +
        (lines[at + 13] ?? 0) * p2 +
        (lines[at + 14] ?? 0) * p3;
      const offL = lines[at + 15] ?? 0;
      const offAB = lines[at + 16] ?? 0;
      const fy = labRoot(y);
      const a = 500 * (labRoot(y + xy) - fy);
      const b = 200 * (fy - labRoot(y - yz));
      if (!(target.b > 0 && b > offAB && a * a + b * b > (targetChroma / 3 + offAB) ** 2)) return 0;
      const score = nearBy(116 * fy - 16, a, b);
      return score - mostMove(score, offL, offAB);
    },
  };
}

/**
 * ΔE00 from a colour `score` away from a target moves by at most this where L* moves by `offL` and a*b* by
 * `offAB`, both b* above 0 and the chroma at least a third of the target’s. In its terms ΔL/S_L, ΔC/S_C and
 * ΔH/S_H the differences move by 1 and, stretched, by 1.5; the weights, which are 1 and more, move by less
 * than 0.008, 0.0225·1.5 and 0.036·1.5 a unit, and a term that is no larger than the score moves by no more
 * than the score times that.
 */
export function mostMove(score: number, offL: number, offAB: number): number {
  return offL * (1 + 0.01 * score) + offAB * (1.5 + 0.09 * score);
}

/** The slope of √u coth √u by u: (C + u − C²)/2u, near 0 by its series. */
export function riseSlope(u: number, c: number): number {
  return u < 1e-3 ? 1 / 3 - u * (2 / 45 - u * (2 / 315)) : (c + u - c * c) / (2 * u);
}

/** The slope of the root of CIELAB: it falls, and is straight near black. */
function rootSlope(ratio: number): number {
  return ratio > 216 / 24389 ? 1 / (3 * Math.cbrt(ratio) ** 2) : 841 / 108;
}
