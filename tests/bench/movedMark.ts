import type { Brow, Brows } from '#lib/mapping/marks/brow.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import type { MarkSet, Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlineAreaMm2 } from '#lib/mapping/outline/outlineSize.ts';
import { growthSince } from '#lib/mapping/plan/growth.ts';
import type { ApprovedLimits } from '#lib/mapping/plan/limits.ts';
import { readOldShape, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { planCorrections } from '#lib/mapping/plan/planCorrections.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { coverMarginFactor } from '#lib/mapping/numbers/plan.ts';
import { readFace, type FaceReading } from '#lib/mapping/compare/readFace.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { choices, noisy, symmetricFace } from '../lib/mapping/faces.ts';

/** A face whose brows differ by reading alone, and old work a little smaller and lower on each side. */
export type Moved = Readonly<{ set: MarkSet; old: Readonly<Record<Side, OldShape>> }>;

export const limits: ApprovedLimits = {
  raiseMostMm: forBrowMarks(() => 3),
  lowerMostMm: forBrowMarks(() => 3),
  thicknessMostMm: 14,
};

export function movedFace(seed: number): Moved {
  const plain = symmetricFace(seed);
  const old = (): OldShape => {
    const brow = (mark: keyof Brow) => ({ uMm: plain.brows[mark].left.xMm, vMm: plain.brows[mark].left.yMm });
    const [foot, top, arch, under, tail] = [
      brow('frontLower'),
      brow('frontTop'),
      brow('archTop'),
      brow('archLower'),
      brow('tail'),
    ];
    const drawn = outlineOf({
      frontLower: { uMm: foot.uMm + 2, vMm: foot.vMm + 1.2 },
      frontTop: { uMm: top.uMm + 2.4, vMm: top.vMm - 0.4 },
      archTop: { uMm: arch.uMm - 1, vMm: arch.vMm + 0.5 },
      archLower: { uMm: under.uMm - 1, vMm: under.vMm + 1 },
      tail: { uMm: tail.uMm - 5, vMm: tail.vMm + 0.9 },
    });
    const shape = drawn.ok ? readOldShape(spreadShape(drawn, 0.2)) : drawn;
    if (!shape.ok) throw new Error(`${seed}: ${shape.reason}`);
    return shape;
  };
  return { set: noisy(plain, 0.3, drawFrom(seed)), old: { right: old(), left: old() } };
}

/** Brows of a reading in the face's frame. */
export function browsOf({ brows }: FaceReading): Brows {
  return { right: forBrowMarks((mark) => brows[mark].right), left: forBrowMarks((mark) => brows[mark].left) };
}

/**
 * All that the library works out when one mark moves: midline, differences with intervals, outlines, cover,
 * plan, audit, growth.
 */
export function ourMove({ set, old }: Moved) {
  const reading = readFace(set, choices);
  if (!reading.ok) throw new Error(reading.reason);
  const brows = browsOf(reading);
  const [right, left] = [outlineOf(brows.right), outlineOf(brows.left)];
  if (!right.ok || !left.ok) throw new Error('marks in order');
  const half = forBrowMarks((mark) => reading.brows[mark].up.hi - reading.brows[mark].up.value);
  const task = {
    brows,
    free: 'both',
    old,
    limits: { right: limits, left: limits },
    marginMm: coverMarginFactor * reading.readingMm,
    weights: { right: 1, left: 1 },
  } as const;
  const plan = planCorrections(task, 'quiet', half);
  if (!plan.ok) throw new Error(plan.reason);
  const after = { right: outlineOf(plan.brows.right), left: outlineOf(plan.brows.left) };
  if (!after.right.ok || !after.left.ok) throw new Error('planned marks in order');
  return {
    reading,
    task,
    areaMm2: { right: outlineAreaMm2(right), left: outlineAreaMm2(left) },
    plan,
    outside: { right: outsideOf(old.right, after.right), left: outsideOf(old.left, after.left) },
    growth: { right: growthSince(old.right, after.right), left: growthSince(old.left, after.left) },
  };
}
