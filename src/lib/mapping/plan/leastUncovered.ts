import { easedRows, type Cover, type CoverRow } from './coverRows.ts';
import { holding, nearest, type Nearest } from './nearest.ts';
import type { Holder, Row } from './row.ts';

/** What cover can be had inside the approved limits of one side. */
export type LeastUncovered = Readonly<{
  ok: true;
  /** The cover's rows, eased by what must stay out: together with the limits they can be fulfilled. */
  rows: readonly Row[];
  /** Heights that fulfil them. */
  at: readonly number[];
  /**
   * Σ over the old edge of how far it stays outside × width, mm²: nought where the old shape can be covered.
   */
  outMm2: number;
  /** The same for the margin around it. */
  marginOutMm2: number;
  /** Limits that keep more from being covered. */
  heldBy: readonly Holder[];
}>;
export type NoLimits = Readonly<{ ok: false; reason: 'limits-contradict' }>;

/**
 * Half the price of one mm² left out against one mm² of moved marks: far above every multiplier a limit of a
 * few mm can have.
 */
const price = 5e3;
/** Room left for rounding where a least value found by one stage binds the next, mm. */
const roomMm = 1e-5;
/** Less than this is rounding. */
const leastOutMm2 = 1e-3;
/** A knot that speaks for no width is priced as this much. */
const leastWidthMm = 1e-2;

/**
 * Covers as much of the old shape as the limits allow, then as much of the margin. Each is the least Σ width
 * × way out: a linear programme, solved as a quadratic one whose price on what stays out is so high that the
 * least sum itself is reached, exactly (Mangasarian & Meyer, Nonlinear perturbation of linear programs).
 * Where several spreads have the same sum, the most even is taken.
 */
export function leastUncovered(
  heights: readonly number[],
  limits: readonly Row[],
  cover: Cover,
  marginMm: number,
): LeastUncovered | NoLimits {
  const none = cover.widthsMm.map(() => 0);
  const whole = easedRows(cover, marginMm, none);
  const covered = nearest(heights, ones, [...limits, ...whole]);
  if (covered.ok)
    return { ok: true, rows: whole, at: covered.unknowns, outMm2: 0, marginOutMm2: 0, heldBy: [] };
  const shapeRows = easedRows(cover, 0, none);
  const bareCover = nearest(heights, ones, [...limits, ...shapeRows]);
  if (!bareCover.ok && !nearest(heights, ones, limits).ok) return { ok: false, reason: 'limits-contradict' };
  const shape = bareCover.ok
    ? nothingOut(none, bareCover.unknowns)
    : leastOut(heights, limits, shapeRows, cover, bareCover.atOdds);
  const bare = easedRows(
    cover,
    0,
    shape.outMm.map((mm) => mm + roomMm),
  );
  const inside = [...limits, ...bare];
  const asked = easedRows(cover, marginMm, shape.outMm);
  const wanted = nearest(heights, ones, [...inside, ...asked]);
  const margin = wanted.ok
    ? nothingOut(none, wanted.unknowns)
    : leastOut(heights, inside, asked, cover, wanted.atOdds);
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

type Out = Readonly<{
  at: readonly number[];
  outMm: readonly number[];
  mm2: number;
  heldBy: readonly Holder[];
}>;

const nothingOut = (outMm: readonly number[], at: readonly number[]): Out => ({
  at,
  outMm,
  mm2: 0,
  heldBy: [],
});

/**
 * The least Σ width × way out with which the limits and the eased rows can be fulfilled together. Most of an
 * old edge need not stay out: only knots of rows at odds are let out at first, the others stay in. That
 * answer is the whole one if no knot that stays in is pulled by more than its price; those that are join, and
 * it is sought again.
 */
function leastOut(
  heights: readonly number[],
  limits: readonly Row[],
  rows: readonly Row[],
  cover: Cover,
  atOdds: readonly number[],
): Out {
  const { rows: places, widthsMm } = cover;
  const prices = widthsMm.map((width) => price * Math.max(width, leastWidthMm));
  const knotsOf = (list: readonly number[]) => list.flatMap((at) => places[at - limits.length]?.knots ?? []);
  let free = [...new Set(knotsOf(atOdds))];
  let first = atOdds;
  while (true) {
    const best = leastWith(heights, limits, rows, cover, prices, free, first);
    first = holding(best);
    const joining = best.ok
      ? widthsMm
          .map((_, knot) => knot)
          .filter((knot) => pullOn(knot, best.pulls.slice(limits.length), cover) > (prices[knot] ?? 0))
      : knotsOf(best.atOdds);
    const next = [...new Set([...free, ...joining])];
    if (best.ok && next.length === free.length) return outOf(best, heights.length, free, widthsMm);
    if (next.length === free.length) {
      if (free.length === widthsMm.length)
        return nothingOut(
          widthsMm.map(() => 0),
          heights,
        );
      free = widthsMm.map((_, knot) => knot);
    } else free = next;
  }
}

/** The programme in which only some knots may stay out. */
function leastWith(
  heights: readonly number[],
  limits: readonly Row[],
  rows: readonly Row[],
  { rows: places }: Cover,
  prices: readonly number[],
  free: readonly number[],
  first: readonly number[],
) {
  const marks = heights.length;
  const eased = rows.map((row, i): Row => {
    const place = places[i];
    return {
      ...row,
      coefficients: [...row.coefficients, ...free.map((knot) => (place ? shareOf(place, knot) : 0))],
    };
  });
  const notBelowNought = free.map((_knot, i): Row => ({
    coefficients: Array.from({ length: marks + i + 1 }, (_none, at) => (at === marks + i ? 1 : 0)),
    atLeast: 0,
  }));
  const target = [...heights, ...free.map((knot) => -(prices[knot] ?? 0))];
  return nearest(
    target,
    target.map(() => 1),
    [...limits, ...eased, ...notBelowNought],
    first,
  );
}

/** What a way out at one knot gives to a row. */
function shareOf({ knots: [first, second], towardSecond }: CoverRow, knot: number): number {
  if (knot === first) return 1 - towardSecond;
  return knot === second ? towardSecond : 0;
}

/** How strongly the rows would let one knot out. */
function pullOn(knot: number, pulls: readonly number[], { rows }: Cover): number {
  return rows.reduce((sum, row, i) => sum + shareOf(row, knot) * (pulls[i] ?? 0), 0);
}

function outOf(
  { unknowns, heldBy }: Extract<Nearest, Readonly<{ ok: true }>>,
  marks: number,
  free: readonly number[],
  widthsMm: readonly number[],
): Out {
  const outMm = widthsMm.map((_, knot) =>
    Math.max(0, free.includes(knot) ? (unknowns[marks + free.indexOf(knot)] ?? 0) : 0),
  );
  const mm2 = outMm.reduce((sum, mm, i) => sum + mm * (widthsMm[i] ?? 0), 0);
  return {
    at: unknowns.slice(0, marks),
    outMm,
    mm2: mm2 < leastOutMm2 ? 0 : mm2,
    heldBy: heldBy.filter(({ kind }) => kind !== 'old-work'),
  };
}
