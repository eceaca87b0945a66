import type { Lab } from './lab.ts';

/** Lightness, chroma, and the hue angle in degrees, 0 ≤ h < 360; 0 is red, 90 yellow. A grey has hue 0. */
export type Lch = Readonly<{ l: number; c: number; hDeg: number }>;

/** The hue angle of a pair of coordinates, 0 ≤ h < 360. */
export function hueDeg(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}

/** Half a turn with room for rounding: exactly opposite hues count as no more than half a turn, whatever their last digits. */
export const halfTurnDeg = 180 + 1e-9;

/** The shorter way round from one hue to the other, −180 ≤ d ≤ 180, to rounding. */
export function hueStepDeg(fromDeg: number, toDeg: number): number {
  const step = toDeg - fromDeg;
  if (step > halfTurnDeg) return step - 360;
  return step < -halfTurnDeg ? step + 360 : step;
}

export function labToLch({ l, a, b }: Lab): Lch {
  return { l, c: Math.hypot(a, b), hDeg: hueDeg(a, b) };
}

export function lchToLab({ l, c, hDeg }: Lch): Lab {
  const angle = (hDeg * Math.PI) / 180;
  return { l, a: c * Math.cos(angle), b: c * Math.sin(angle) };
}
