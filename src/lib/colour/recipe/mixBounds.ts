import { bandCount } from '../spectrum/bands.ts';
import { whiteOf } from '../spectrum/observe.ts';
import { rowWidth } from './bandRows.ts';
import { chromaOf, differenceFloor, lightnessFloor, outside } from './differenceFloor.ts';
import type { Lab } from '../spaces/lab.ts';
import { labRoot } from './labRoot.ts';
import { quickRise } from './skinMap.ts';

/** K and S of every band lie between these: two mixes, as ends. */
export type MixBox = Readonly<{ lo: Float64Array; hi: Float64Array }>;

/** The fraction for √u coth √u moves a reflectance by less than this (mixScorer.ts). */
const fractionError = 8e-6;

/**
 * Lower bounds of ΔE00 over a whole box of mixes. In every band R rises with S and falls with K, so two
 * corners of the box bound it; X, Y, Z and the differences X − Y, Y − Z (each over its white) are sums of
 * bands with known signs. The root f of CIELAB rises and bends down, so f(y + d) − f(y) rises with d and, for
 * one d, is extreme at an end of y.
 */
export function mixBounds(rows: Float64Array, target: Lab) {
  const white = whiteOf('D65');
  const targetChroma = chromaOf(target);
  /** Lowest and highest Y, X − Y and Y − Z of the last box. */
  const last = new Float64Array(6);

  const measure = ({ lo, hi }: MixBox, amount: number, fromBand: number): void => {
    let yLo = 0;
    let yHi = 0;
    let xyLo = 0;
    let xyHi = 0;
    let yzLo = 0;
    let yzHi = 0;
    for (let i = fromBand, row = fromBand * rowWidth; i < bandCount; i++, row += rowWidth) {
      const dark = seen(row, amount * (hi[2 * i] ?? 0), amount * (lo[2 * i + 1] ?? 0)) - fractionError;
      const light = seen(row, amount * (lo[2 * i] ?? 0), amount * (hi[2 * i + 1] ?? 0)) + fractionError;
      const y = rows[row + 6] ?? 0;
      const xy = (rows[row + 5] ?? 0) / white.x - y / white.y;
      const yz = y / white.y - (rows[row + 7] ?? 0) / white.z;
      yLo += y * dark;
      yHi += y * light;
      xyLo += xy * (xy > 0 ? dark : light);
      xyHi += xy * (xy > 0 ? light : dark);
      yzLo += yz * (yz > 0 ? dark : light);
      yzHi += yz * (yz > 0 ? light : dark);
    }
    last[0] = yLo;
    last[1] = yHi;
    last[2] = xyLo;
    last[3] = xyHi;
    last[4] = yzLo;
    last[5] = yzHi;
  };
  const seen = (row: number, k: number, s: number): number => {
    const c = quickRise(k * (k + 2 * s));
    return (
      ((rows[row] ?? 0) * s + (rows[row + 1] ?? 0) * k + (rows[row + 2] ?? 0) * c) /
      ((rows[row + 3] ?? 0) * s + (rows[row + 4] ?? 0) * k + c)
    );
  };

  return {
    /** The lowest ΔE00 that any mix of the box, times the amount, could have. */
    floor: (box: MixBox, amount: number): number => {
      measure(box, amount, 0);
      const [yLo, yHi] = [Math.max(0, (last[0] ?? 0) / white.y), (last[1] ?? 0) / white.y];
      const [fLo, fHi] = [labRoot(yLo), labRoot(yHi)];
      const lLo = 116 * fLo - 16;
      const lHi = 116 * fHi - 16;
      const l = Math.min(lHi, Math.max(lLo, target.l));
      const bLo = 200 * Math.min(fLo - labRoot(yLo - (last[4] ?? 0)), fHi - labRoot(yHi - (last[4] ?? 0)));
      if (!(bLo > 0 && target.b > 0)) return lightnessFloor(l, target.l);
      const bHi = 200 * Math.max(fLo - labRoot(yLo - (last[5] ?? 0)), fHi - labRoot(yHi - (last[5] ?? 0)));
      const aLo = 500 * Math.min(labRoot(yLo + (last[2] ?? 0)) - fLo, labRoot(yHi + (last[2] ?? 0)) - fHi);
      const aHi = 500 * Math.max(labRoot(yLo + (last[3] ?? 0)) - fLo, labRoot(yHi + (last[3] ?? 0)) - fHi);
      return differenceFloor(
        l,
        target.l,
        Math.hypot(outside(target.a, aLo, aHi), outside(target.b, bLo, bHi)),
        targetChroma,
      );
    },
    /** The least and the most that the bands from one on add to Y. */
    restOfY: (box: MixBox, amount: number, fromBand: number): readonly [number, number] => {
      measure(box, amount, fromBand);
      return [last[0] ?? 0, last[1] ?? 0];
    },
  };
}
