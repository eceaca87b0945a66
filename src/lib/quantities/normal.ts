/** Density of the standard normal distribution. */
export function normalDensity(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Share of a standard normal distribution below x: ½ + φ(x)(x + x³/3 + x⁵/(3·5) + …), the series of
 * Marsaglia, "Evaluating the normal distribution", J. Stat. Software 11(4), 2004. Absolute error about 1e-15;
 * |x| ≤ 8.
 */
export function normalShareBelow(x: number): number {
  if (x < -8) return 0;
  if (x > 8) return 1;
  let term = x;
  let sum = x;
  for (let i = 3; sum + term !== sum; i += 2) {
    term *= (x * x) / i;
    sum += term;
  }
  return 0.5 + sum * normalDensity(x);
}

/**
 * The x that leaves a share above it, 0 < shareAbove ≤ 0.5, by Newton's method from 0: on this side the share
 * is concave, so the steps climb to the answer and never pass it. Good to 1e-9 down to shares of about 1e-7.
 */
export function normalUpperPoint(shareAbove: number): number {
  let x = 0;
  for (let step = 0; step < 60; step++) {
    const change = (1 - shareAbove - normalShareBelow(x)) / normalDensity(x);
    x += change;
    if (Math.abs(change) < 1e-13) break;
  }
  return x;
}
