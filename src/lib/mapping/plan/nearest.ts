import quadprog from 'quadprog';
import { rowValue, type Holder, type Row } from './row.ts';

export type Nearest = Readonly<{ ok: true; unknowns: readonly number[]; heldBy: readonly Holder[] }> | Readonly<{ ok: false; reason: 'rows-contradict' }>;

/** A row holds the answer when its multiplier is above this. */
const leastPull = 1e-7;
/** Rows are eased by so many parts of the largest number in play. */
const lastBits = 1e-14;
/** A row is missed from so many slips on. */
const missedFrom = 1000;
/** A row missed by less, mm, counts as kept. */
const thinMm = 1e-6;
/** Rows that join the programme at a time. */
const joining = 16;

/**
 * The unknowns nearest to a target, Σ weight × (unknown − target)², that fulfil every row: the dual method of Goldfarb &
 * Idnani (Math. Programming 27:1, 1983). Unknowns are counted from the target, so that an answer near it keeps its digits.
 * Weights above 0. `heldBy` names the rows that keep the answer from the target.
 *
 * Of many rows few hold the answer: the programme begins with none and takes in those that its answer misses by most, until it
 * misses none. An answer to fewer rows that fulfils all is the answer to all; where fewer contradict, so do all.
 */
export function nearest(target: readonly number[], weights: readonly number[], rows: readonly Row[]): Nearest {
  const short = rows.map(({ coefficients, atLeast }) => atLeast - rowValue(coefficients, target));
  // Rows that meet in one point would otherwise take turns at being missed by rounding, for ever.
  const slip = lastBits * (1 + short.reduce((most, missing) => Math.max(most, Math.abs(missing)), 0));
  const taken: number[] = [];
  let moves: readonly number[] = target.map(() => 0);
  let heldBy: readonly Holder[] = [];
  while (true) {
    const missed = rows
      .map(({ coefficients }, at) => ({ at, by: (short[at] ?? 0) - rowValue(coefficients, moves) }))
      .filter(({ by }) => by > missedFrom * slip)
      .sort((a, b) => b.by - a.by);
    const next = missed.slice(0, joining).map(({ at }) => at).filter((at) => !taken.includes(at));
    taken.push(...next);
    const solved = next.length > 0 && solve(weights, taken.flatMap((at) => rows[at] ?? []), taken.map((at, i) => (short[at] ?? 0) - slip * (i + 1)));
    if (!solved) {
      // Where what the rows allow is thinner than this, the method no longer tells it from nothing.
      const isThere = (missed[0]?.by ?? 0) < thinMm;
      return isThere ? { ok: true, unknowns: target.map((value, i) => value + (moves[i] ?? 0)), heldBy } : { ok: false, reason: 'rows-contradict' };
    }
    moves = solved.moves;
    heldBy = taken.flatMap((at, i) => ((solved.multipliers[i] ?? 0) > leastPull ? rows[at]?.holder ?? [] : []));
  }
}

/** The least Σ weight × move² with every row at least its limit; undefined where rows contradict. The package counts from 1. */
function solve(weights: readonly number[], rows: readonly Row[], atLeast: readonly number[]): Readonly<{ moves: readonly number[]; multipliers: readonly number[] }> | undefined {
  const n = weights.length;
  const fromOne = (length: number, make: (i: number) => number): number[] => Array.from({ length: length + 1 }, (_, i) => (i === 0 ? 0 : make(i - 1)));
  const quadratic = Array.from({ length: n + 1 }, (_, i) => fromOne(n, (j) => (i - 1 === j ? (weights[j] ?? 1) : 0)));
  const columns = Array.from({ length: n + 1 }, (_, i) => fromOne(rows.length, (j) => rows[j]?.coefficients[i - 1] ?? 0));
  const solved = quadprog.solveQP(quadratic, fromOne(n, () => 0), columns, fromOne(rows.length, (j) => atLeast[j] ?? 0));
  return solved.message === '' ? { moves: solved.solution.slice(1), multipliers: solved.Lagrangian.slice(1) } : undefined;
}
