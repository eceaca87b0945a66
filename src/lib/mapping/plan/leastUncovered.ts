import { easedRows, type Cover } from './coverRows.ts';
import { nearest } from './nearest.ts';
import { placedRow, type Holder, type Row } from './row.ts';

/** What cover can be had inside the approved limits of one side. */
export type LeastUncovered = Readonly<{
  ok: true;
  /** The cover's rows, eased by what must stay out: together with the limits they can be fulfilled. */
  rows: readonly Row[];
  /** Heights that fulfil them. */
  at: readonly number[];
  /** Σ over the old edge of how far it stays outside × width, mm²: nought where the old shape can be covered. */
  outMm2: number;
  /** The same for the margin around it. */
  marginOutMm2: number;
  /** Limits that keep more from being covered. */
  heldBy: readonly Holder[];
}>;
export type NoLimits = Readonly<{ ok: false; reason: 'limits-contradict' }>;

/** Price of one mm² left out against one mm² of moved marks: far above every multiplier a limit of a few mm can have. */
const price = 1e4;
/** Room left for rounding where a least value found by one stage binds the next, mm. */
export const roomMm = 1e-5;
/** Less than this is rounding. */
const leastOutMm2 = 1e-3;
/** A knot that speaks for no width is priced as this much. */
const leastWidthMm = 1e-2;

/**
 * Covers as much of the old shape as the limits allow, then as much of the margin. Each is the least Σ width × way out: a linear
 * programme, solved as a quadratic one whose price on what stays out is so high that the least sum itself is reached, exactly
 * (Mangasarian & Meyer, SIAM J. Control Optim. 17:745, 1979). Where several spreads have the same sum, the most even is taken.
 */
export function leastUncovered(heights: readonly number[], limits: readonly Row[], cover: Cover, marginMm: number): LeastUncovered | NoLimits {
  if (!nearest(heights, ones, limits).ok) return { ok: false, reason: 'limits-contradict' };
  const none = cover.widthsMm.map(() => 0);
  const whole = easedRows(cover, marginMm, none);
  const covered = nearest(heights, ones, [...limits, ...whole]);
  if (covered.ok) return { ok: true, rows: whole, at: covered.unknowns, outMm2: 0, marginOutMm2: 0, heldBy: [] };
  const shapeRows = easedRows(cover, 0, none);
  const bareCover = nearest(heights, ones, [...limits, ...shapeRows]);
  const shape = bareCover.ok ? nothingOut(none, bareCover.unknowns) : leastOut(heights, limits, shapeRows, cover);
  const bare = easedRows(cover, 0, shape.outMm.map((mm) => mm + roomMm));
  const margin = leastOut(heights, [...limits, ...bare], easedRows(cover, marginMm, shape.outMm), cover);
  const bothMm = shape.outMm.map((mm, i) => mm + (margin.outMm[i] ?? 0) + 2 * roomMm);
  return {
    ok: true,
    at: margin.at,
    rows: [...bare, ...easedRows(cover, marginMm, bothMm)],
    outMm2: shape.mm2,
    marginOutMm2: margin.mm2,
    heldBy: shape.mm2 > 0 ? shape.heldBy : margin.heldBy,
  };
}

const ones = [1, 1, 1, 1, 1];

type Out = Readonly<{ at: readonly number[]; outMm: readonly number[]; mm2: number; heldBy: readonly Holder[] }>;

const nothingOut = (outMm: readonly number[], at: readonly number[]): Out => ({ at, outMm, mm2: 0, heldBy: [] });

/** The least Σ width × way out with which the limits and the eased rows can be fulfilled together. */
function leastOut(heights: readonly number[], limits: readonly Row[], rows: readonly Row[], { rows: places, widthsMm }: Cover): Out {
  const marks = heights.length;
  const count = marks + widthsMm.length;
  const eased = rows.map((row, i): Row => {
    const all = [...placedRow(row, 0, count).coefficients];
    const place = places[i];
    if (place) {
      all[marks + place.knots[0]] = 1 - place.towardSecond;
      all[marks + place.knots[1]] = place.towardSecond;
    }
    return { ...row, coefficients: all };
  });
  const notBelowNought = widthsMm.map((_, i): Row => placedRow({ coefficients: [1], atLeast: 0 }, marks + i, count));
  const target = [...heights, ...widthsMm.map((width) => (-price * Math.max(width, leastWidthMm)) / 2)];
  const all = [...limits.map((row) => placedRow(row, 0, count)), ...eased, ...notBelowNought];
  const best = nearest(target, target.map(() => 1), all);
  if (!best.ok) return nothingOut(widthsMm.map(() => 0), heights);
  const outMm = best.unknowns.slice(marks).map((mm) => Math.max(0, mm));
  const mm2 = outMm.reduce((sum, mm, i) => sum + mm * (widthsMm[i] ?? 0), 0);
  return { at: best.unknowns.slice(0, marks), outMm, mm2: mm2 < leastOutMm2 ? 0 : mm2, heldBy: best.heldBy.filter(({ kind }) => kind !== 'old-work') };
}
