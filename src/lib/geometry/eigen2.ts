import { directionAt, quarterTurn, type Direction } from './direction.ts';

/** A symmetric matrix [[xx, xy], [xy, yy]]. */
export type Symmetric2 = Readonly<{ xx: number; xy: number; yy: number }>;
export type Eigen2 = Readonly<{
  least: number;
  most: number;
  leastDirection: Direction;
  mostDirection: Direction;
}>;

/**
 * Eigenvalues and eigenvectors of a symmetric 2 × 2 matrix, in closed form: one plane (Jacobi) rotation by
 * ½ atan2(2 xy, xx − yy) makes it diagonal (Golub & Van Loan, Matrix Computations, 8.5).
 * Where both values are equal every direction is an eigenvector; the x axis is returned as `mostDirection`.
 */
export function eigen2({ xx, xy, yy }: Symmetric2): Eigen2 {
  const centre = (xx + yy) / 2;
  const halfGap = Math.hypot((xx - yy) / 2, xy);
  const mostDirection = directionAt(Math.atan2(2 * xy, xx - yy) / 2);
  return {
    least: centre - halfGap,
    most: centre + halfGap,
    leastDirection: quarterTurn(mostDirection),
    mostDirection,
  };
}
