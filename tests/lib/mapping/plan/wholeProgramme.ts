import quadprog from 'quadprog';
import { type Row } from '#lib/mapping/plan/row.ts';

/** Every row handed to the package at once; it counts from 1. */
export function wholeProgramme(target: readonly number[], weights: readonly number[], rows: readonly Row[]) {
  const quadratic = [
    [],
    ...weights.map((weight, i) => [0, ...weights.map((_, j) => (i === j ? weight : 0))]),
  ];
  const columns = [[], ...target.map((_, i) => [0, ...rows.map(({ coefficients }) => coefficients[i] ?? 0)])];
  return quadprog.solveQP(quadratic, [0, ...target.map((value, i) => value * (weights[i] ?? NaN))], columns, [
    0,
    ...rows.map(({ atLeast }) => atLeast),
  ]);
}
