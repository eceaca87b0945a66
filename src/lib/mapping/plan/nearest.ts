import quadprog from 'quadprog';
import { rowValue, type Holder, type Row } from './row.ts';

export type Nearest =
  | Readonly<{ ok: true; unknowns: readonly number[]; heldBy: readonly Holder[]; /** The multiplier of each row. */ pulls: readonly number[] }>
  | Readonly<{ ok: false; reason: 'rows-contradict'; /** Places in the list of rows that are at odds: those that held the last answer, and those it missed by most. */ atOdds: readonly number[] }>;

/** A row holds the answer when its multiplier is above this. */
const leastPull = 1e-7;
/** Rows are eased by so many parts of the largest number in play. */
const lastBits = 1e-14;
/** A row is missed from so many slips on. */
const missedFrom = 1000;
/** A row missed by less, mm, counts as kept. */
const thinMm = 1e-6;
/** Missed rows that are named where rows contradict. */
const mostNamed = 3;
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
  let pulls: number[] = [];
  while (true) {
    const missed: Readonly<{ at: number; by: number }>[] = [];
    rows.forEach(({ coefficients }, at) => {
      const by = (short[at] ?? 0) - rowValue(coefficients, moves);
      if (by > missedFrom * slip) missed.push({ at, by });
    });
    missed.sort((a, b) => b.by - a.by);
    const next = missed.slice(0, joining).map(({ at }) => at).filter((at) => !taken.includes(at));
    taken.push(...next);
    const solved = next.length > 0 && solve(weights, taken.flatMap((at) => rows[at] ?? []), taken.map((at, i) => (short[at] ?? 0) - slip * (i + 1)));
    if (!solved) {
      // Where what the rows allow is thinner than this, the method no longer tells it from nothing.
      if ((missed[0]?.by ?? 0) >= thinMm) return { ok: false, reason: 'rows-contradict', atOdds: [...taken.filter((at) => (pulls[at] ?? 0) > 0), ...missed.slice(0, mostNamed).map(({ at }) => at)] };
      const heldBy = rows.flatMap(({ holder }, at) => (holder && (pulls[at] ?? 0) > leastPull ? [holder] : []));
      return { ok: true, unknowns: target.map((value, i) => value + (moves[i] ?? 0)), heldBy, pulls };
    }
    moves = solved.moves;
    pulls = rows.map(() => 0);
    taken.forEach((at, i) => (pulls[at] = solved.multipliers[i] ?? 0));
  }
}

/** The least Σ weight × move² with every row at least its limit; undefined where rows contradict. The package counts from 1. */
function solve(weights: readonly number[], rows: readonly Row[], atLeast: readonly number[]): Readonly<{ moves: readonly number[]; multipliers: readonly number[] }> | undefined {
  const n = weights.length;
  const quadratic = [[0], ...weights.map((weight, i) => {
    const line = new Array<number>(n + 1).fill(0);
    line[i + 1] = weight;
    return line;
  })];
  const columns: number[][] = [[]];
  for (let i = 0; i < n; i++) {
    const column = [0];
    for (const { coefficients } of rows) column.push(coefficients[i] ?? 0);
    columns.push(column);
  }
  const solved = quadprog.solveQP(quadratic, new Array<number>(n + 1).fill(0), columns, [0, ...atLeast]);
  return solved.message === '' ? { moves: solved.solution.slice(1), multipliers: solved.Lagrangian.slice(1) } : undefined;
}
