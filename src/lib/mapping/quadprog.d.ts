/** The package carries no types. Arrays are counted from 1: index 0 is not used. */
declare module 'quadprog' {
  type Vector = (number | undefined)[];
  type Matrix = (Vector | undefined)[];
  /** Least of ½ bᵀDb − dᵀb subject to Aᵀb ≥ b₀, the first `meq` rows as equalities (Goldfarb & Idnani 1983). */
  export function solveQP(
    Dmat: Matrix,
    dvec: Vector,
    Amat: Matrix,
    bvec?: Vector,
    meq?: number,
  ): { solution: number[]; Lagrangian: number[]; value: number[]; unconstrained_solution: number[]; iterations: number[]; iact: number[]; message: string };
  const quadprog: { solveQP: typeof solveQP };
  export default quadprog;
}
