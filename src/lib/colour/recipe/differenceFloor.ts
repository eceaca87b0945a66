import type { Lab } from '../spaces/lab.ts';

/**
 * Lower bounds of CIEDE2000 that cost next to nothing. Its last line is √(l² + c² + h² + R·c·h) with |R| < 2,
 * so it is never below |l| = |ΔL*|/S_L. S_L depends on the mean lightness and grows by less than 0.008 a unit
 * of ΔL*, so |ΔL*|/S_L rises with |ΔL*| and a window of lightness follows from a limit.
 *
 * Where both b* lie above 0, the mean hue lies between 0° and 180°, at least 95° from 275°, and |R| < 1.2e-6:
 * the turn is nothing. Then c² + h² ≥ (ΔC′² + ΔH′²)/S_C², because S_H = 1 + 0.015·C·T with T < 2 never
 * exceeds S_C = 1 + 0.045·C; and ΔC′² + ΔH′² = Δa′² + Δb*² ≥ Δa*² + Δb*², since a′ is a* stretched by 1 to
 * 1.5. The mean of C′ is at most 1.5 times that of two chromas, the second at most as far from the target's
 * as the two colours are apart.
 */
export function chromaFloor(apart: number, targetChroma: number): number {
  return (0.999999 * apart) / (1 + 0.0675 * targetChroma + 0.03375 * apart);
}

/**
 * Below this floor of lightness and chroma no ΔE00 can fall: both count in squares. `apart` is the distance
 * in a*b*, both b* above 0.
 */
export function differenceFloor(awayL: number, targetL: number, apart: number, targetChroma: number): number {
  return Math.hypot(lightnessFloor(awayL, targetL), chromaFloor(apart, targetChroma));
}

/** |ΔL*|/S_L for a colour of lightness `l`. */
export function lightnessFloor(l: number, targetL: number): number {
  const from50 = ((l + targetL) / 2 - 50) ** 2;
  return Math.abs(l - targetL) / (1 + (0.015 * from50) / Math.sqrt(20 + from50));
}

const halvings = 30;

/**
 * The lightest or the darkest L* whose floor stays within a limit: −16 to 200 stand for no end. Errs
 * outwards.
 */
export function lightnessEdge(targetL: number, limit: number, end: 'darkest' | 'lightest'): number {
  let [within, beyond] = [targetL, end === 'darkest' ? -16 : 200];
  if (lightnessFloor(beyond, targetL) <= limit) return beyond;
  for (let i = 0; i < halvings; i++) {
    const middle = (within + beyond) / 2;
    if (lightnessFloor(middle, targetL) <= limit) within = middle;
    else beyond = middle;
  }
  return beyond;
}

/** How far outside an interval a value lies. */
export function outside(value: number, lo: number, hi: number): number {
  return Math.max(0, lo - value, value - hi);
}

/** Chroma of a target, for the floors. */
export function chromaOf({ a, b }: Lab): number {
  return Math.hypot(a, b);
}
