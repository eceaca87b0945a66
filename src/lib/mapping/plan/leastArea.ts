import { areaBeyond, type AreaBeyond } from './areaBeyond.ts';
import type { HeldLevel, Parts } from './heldLevel.ts';
import { leastQuadratic } from './quadratic.ts';
import { rowValue, type Row } from './row.ts';

export type LeastArea = Readonly<{
  at: readonly number[];
  areaMm2: number;
  /** Of this, what was taken off, mm². */
  takenMm2: number;
  /** How strongly each row keeps the area from being less, mm² for each unit of the row. */
  pulls: readonly number[];
}>;

/** No step promises more than this when it ends, mm². */
const endMm2 = 1e-3;
/** Steps are drawn back by so much, mm² for each mm²; less once curvature is left out. */
const drawn = 0.02;
const drawnFlat = 1e-3;
/** A step counts when it keeps this share of what it promised. */
const keptShare = 0.1;
/** Heights looked at that are remembered, and steps at most. */
const remembered = 40;
const mostSteps = 80;

type Seen = Readonly<{ at: readonly number[]; added: AreaBeyond; taken: AreaBeyond; areaMm2: number }>;

/**
 * Goes down from heights that fulfil the rows to the least area inside them. Each step is a small quadratic
 * programme: the area's own slope and bend, never below the tangent at any heights seen so far (a bundle
 * method, Lemaréchal & Zowe 1994), what is taken off put as its tangent. It ends where no step inside the
 * rows promises `endMm2`: the least where nothing is taken off, otherwise a least nearby. `held`, another
 * area, is not left.
 */
export function leastArea(
  parts: Parts,
  rows: readonly Row[],
  start: readonly number[],
  held?: HeldLevel,
): LeastArea {
  const look = (at: readonly number[]): Seen => {
    const [added, taken] = [areaBeyond(parts.added, at), areaBeyond(parts.taken, at)];
    return { at, added, taken, areaMm2: added.areaMm2 - taken.areaMm2 };
  };
  let here = look(start);
  let seen: readonly Seen[] = [here];
  let inside = rows;
  let [bendShare, back] = [1, drawn];
  let pulls: readonly number[] = [];
  for (let step = 0; step < mostSteps; step++) {
    const next = promised(here, seen, inside, bendShare, back);
    if (!next) {
      back *= 10;
      if (back > 1e3) break;
      continue;
    }
    pulls = next.pulls;
    if (next.gainMm2 < endMm2) {
      if (bendShare === 0) break;
      [bendShare, back] = [0, drawnFlat];
      continue;
    }
    const to = look(here.at.map((mm, i) => mm + (next.move[i] ?? 0)));
    if (held && held.areaMm2(to.at) > held.mostMm2) {
      inside = [...inside, held.cutAt(to.at)];
      continue;
    }
    seen = [...seen, to].slice(-remembered);
    if (to.areaMm2 <= here.areaMm2 - keptShare * next.gainMm2) here = to;
    else bendShare = bendShare > 0.02 ? bendShare / 4 : 0;
  }
  return {
    at: here.at,
    areaMm2: here.areaMm2,
    takenMm2: here.taken.areaMm2,
    pulls: rows.map((_, i) => pulls[i] ?? 0),
  };
}

/** The heights stood at fulfil every row; by so much rows are eased, mm, more where the method still refuses. */
const easesMm = [1e-9, 1e-7, 1e-6] as const;
/** The promised area is an unknown, too, and the method needs every unknown to count a little. */
const faint = 1e-6;

function promised(
  { at, added, taken }: Seen,
  seen: readonly Seen[],
  rows: readonly Row[],
  bendShare: number,
  back: number,
): Readonly<{ move: readonly number[]; gainMm2: number; pulls: readonly number[] }> | undefined {
  const bend = [
    ...added.bend.map((line, i) => [...line.map((mm2, j) => bendShare * mm2 + (i === j ? back : 0)), 0]),
    [...at.map(() => 0), faint],
  ];
  const short = rows.map(({ coefficients, atLeast }) => Math.min(0, atLeast - rowValue(coefficients, at)));
  const tangents = seen.map((one) => [...one.added.slope.map((by) => -by), 1]);
  const over = seen.map(
    (one) =>
      one.added.areaMm2 - added.areaMm2 + rowValue(one.added.slope, at) - rowValue(one.added.slope, one.at),
  );
  for (const ease of easesMm) {
    const solved = leastQuadratic(
      bend,
      [...taken.slope, -1],
      [...rows.map(({ coefficients }) => coefficients), ...tangents],
      [...short.map((by) => by - ease), ...over],
    );
    if (!solved) continue;
    const move = solved.unknowns.slice(0, at.length);
    return {
      move,
      gainMm2: rowValue(taken.slope, move) - (solved.unknowns[at.length] ?? 0),
      pulls: solved.multipliers,
    };
  }
  return undefined;
}
