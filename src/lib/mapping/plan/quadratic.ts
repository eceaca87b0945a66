// The package has no types: a file outside that reads this source finds them by this line.
// oxlint-disable-next-line typescript/triple-slash-reference
/// <reference path="../quadprog.d.ts" />
import quadprog from 'quadprog';

export type Solved = Readonly<{ unknowns: readonly number[]; multipliers: readonly number[] }>;

/**
 * The least ½ xᵀQx − pᵀx with every row, Σ coefficient × x, at least its limit: the dual method of Goldfarb &
 * Idnani (Math. Programming 27:1, 1983). Q must bend upwards every way. Undefined where rows contradict. The
 * package counts from 1.
 */
export function leastQuadratic(
  bend: readonly (readonly number[])[],
  pull: readonly number[],
  rows: readonly (readonly number[])[],
  atLeast: readonly number[],
): Solved | undefined {
  const columns: number[][] = [[]];
  for (let i = 0; i < pull.length; i++) {
    const column = [0];
    for (const row of rows) column.push(row[i] ?? 0);
    columns.push(column);
  }
  const solved = quadprog.solveQP([[0], ...bend.map((line) => [0, ...line])], [0, ...pull], columns, [
    0,
    ...atLeast,
  ]);
  return solved.message === ''
    ? { unknowns: solved.solution.slice(1), multipliers: solved.Lagrangian.slice(1) }
    : undefined;
}
