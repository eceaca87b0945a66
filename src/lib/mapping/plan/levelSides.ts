import type { Side } from '../marks/markSet.ts';
import type { SideWeights } from './meetingHeight.ts';
import { holding, nearest } from './nearest.ts';
import type { Holder, Row } from './row.ts';

type Both<T> = Readonly<Record<Side, T>>;
export type LevelSides = Readonly<{ heights: Both<readonly number[]>; heldBy: readonly Holder[] }>;
/** What one side's heights must fulfil, and some that do. */
export type SideRoom = Readonly<{ rows: readonly Row[]; at: readonly number[] }>;

/**
 * Both sides as equal as their rows allow, Σ (left − right)², and of all such plans the one with the least Σ
 * weight × move².
 * First equal heights are tried: one unknown a mark, nearest to the weighted mean of the two sides, since
 * w₁(s − v₁)² + w₂(s − v₂)² = (w₁ + w₂)(s − mean)² + what does not depend on s. Where the rows forbid that,
 * the least differences are found first and then held.
 */
export function levelSides(
  now: Both<readonly number[]>,
  weights: SideWeights,
  room: Both<SideRoom>,
): LevelSides {
  const rows = { right: room.right.rows, left: room.left.rows };
  const mean = now.right.map(
    (right, i) =>
      (weights.right * right + weights.left * (now.left[i] ?? right)) / (weights.right + weights.left),
  );
  const ones = mean.map(() => 1);
  const level = nearest(mean, ones, [...rows.right, ...rows.left]);
  if (level.ok) return { heights: { right: level.unknowns, left: level.unknowns }, heldBy: level.heldBy };

  const apart = leastApart(mean, rows);
  if (!apart.ok) return eachAlone(mean, room);
  // The middle nearest to the mean, as before: the differences would shift the mean along themselves, and how
  // far the middle reaches that way is settled by the very rows that hold them.
  const moved = nearest(mean, ones, [
    ...heldApart(rows.right, apart.differences, -1),
    ...heldApart(rows.left, apart.differences, 1),
  ]);
  const middle = moved.ok ? moved.unknowns : apart.middle;
  return {
    heights: {
      right: middle.map((v, i) => v - (apart.differences[i] ?? 0) / 2),
      left: middle.map((v, i) => v + (apart.differences[i] ?? 0) / 2),
    },
    heldBy: apart.heldBy,
  };
}

/**
 * Each side as near to the common mean as its own rows allow: where both sides' rows together leave too
 * little room for the method.
 */
function eachAlone(mean: readonly number[], { right, left }: Both<SideRoom>): LevelSides {
  const alone = ({ rows, at }: SideRoom) => {
    const found = nearest(
      mean,
      mean.map(() => 1),
      rows,
    );
    return found.ok ? found : { unknowns: at, heldBy: [] };
  };
  const [r, l] = [alone(right), alone(left)];
  return { heights: { right: r.unknowns, left: l.unknowns }, heldBy: [...r.heldBy, ...l.heldBy] };
}

type Apart =
  | Readonly<{
      ok: true;
      middle: readonly number[];
      differences: readonly number[];
      heldBy: readonly Holder[];
    }>
  | Readonly<{ ok: false; reason: 'rows-contradict' }>;

/** Room for the rounding of settled differences, mm. */
const roomMm = 1e-9;
/** How weakly the middle heights are drawn to where they last were, and how often that is repeated. */
const pull = 1e-3;
const rounds = 4;

/**
 * The least differences. Unknowns are the middle height and the difference of each mark; right = middle −
 * difference/2. The middles do not count, but the method needs every unknown to: they are drawn weakly to
 * where the round before left them (proximal point, Rockafellar 1976), and the pull's share of the error
 * falls by its weight each round.
 */
function leastApart(middle: readonly number[], rows: Both<readonly Row[]>): Apart {
  const marks = middle.length;
  const all = [...split(rows.right, -0.5), ...split(rows.left, 0.5)];
  const weights = [...middle.map(() => pull), ...middle.map(() => 1)];
  let target = [...middle, ...middle.map(() => 0)];
  let best = nearest(target, weights, all);
  for (let round = 1; round < rounds && best.ok; round++) {
    target = [...best.unknowns.slice(0, marks), ...middle.map(() => 0)];
    const next = nearest(target, weights, all, holding(best));
    if (!next.ok) break;
    best = next;
  }
  return best.ok
    ? {
        ok: true,
        middle: best.unknowns.slice(0, marks),
        differences: best.unknowns.slice(marks),
        heldBy: best.heldBy,
      }
    : best;
}

/** Rows on a side's heights as rows on middles and differences. */
function split(rows: readonly Row[], share: number): readonly Row[] {
  return rows.map(({ coefficients, atLeast, holder }) => ({
    coefficients: [...coefficients, ...coefficients.map((value) => share * value)],
    atLeast,
    ...(holder && { holder }),
  }));
}

/** Rows on a side's heights as rows on the middles, the differences settled, with room for their rounding. */
function heldApart(rows: readonly Row[], differences: readonly number[], sign: 1 | -1): readonly Row[] {
  return rows.map((row) => ({
    ...row,
    atLeast:
      row.atLeast -
      roomMm -
      row.coefficients.reduce((sum, value, i) => sum + (sign * value * (differences[i] ?? 0)) / 2, 0),
  }));
}
