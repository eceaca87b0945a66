import { leastQuadratic } from './quadratic.ts';
import type { Holder, Row } from './row.ts';

export type Nearest =
  | Readonly<{
      ok: true;
      unknowns: readonly number[];
      heldBy: readonly Holder[];
      /** The multiplier of each row. */
      pulls: readonly number[];
    }>
  | Readonly<{ ok: false; reason: 'rows-contradict' }>;

/** A row holds the answer when its multiplier is above this. */
const leastPull = 1e-7;
/** Rows are eased by so many parts of the largest number in play. */
const lastBits = 1e-14;
/** A row is missed from so many slips on. */
const missedFrom = 1000;
/** A row missed by less, mm, counts as kept. */
const thinMm = 1e-6;
/** Rows that join the programme at a time. */
const joining = 12;

/**
 * The unknowns nearest to a target, Σ weight × (unknown − target)², that fulfil every row. Unknowns are counted from the target, so that an answer
 * near it keeps its digits.
 * Weights above 0. `heldBy` names the rows that keep the answer from the target.
 *
 * Of many rows few hold the answer: the programme begins with those expected to (`first`, places in the list)
 * and takes in those that its answer misses by most, until it misses none. An answer to fewer rows that
 * fulfils all is the answer to all; where fewer contradict, so do all.
 */
export function nearest(
  target: readonly number[],
  weights: readonly number[],
  rows: readonly Row[],
  first: readonly number[] = [],
): Nearest {
  const table = tableOf(rows, target.length);
  const short = missing(
    table,
    rows.map(({ atLeast }) => atLeast),
    target,
  );
  // Rows that meet in one point would otherwise take turns at being missed by rounding, for ever.
  const slip = lastBits * (1 + short.reduce((most, by) => Math.max(most, Math.abs(by)), 0));
  const taken = new Set<number>();
  const withMore = (more: readonly number[]): Solved | undefined => {
    if (more.length === 0) return undefined;
    for (const at of more) taken.add(at);
    const list = [...taken];
    return solve(
      weights,
      list.flatMap((at) => rows[at] ?? []),
      list.map((at, i) => (short[at] ?? 0) - slip * (i + 1)),
    );
  };
  let best = withMore(first);
  if (!best) taken.clear();
  best ??= { moves: target.map(() => 0), multipliers: [] };
  while (true) {
    const missed = missedRows(missing(table, short, best.moves), missedFrom * slip);
    const multipliers = best.multipliers;
    const pullsOf = [...taken].map((at, i) => [at, multipliers[i] ?? 0] as const);
    const next = withMore(
      missed
        .slice(0, joining)
        .map(({ at }) => at)
        .filter((at) => !taken.has(at)),
    );
    if (!next) {
      // Where what the rows allow is thinner than this, the method no longer tells it from nothing.
      if ((missed[0]?.by ?? 0) >= thinMm) return { ok: false, reason: 'rows-contradict' };
      const pulls = new Array<number>(rows.length).fill(0);
      for (const [at, pull] of pullsOf) pulls[at] = pull;
      const heldBy = [...taken]
        .sort((a, b) => a - b)
        .flatMap((at) => ((pulls[at] ?? 0) > leastPull ? (rows[at]?.holder ?? []) : []));
      const { moves } = best;
      return { ok: true, unknowns: target.map((value, i) => value + (moves[i] ?? 0)), heldBy, pulls };
    }
    best = next;
  }
}

/** The places in the list of rows that hold an answer: where to begin with a list that is nearly the same. */
export function holding({ pulls }: Extract<Nearest, Readonly<{ ok: true }>>): readonly number[] {
  return pulls.flatMap((pull, at) => (pull > 0 ? [at] : []));
}

/**
 * The coefficients of all rows, one after another: rows hold few nought or whole numbers here and many
 * fractions there, which reads slowly.
 */
function tableOf(rows: readonly Row[], width: number): Float64Array {
  const table = new Float64Array(rows.length * width);
  rows.forEach(({ coefficients }, at) => table.set(coefficients, at * width));
  return table;
}

/** By how much each row falls short of its limit where the unknowns stand. */
function missing(
  table: Float64Array,
  limits: Float64Array | readonly number[],
  unknowns: readonly number[],
): Float64Array {
  const short = new Float64Array(limits);
  const width = unknowns.length;
  for (let at = 0; at < short.length; at++) {
    let by = short[at] ?? 0;
    for (let i = 0; i < width; i++) by -= (table[at * width + i] ?? 0) * (unknowns[i] ?? 0);
    short[at] = by;
  }
  return short;
}

/** The rows that fall short by more than so much, the most missed first. */
function missedRows(short: Float64Array, byMm: number): readonly Missed[] {
  const missed: Missed[] = [];
  for (let at = 0; at < short.length; at++) {
    const by = short[at] ?? 0;
    if (by > byMm) missed.push({ at, by });
  }
  return missed.sort((a, b) => b.by - a.by);
}

type Missed = Readonly<{ at: number; by: number }>;
type Solved = Readonly<{ moves: readonly number[]; multipliers: readonly number[] }>;

/** The least Σ weight × move² with every row at least its limit; undefined where rows contradict. */
function solve(
  weights: readonly number[],
  rows: readonly Row[],
  atLeast: readonly number[],
): Solved | undefined {
  const solved = leastQuadratic(
    weights.map((weight, i) => weights.map((_, j) => (i === j ? weight : 0))),
    weights.map(() => 0),
    rows.map(({ coefficients }) => coefficients),
    atLeast,
  );
  return solved && { moves: solved.unknowns, multipliers: solved.multipliers };
}
