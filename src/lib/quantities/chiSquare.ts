import { normalShareBelow } from './normal.ts';

/**
 * Share of a chi-square distribution below x ≥ 0, whole degrees of freedom from 1 to about 300, in closed
 * form:
 * 1 − e^(−x/2) for two, 2Φ(√x) − 1 for one, and for two more each time less (x/2)^(ν/2) e^(−x/2) / Γ(ν/2 + 1)
 * (Abramowitz & Stegun 26.4.8). Absolute error about 1e-13.
 */
export function chiSquareShareBelow(x: number, degreesOfFreedom: number): number {
  if (!(x > 0)) return 0;
  const isOdd = degreesOfFreedom % 2 === 1;
  let share = isOdd ? 2 * normalShareBelow(Math.sqrt(x)) - 1 : -Math.expm1(-x / 2);
  // The first thing to take away: Γ(3/2) = √π/2, Γ(2) = 1.
  let part = isOdd ? Math.sqrt((2 * x) / Math.PI) * Math.exp(-x / 2) : (x / 2) * Math.exp(-x / 2);
  for (let done = isOdd ? 1 : 2; done < degreesOfFreedom; done += 2) {
    share -= part;
    part *= x / (done + 2);
  }
  return share;
}

/** The x with this share below it, 0 < share < 1, by halving an interval: good to 1e-10 of its size. */
export function chiSquarePoint(share: number, degreesOfFreedom: number): number {
  let lo = 0;
  let hi = degreesOfFreedom + 10;
  while (chiSquareShareBelow(hi, degreesOfFreedom) < share) hi *= 2;
  while (hi - lo > 1e-10 * hi) {
    const middle = (lo + hi) / 2;
    if (chiSquareShareBelow(middle, degreesOfFreedom) < share) lo = middle;
    else hi = middle;
  }
  return (lo + hi) / 2;
}
