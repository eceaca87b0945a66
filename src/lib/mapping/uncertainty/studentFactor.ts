import { studentT975 } from '../../tables/studentT.ts';

/**
 * The factor that takes the place of 1.96 where the spread itself was worked out from few readings: Student's
 * t, two-sided 95 %, for at least one degree of freedom. Between two rows of the printed table the upper one
 * counts, so that the interval is never too narrow; below the first row, the first.
 */
export function studentFactor(degreesOfFreedom: number): number {
  const [first] = studentT975;
  let factor = first?.[1] ?? Infinity;
  for (const [row, t] of studentT975) if (row <= degreesOfFreedom) factor = t;
  return factor;
}
