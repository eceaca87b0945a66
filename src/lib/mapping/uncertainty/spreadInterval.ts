import { chiSquarePoint } from '../../quantities/chiSquare.ts';

/**
 * A spread (technical error or standard deviation) and the two ends between which the true one lies in 95 of
 * 100 cases.
 */
export type SpreadInterval = Readonly<{ value: number; lo: number; hi: number }>;

/**
 * How far a spread is fixed by the readings behind it: s√(ν/χ²) at the upper and lower 2.5 % points, errors
 * normal (NIST/SEMATECH e-Handbook 1.3.5.8). A technical error from N pairs has ν = N, a standard deviation
 * of n readings ν = n − 1.
 * With 20 the ends are 0.77 and 1.44 times the value; with 3 they are 0.57 and 3.7 times. `degreesOfFreedom`:
 * whole, from 1.
 */
export function spreadInterval(value: number, degreesOfFreedom: number): SpreadInterval {
  const end = (share: number) =>
    value * Math.sqrt(degreesOfFreedom / chiSquarePoint(share, degreesOfFreedom));
  return { value, lo: end(0.975), hi: end(0.025) };
}
