import type { OldPiece } from './oldPieces.ts';

/** How far an old edge lies beyond an outline's edge along a piece: p0 + p1·t + p3·t³, mm. */
type Gap = Readonly<{ p0: number; p1: number; p3: number }>;
/** A part of a piece that lies beyond, and which of its ends are places where the edges cross. */
type Stretch = Readonly<{ from: number; to: number; crossings: readonly number[] }>;

/** An area with how it changes: mm² for each mm, and mm² for each mm², of the five heights. */
export type AreaBeyond = Readonly<{
  areaMm2: number;
  slope: readonly number[];
  bend: readonly (readonly number[])[];
}>;

/** The area between pieces of an old edge and the outline's edges they lie beyond, mm². Exact, and convex. */
export function areaBeyondMm2(pieces: readonly OldPiece[], heights: readonly number[]): number {
  let areaMm2 = 0;
  for (const piece of pieces) {
    const gap = gapOf(piece, heights);
    for (const stretch of beyond(gap, piece.from, piece.to)) areaMm2 += piece.widthMm * under(gap, stretch);
  }
  return areaMm2;
}

/** The same area with its slope and its bend by each height, both exact. */
export function areaBeyond(pieces: readonly OldPiece[], heights: readonly number[]): AreaBeyond {
  let areaMm2 = 0;
  const slope = heights.map(() => 0);
  const bend = heights.map(() => heights.map(() => 0));
  for (const piece of pieces) {
    const { sign, end, other, widthMm } = piece;
    const gap = gapOf(piece, heights);
    for (const stretch of beyond(gap, piece.from, piece.to)) {
      areaMm2 += widthMm * under(gap, stretch);
      const share = shareUnder(piece, stretch);
      slope[end] = (slope[end] ?? 0) - sign * widthMm * share;
      slope[other] = (slope[other] ?? 0) - sign * widthMm * (stretch.to - stretch.from - share);
      for (const t of stretch.crossings) addBend(bend, piece, gap, t);
    }
  }
  return { areaMm2, slope, bend };
}

/** The outline's edge falls from the end mark by 1 − 1.5t + 0.5t³ of the way, or straight. */
function gapOf({ sign, isCurved, end, other, startMm, riseMm }: OldPiece, heights: readonly number[]): Gap {
  const endMm = heights[end] ?? 0;
  const fallMm = endMm - (heights[other] ?? 0);
  return {
    p0: sign * (startMm - endMm),
    p1: sign * (riseMm + (isCurved ? 1.5 : 1) * fallMm),
    p3: isCurved ? -0.5 * sign * fallMm : 0,
  };
}

const at = ({ p0, p1, p3 }: Gap, t: number): number => p0 + t * (p1 + p3 * t * t);
const steepnessAt = ({ p1, p3 }: Gap, t: number): number => p1 + 3 * p3 * t * t;

/** Where a gap is above nought. It turns at most once for t above nought, so two stretches at most. */
function beyond(gap: Gap, from: number, to: number): readonly Stretch[] {
  const turn = gap.p3 === 0 ? NaN : Math.sqrt(-gap.p1 / (3 * gap.p3));
  if (!(turn > from && turn < to)) return beyondOneWay(gap, from, to);
  return [...beyondOneWay(gap, from, turn), ...beyondOneWay(gap, turn, to)];
}

/** The same where it only rises or only falls. */
function beyondOneWay(gap: Gap, from: number, to: number): readonly Stretch[] {
  const [first, last] = [at(gap, from), at(gap, to)];
  if (first <= 0 && last <= 0) return [];
  if (first >= 0 && last >= 0) return [{ from, to, crossings: [] }];
  const t = crossing(gap, from, to, first, last);
  return [first > 0 ? { from, to: t, crossings: [t] } : { from: t, to, crossings: [t] }];
}

/** Where a gap with other signs at both ends is nought: Newton's steps, halves where one would leave the stretch. */
function crossing(gap: Gap, from: number, to: number, first: number, last: number): number {
  let [low, high] = [from, to];
  let t = from - (first * (to - from)) / (last - first);
  for (let i = 0; i < 60; i++) {
    const value = at(gap, t);
    if (Math.abs(value) < 1e-13) break;
    if (value > 0 === first > 0) low = t;
    else high = t;
    const newton = t - value / steepnessAt(gap, t);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) < 1e-15) break;
    t = next;
  }
  return t;
}

/** ∫ gap over a stretch. */
function under({ p0, p1, p3 }: Gap, { from, to }: Stretch): number {
  const up = (t: number) => t * (p0 + t * (p1 / 2 + (p3 * t * t) / 4));
  return up(to) - up(from);
}

/** ∫ of the end mark's share over a stretch. */
function shareUnder({ isCurved }: OldPiece, { from, to }: Stretch): number {
  const up = (t: number) => (isCurved ? t - 0.75 * t * t + 0.125 * t ** 4 : t - (t * t) / 2);
  return up(to) - up(from);
}

/** Edges that touch along a stretch would bend without end: no crossing counts as flatter than this. */
const leastSteepness = 1e-3;

function addBend(bend: readonly number[][], piece: OldPiece, gap: Gap, t: number): void {
  const { isCurved, end, other, widthMm } = piece;
  const share = isCurved ? 1 - 1.5 * t + 0.5 * t ** 3 : 1 - t;
  const weight = widthMm / Math.max(Math.abs(steepnessAt(gap, t)), leastSteepness * widthMm);
  for (const [i, one] of [
    [end, share],
    [other, 1 - share],
  ] as const)
    for (const [j, two] of [
      [end, share],
      [other, 1 - share],
    ] as const) {
      const line = bend[i];
      if (line) line[j] = (line[j] ?? 0) + weight * one * two;
    }
}
