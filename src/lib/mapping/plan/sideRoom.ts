import { areaBeyondMm2 } from './areaBeyond.ts';
import { withMargin, type CoverRow } from './coverRows.ts';
import { heldLevel, type HeldLevel, type Parts } from './heldLevel.ts';
import { leastArea, type LeastArea } from './leastArea.ts';
import { nearest } from './nearest.ts';
import type { OldPieces } from './oldPieces.ts';
import type { Holder, Row } from './row.ts';

/** What an old shape asks of one side, whatever was approved. */
export type OldAsks = Readonly<{ pieces: OldPieces; cover: () => readonly CoverRow[]; marginMm: number }>;

/** What stays out at some heights, wherever the outline reaches. */
export type SideCover = Readonly<{
  /** Old work outside the outline between its front and its tail, mm²: nought where it is covered. */
  outMm2: number;
  /** The same for the old shape made larger by the margin; counted from its own edges alone. */
  marginOutMm2: number;
}>;

/** The heights of one side among which the plan may choose: all are inside the limits and as good as covered. */
export type SideRoom = Readonly<{
  ok: true;
  rows: readonly Row[];
  levels: readonly HeldLevel[];
  /** Heights that fulfil both. */
  at: readonly number[];
  /** Limits that keep more from being covered, the strongest first. */
  heldBy: readonly Holder[];
  coverAt: (heights: readonly number[]) => SideCover;
}>;
export type NoLimits = Readonly<{ ok: false; reason: 'limits-contradict' }>;

const ones = [1, 1, 1, 1, 1];
const nothing: Parts = { added: [], taken: [] };
/** Where no more than this must stay outside it is tried to cover all, place by place, mm². */
const nearlyCoveredMm2 = 0.02;
/** No more than this is taken off: then the least found is the least of all. */
const nothingTakenMm2 = 1e-6;

/** The limits of one side, with as much of the old shape covered as they allow, then as much of its margin. */
export function sideRoom(
  now: readonly number[],
  limits: readonly Row[],
  asks: OldAsks | undefined,
): SideRoom | NoLimits {
  const start = nearest(now, ones, limits);
  if (!start.ok) return { ok: false, reason: 'limits-contradict' };
  if (!asks)
    return {
      ok: true,
      rows: limits,
      levels: [],
      at: start.unknowns,
      heldBy: [],
      coverAt: () => ({ outMm2: 0, marginOutMm2: 0 }),
    };
  const isEasy = leastByFar(asks.pieces, limits, now.length) < nearlyCoveredMm2;
  const easily = isEasy ? coveredRoom(now, limits, asks) : undefined;
  if (easily) return easily;
  const least = leastOutside(asks.pieces, limits, start.unknowns);
  const barely = !isEasy && least.areaMm2 < nearlyCoveredMm2 ? coveredRoom(now, limits, asks) : undefined;
  return barely ?? uncoveredRoom(limits, asks, least);
}

/** Rows that cover the old shape place by place, with its margin where that fits, too; undefined where they contradict. */
function coveredRoom(
  now: readonly number[],
  limits: readonly Row[],
  { pieces, cover, marginMm }: OldAsks,
): SideRoom | undefined {
  const whole = [...limits, ...withMargin(cover(), marginMm)];
  const covered = nearest(now, ones, whole);
  if (covered.ok)
    return {
      ok: true,
      rows: whole,
      levels: [],
      at: covered.unknowns,
      heldBy: [],
      coverAt: () => ({ outMm2: 0, marginOutMm2: 0 }),
    };
  const bare = [...limits, ...withMargin(cover(), 0)];
  const shape = nearest(now, ones, bare);
  if (!shape.ok) return undefined;
  const margin = marginOf(pieces);
  const least = leastArea(margin, bare, shape.unknowns);
  return {
    ok: true,
    rows: bare,
    levels: [heldLevel(margin, least.at, least.areaMm2, marginToleranceMm2(least.areaMm2))],
    at: least.at,
    heldBy: holders(limits, least),
    coverAt: (heights) => ({ outMm2: 0, marginOutMm2: areaBeyondMm2(pieces.margin, heights) }),
  };
}

/** The least area outside held as a level, and within it the least of the margin's. */
function uncoveredRoom(limits: readonly Row[], { pieces }: OldAsks, least: LeastArea): SideRoom {
  const toleranceMm2 = outToleranceMm2(least.areaMm2);
  const held = (mm2: number) => heldLevel(pieces, least.at, least.areaMm2, mm2);
  const margin = marginOf(pieces);
  const found = leastArea(margin, limits, least.at, held(toleranceMm2 / 4));
  return {
    ok: true,
    rows: limits,
    levels: [
      held(toleranceMm2),
      heldLevel(margin, found.at, found.areaMm2, marginToleranceMm2(found.areaMm2)),
    ],
    at: found.at,
    heldBy: holders(limits, least),
    coverAt: (heights) => ({
      outMm2: Math.max(0, areaBeyondMm2(pieces.added, heights) - areaBeyondMm2(pieces.taken, heights)),
      marginOutMm2: areaBeyondMm2(pieces.margin, heights),
    }),
  };
}

const marginOf = ({ margin }: OldPieces): Parts => ({ added: margin, taken: [] });

/**
 * What is outside at least, mm², were every mark free of the others: over the upper edge with all marks as
 * high as they may, under the lower one with all as low.
 */
function leastByFar({ added }: OldPieces, limits: readonly Row[], marks: number): number {
  const [highest, lowest] = [
    new Array<number>(marks).fill(Infinity),
    new Array<number>(marks).fill(-Infinity),
  ];
  for (const { coefficients, atLeast } of limits) {
    const [mark, ...others] = coefficients.flatMap((value, i) => (value === 0 ? [] : [i]));
    if (mark === undefined || others.length > 0) continue;
    if ((coefficients[mark] ?? 0) > 0) lowest[mark] = Math.max(lowest[mark] ?? 0, atLeast);
    else highest[mark] = Math.min(highest[mark] ?? 0, -atLeast);
  }
  const side = (sign: 1 | -1) => added.filter((piece) => piece.sign === sign);
  return areaBeyondMm2(side(1), highest) + areaBeyondMm2(side(-1), lowest);
}

/**
 * The least area outside. Where a part of it had to be taken off, another start may end lower: the least of
 * what is added alone.
 */
function leastOutside(pieces: OldPieces, limits: readonly Row[], start: readonly number[]): LeastArea {
  const first = leastArea(pieces, limits, start);
  if (first.takenMm2 <= nothingTakenMm2) return first;
  const convex = leastArea({ ...nothing, added: pieces.added }, limits, start);
  const second = leastArea(pieces, limits, convex.at);
  return second.areaMm2 < first.areaMm2 - nothingTakenMm2 ? second : first;
}

/**
 * So much more of the old work may stay outside for the sake of equal sides, mm²: less than a printed tenth.
 */
export function outToleranceMm2(leastMm2: number): number {
  return Math.min(0.05, Math.max(0.01, 1e-3 * leastMm2));
}

const marginToleranceMm2 = (leastMm2: number): number => Math.max(4e-3, 1e-3 * leastMm2);

/**
 * A limit is named where marks that gained 1 mm square to it would cover so much more, mm².
 */
const namedFromMm2 = 0.1;

function holders(limits: readonly Row[], { pulls }: LeastArea): readonly Holder[] {
  return limits
    .map(({ holder, coefficients }, i) => ({ holder, gain: (pulls[i] ?? 0) * Math.hypot(...coefficients) }))
    .filter(({ gain }) => gain >= namedFromMm2)
    .sort((a, b) => b.gain - a.gain)
    .flatMap(({ holder }) => holder ?? []);
}
