import type { Brows } from '../marks/brow.ts';
import type { Side } from '../marks/markSet.ts';
import { outlineOf, type NoOutline } from '../outline/outline.ts';
import { apartRows, narrowestMm } from './apartRows.ts';
import { coverRows, type CoverRow } from './coverRows.ts';
import { edgeSpans } from './edgeSpans.ts';
import { heightsFrom, heightsOf, listOf, withHeights, type BrowHeights } from './heights.ts';
import { levelSides } from './levelSides.ts';
import { limitRows, type ApprovedLimits } from './limits.ts';
import type { SideWeights } from './meetingHeight.ts';
import { nearest } from './nearest.ts';
import { oldPieces } from './oldPieces.ts';
import type { OldShape } from './oldShape.ts';
import type { Holder } from './row.ts';
import { settle, type Settled } from './settle.ts';
import { sideRoom, type NoLimits, type OldAsks, type SideCover, type SideRoom } from './sideRoom.ts';

/**
 * What is to be planned: the outline as it is marked, which sides may move, the old shapes and what was
 * approved.
 */
export type PlanTask = Readonly<{
  brows: Brows;
  free: Side | 'both';
  old: Readonly<Partial<Record<Side, OldShape>>>;
  limits: Readonly<Record<Side, ApprovedLimits>>;
  /** The outline lies so far outside the old shape, straight up and down, mm. */
  marginMm: number;
  /** Movement counts weight × move²; used where both sides are free. */
  weights: SideWeights;
}>;

export type PlannedHeights = Readonly<{
  ok: true;
  heights: Readonly<Record<Side, BrowHeights>>;
  /** Of the sides that may move. */
  cover: Readonly<Partial<Record<Side, SideCover>>>;
  /** What keeps the plan from more cover, from equal sides or from smaller moves, in this order. */
  heldBy: readonly Holder[];
}>;
export type NoPlan = NoLimits | NoOutline;

const sides = ['right', 'left'] as const;
const ones = [1, 1, 1, 1, 1];
/** How often a plan that is no outline is planned again. */
const mostTries = 8;

/**
 * The heights of the marks, in order of priority: inside the approved limits; least area of old work outside;
 * least of its margin; least remaining asymmetry, Σ (left − right)²; least movement, Σ weight × move². Each
 * stage keeps what the one before has reached, areas but for a tolerance below a printed tenth of a mm². A
 * side that is not free stays as it is marked. What is planned is an outline on both sides.
 */
export function planHeights(task: PlanTask, asks: Asks = asksOf(task)): PlannedHeights | NoPlan {
  for (const side of sides) {
    const outline = outlineOf(task.brows[side]);
    if (!outline.ok) return outline;
  }
  let narrow: Narrow | undefined;
  for (let tries = 0; tries < mostTries; tries++) {
    const plan = planWithin(task, asks, narrow);
    if (!plan.ok) return plan;
    const broken = sides.filter((side) => !outlineOf(withHeights(task.brows[side], plan.heights[side])).ok);
    if (broken.length === 0) return plan;
    narrow = narrowed(task, plan, broken, narrow);
  }
  return { ok: false, reason: 'limits-contradict' };
}

/**
 * Places where a plan's edges touched: from then on both are kept apart there, and at many places besides.
 */
type Narrow = Readonly<Record<Side, readonly number[]>>;

function narrowed(
  { brows }: PlanTask,
  { heights }: PlannedHeights,
  broken: readonly Side[],
  before: Narrow = { right: [], left: [] },
): Narrow {
  const of = (side: Side) =>
    broken.includes(side)
      ? [...before[side], narrowestMm(brows[side], edgeSpans(brows[side]), listOf(heights[side]))]
      : before[side];
  return { right: of('right'), left: of('left') };
}

function planWithin(task: PlanTask, asks: Asks, narrow: Narrow | undefined): PlannedHeights | NoPlan {
  const { brows, free, weights } = task;
  const now = { right: listOf(heightsOf(brows.right)), left: listOf(heightsOf(brows.left)) };
  if (free !== 'both') {
    const room = roomOf(task, free, asks, narrow);
    if (!room.ok) return room;
    const target = now[free === 'right' ? 'left' : 'right'];
    const settled = settle({ [free]: room }, (rows): Settled => {
      const best = nearest(target, ones, rows[free]);
      return {
        heights: { ...now, [free]: best.ok ? best.unknowns : room.at },
        heldBy: best.ok ? best.heldBy : [],
      };
    });
    return planned(settled, { [free]: room });
  }
  const right = roomOf(task, 'right', asks, narrow);
  if (!right.ok) return right;
  const left = roomOf(task, 'left', asks, narrow);
  if (!left.ok) return left;
  const settled = settle({ right, left }, (rows) =>
    levelSides(now, weights, {
      right: { rows: rows.right, at: right.at },
      left: { rows: rows.left, at: left.at },
    }),
  );
  return planned(settled, { right, left });
}

function planned(
  { heights, heldBy }: Settled,
  rooms: Readonly<Partial<Record<Side, SideRoom>>>,
): PlannedHeights {
  const { right, left } = rooms;
  return {
    ok: true,
    heights: { right: heightsFrom(heights.right), left: heightsFrom(heights.left) },
    cover: {
      ...(right && { right: right.coverAt(heights.right) }),
      ...(left && { left: left.coverAt(heights.left) }),
    },
    heldBy: each(...(right?.heldBy ?? []), ...(left?.heldBy ?? []), ...heldBy),
  };
}

/** Each holder once, in the order of the first time it was named. */
function each(...holders: readonly Holder[]): readonly Holder[] {
  return [...new Map(holders.map((holder) => [JSON.stringify(holder), holder])).values()];
}

export type Asks = Readonly<Record<Side, OldAsks | undefined>>;

/**
 * What the old shapes ask of each side, whatever was approved: a task planned twice with other limits asks
 * the same.
 */
export function asksOf({ brows, old, marginMm }: Pick<PlanTask, 'brows' | 'old' | 'marginMm'>): Asks {
  const of = (side: Side): OldAsks | undefined => {
    const shape = old[side];
    if (!shape) return undefined;
    const [spans, tailMm] = [edgeSpans(brows[side]), brows[side].tail.uMm];
    let rows: readonly CoverRow[] | undefined;
    return {
      pieces: oldPieces(shape, spans, tailMm, marginMm),
      cover: () => (rows ??= coverRows(shape, spans, side, tailMm)),
      marginMm,
    };
  };
  return { right: of('right'), left: of('left') };
}

function roomOf(
  { brows, old, limits }: PlanTask,
  side: Side,
  asks: Asks,
  narrow: Narrow | undefined,
): SideRoom | NoLimits {
  const brow = brows[side];
  const spans = edgeSpans(brow);
  const approved = limitRows(brow, spans, side, limits[side], old[side]?.areaMm2);
  const apart = narrow ? apartRows(brow, spans, narrow[side]) : [];
  return sideRoom(listOf(heightsOf(brow)), [...approved, ...apart], asks[side]);
}
