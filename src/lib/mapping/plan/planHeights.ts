import type { Brow, Brows } from '../marks/brow.ts';
import type { Side } from '../marks/markSet.ts';
import { outlineOf, type NoOutline } from '../outline/outline.ts';
import { apartRows } from './apartRows.ts';
import { coverRows, type Cover } from './coverRows.ts';
import { edgeSpans, type EdgeSpans } from './edgeSpans.ts';
import { heightsFrom, heightsOf, listOf, withHeights, type BrowHeights } from './heights.ts';
import { leastUncovered, type LeastUncovered, type NoLimits } from './leastUncovered.ts';
import { levelSides } from './levelSides.ts';
import { limitRows, type ApprovedLimits } from './limits.ts';
import type { SideWeights } from './meetingHeight.ts';
import { nearest } from './nearest.ts';
import type { OldShape } from './oldShape.ts';
import type { Holder, Row } from './row.ts';

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

export type SideCover = Pick<LeastUncovered, 'outMm2' | 'marginOutMm2'>;
export type PlannedHeights = Readonly<{
  ok: true;
  heights: Readonly<Record<Side, BrowHeights>>;
  /** Of the sides that may move. */
  cover: Readonly<Partial<Record<Side, SideCover>>>;
  /** What keeps the plan from more cover, from equal sides or from smaller moves, in this order. */
  heldBy: readonly Holder[];
}>;
export type NoPlan = NoLimits | NoOutline;

const ones = [1, 1, 1, 1, 1];

/**
 * The heights of the marks, in order of priority: inside the approved limits; least of the old shape
 * uncovered; least of its margin; least remaining asymmetry, Σ (left − right)²; least movement, Σ weight ×
 * move². Each stage keeps what the one before has reached, so no weight between them can be set wrong. A side
 * that is not free stays as it is marked.
 */
export function planHeights(task: PlanTask, covers: Covers = coversOf(task)): PlannedHeights | NoPlan {
  for (const brow of [task.brows.right, task.brows.left]) {
    const outline = outlineOf(brow);
    if (!outline.ok) return outline;
  }
  const free = planWithin(task, covers, () => []);
  if (!free.ok || areOutlines(task, free)) return free;
  const apart = planWithin(task, covers, apartRows);
  return !apart.ok || areOutlines(task, apart) ? apart : { ok: false, reason: 'limits-contradict' };
}

/** What a brow must keep beside its approved limits. */
type Kept = (brow: Brow, spans: EdgeSpans) => readonly Row[];

function areOutlines({ brows }: PlanTask, { heights }: PlannedHeights): boolean {
  return (
    outlineOf(withHeights(brows.right, heights.right)).ok &&
    outlineOf(withHeights(brows.left, heights.left)).ok
  );
}

function planWithin(task: PlanTask, covers: Covers, kept: Kept): PlannedHeights | NoPlan {
  const { brows, free, weights } = task;
  const now = { right: listOf(heightsOf(brows.right)), left: listOf(heightsOf(brows.left)) };
  if (free !== 'both') {
    const side = roomOf(task, free, covers, kept);
    if (!side.ok) return side;
    const best = nearest(now[free === 'right' ? 'left' : 'right'], ones, side.rows);
    const [at, heldBy] = best.ok ? [best.unknowns, best.heldBy] : [side.at, []];
    return {
      ok: true,
      heights: heightsOfBoth({ ...now, [free]: at }),
      cover: { [free]: coverOf(side) },
      heldBy: each(...side.heldBy, ...heldBy),
    };
  }
  const right = roomOf(task, 'right', covers, kept);
  if (!right.ok) return right;
  const left = roomOf(task, 'left', covers, kept);
  if (!left.ok) return left;
  const level = levelSides(now, weights, { right, left });
  return {
    ok: true,
    heights: heightsOfBoth(level.heights),
    cover: { right: coverOf(right), left: coverOf(left) },
    heldBy: each(...right.heldBy, ...left.heldBy, ...level.heldBy),
  };
}

/** Each holder once, in the order of the first time it was named. */
function each(...holders: readonly Holder[]): readonly Holder[] {
  return [...new Map(holders.map((holder) => [JSON.stringify(holder), holder])).values()];
}

export type Covers = Readonly<Record<Side, Cover>>;

/**
 * What the old shapes ask of each side, whatever was approved: a task planned twice with other limits asks
 * the same.
 */
export function coversOf({ brows, old }: Pick<PlanTask, 'brows' | 'old'>): Covers {
  const of = (side: Side) => {
    const shape = old[side];
    return shape
      ? coverRows(shape, edgeSpans(brows[side]), side, brows[side].tail.uMm)
      : { rows: [], widthsMm: [] };
  };
  return { right: of('right'), left: of('left') };
}

/** The limits of one side together with as much cover as they allow. */
function roomOf(
  { brows, old, limits, marginMm }: PlanTask,
  side: Side,
  covers: Covers,
  kept: Kept,
): (LeastUncovered & Readonly<{ ok: true }>) | NoPlan {
  const brow = brows[side];
  const spans = edgeSpans(brow);
  const approved = [...limitRows(brow, spans, side, limits[side], old[side]?.areaMm2), ...kept(brow, spans)];
  const least = leastUncovered(listOf(heightsOf(brow)), approved, covers[side], marginMm);
  return least.ok ? { ...least, rows: [...approved, ...least.rows] } : least;
}

function coverOf({ outMm2, marginOutMm2 }: LeastUncovered): SideCover {
  return { outMm2, marginOutMm2 };
}

function heightsOfBoth({
  right,
  left,
}: Readonly<Record<Side, readonly number[]>>): Readonly<Record<Side, BrowHeights>> {
  return { right: heightsFrom(right), left: heightsFrom(left) };
}
