import { forBrowMarks, type BrowRecord } from '../marks/browRecord.ts';
import type { Brows } from '../marks/brow.ts';
import { browMarks, type BrowMark, type Side } from '../marks/markSet.ts';
import { heightsOf, withHeights } from './heights.ts';
import type { ApprovedLimits } from './limits.ts';
import { leastDifferenceMm, type MarkRoom } from './meetingHeight.ts';
import { leaveBelowMm } from '../numbers/plan.ts';
import { outToleranceMm2 } from './sideRoom.ts';
import { asksOf, planHeights, type NoPlan, type PlannedHeights, type PlanTask } from './planHeights.ts';

/** The skin over the old work. Anything but quiet ends the plan: a doctor looks first. */
export const oldSkins = ['quiet', 'raised', 'itchy', 'scaly'] as const;
export type OldSkin = (typeof oldSkins)[number];

/**
 * Raise (above nought) or lower a mark by so much, give or take half an interval, mm. `isLeft`: the move is
 * too small to be worth making.
 */
export type Move = Readonly<{ byMm: number; halfMm: number; isLeft: boolean }>;

/**
 * A mark whose sides cannot meet inside the limits: the gap is larger than one may be raised plus the other
 * lowered.
 */
export type Contradiction = Readonly<{ mark: BrowMark; gapMm: number; roomMm: number; leastMm: number }>;

export type CorrectionPlan = Readonly<{
  ok: true;
  /** Said first. */
  contradictions: readonly Contradiction[];
  brows: Brows;
  moves: Readonly<Record<Side, BrowRecord<Move>>>;
  /** Left minus right that stays, mm. */
  remainingMm: BrowRecord<number>;
  /** Half the interval of it, mm: up to this the sides are not shown to differ. */
  remainingHalfMm: BrowRecord<number>;
}> &
  Pick<PlannedHeights, 'cover' | 'heldBy'>;
export type NoCorrectionPlan =
  | NoPlan
  | Readonly<{ ok: false; reason: 'skin-not-quiet'; skin: Exclude<OldSkin, 'quiet'> }>;

/**
 * The smallest set of corrections. Skin that is raised, itchy or scaly stops it before any sum. Marks whose
 * move is no larger than `leaveBelowMm` or half its interval are left where they are and the rest is planned
 * again around them, unless that would uncover old work. `halfMm` is half the interval of left minus right of
 * each mark: one side moves by all of it, two sides share it.
 */
export function planCorrections(
  task: PlanTask,
  skin: OldSkin,
  halfMm: BrowRecord<number>,
): CorrectionPlan | NoCorrectionPlan {
  if (skin !== 'quiet') return { ok: false, reason: 'skin-not-quiet', skin };
  const asks = asksOf(task);
  const first = planHeights(task, asks);
  if (!first.ok) return first;
  const firstMoves = movesOf(task, first, halfMm);
  const isAnyLeft = [firstMoves.right, firstMoves.left].some((moves) =>
    browMarks.some((mark) => moves[mark].isLeft),
  );
  const again = isAnyLeft
    ? planHeights(
        {
          ...task,
          limits: {
            right: pinned(task.limits.right, firstMoves.right),
            left: pinned(task.limits.left, firstMoves.left),
          },
        },
        asks,
      )
    : first;
  const planned = again.ok && isNoWorseCovered(again, first) ? again : first;
  const moves = movesOf(task, planned, halfMm);
  const brows = {
    right: withHeights(task.brows.right, planned.heights.right),
    left: withHeights(task.brows.left, planned.heights.left),
  };
  return {
    ok: true,
    contradictions: contradictionsOf(task),
    brows,
    moves: planned === again ? moves : { right: allMade(moves.right), left: allMade(moves.left) },
    remainingMm: forBrowMarks((mark) => planned.heights.left[mark] - planned.heights.right[mark]),
    remainingHalfMm: halfMm,
    cover: planned.cover,
    heldBy: planned.heldBy,
  };
}

/**
 * Marks whose gap is larger than the limits can close, with what is left at least. A side that is not free
 * has no room.
 */
function contradictionsOf({
  brows,
  free,
  limits,
}: Pick<PlanTask, 'brows' | 'free' | 'limits'>): readonly Contradiction[] {
  return browMarks.flatMap((mark) => {
    const side = (name: Side) => {
      const isFree = free === 'both' || free === name;
      return {
        vMm: brows[name][mark].vMm,
        raiseMostMm: isFree ? limits[name].raiseMostMm[mark] : 0,
        lowerMostMm: isFree ? limits[name].lowerMostMm[mark] : 0,
      };
    };
    const room: MarkRoom = { right: side('right'), left: side('left') };
    const leastMm = Math.abs(leastDifferenceMm(room));
    const gapMm = Math.abs(room.left.vMm - room.right.vMm);
    return leastMm > 0 ? [{ mark, gapMm, roomMm: gapMm - leastMm, leastMm }] : [];
  });
}

function movesOf(
  { brows, free, weights }: PlanTask,
  { heights }: PlannedHeights,
  halfMm: BrowRecord<number>,
): Readonly<Record<Side, BrowRecord<Move>>> {
  const share = (side: Side) =>
    free === 'both' ? weights[side === 'right' ? 'left' : 'right'] / (weights.right + weights.left) : 1;
  const side = (name: Side) => {
    const now = heightsOf(brows[name]);
    return forBrowMarks((mark): Move => {
      const [byMm, half] = [heights[name][mark] - now[mark], share(name) * halfMm[mark]];
      return { byMm, halfMm: half, isLeft: Math.abs(byMm) <= Math.max(leaveBelowMm, half) };
    });
  };
  return { right: side('right'), left: side('left') };
}

/** The limits with every left mark held where it is. */
function pinned(limits: ApprovedLimits, moves: BrowRecord<Move>): ApprovedLimits {
  const held = (most: BrowRecord<number>) => forBrowMarks((mark) => (moves[mark].isLeft ? 0 : most[mark]));
  return { ...limits, raiseMostMm: held(limits.raiseMostMm), lowerMostMm: held(limits.lowerMostMm) };
}

function allMade(moves: BrowRecord<Move>): BrowRecord<Move> {
  return forBrowMarks((mark) => ({ ...moves[mark], isLeft: Math.abs(moves[mark].byMm) < shownFromMm }));
}

/** Below this a move prints as nought, mm. */
const shownFromMm = 0.05;
/** Less than this is rounding, mm². */
const roundingMm2 = 1e-3;

/** Old work that was covered stays covered; of what was not, no more stays outside but for half a tolerance. */
function isNoWorseCovered(one: PlannedHeights, other: PlannedHeights): boolean {
  return (['right', 'left'] as const).every((side) => {
    const [now, before] = [one.cover[side]?.outMm2 ?? 0, other.cover[side]?.outMm2 ?? 0];
    return before === 0 ? now === 0 : now <= before + outToleranceMm2(before) / 2 + roundingMm2;
  });
}
