import { tailLimitAtMm } from '../mapping/placing/tailLine.ts';
import type { Bones } from './bones.ts';
import type { BrowSpots } from './landmarks.ts';

/** One brow as an artist would say it: heights above the pupil line, thicknesses, shares, millimetres. */
export type BrowPlan = Readonly<{
  /**
   * Where the lower front mark stands: above the inner corner, above the nose wing, or so many mm from the
   * midline.
   */
  front: 'inner-corner' | 'nose-wing' | number;
  frontLowerV: number;
  frontThicknessMm: number;
  /** The upper front mark stands this much further out: a soft, leaning front edge. */
  frontSlantMm: number;
  /** Place of the arch between front (0) and tail (1). */
  archShare: number;
  archTopV: number;
  archThicknessMm: number;
  tailV: number;
  /** Tail end inside the line from the nose wing over the outer eye corner. */
  tailInsideMm: number;
}>;

export const defaultBrowPlan: BrowPlan = {
  front: 'inner-corner',
  frontLowerV: 11.4,
  frontThicknessMm: 6.6,
  frontSlantMm: 0.7,
  archShare: 0.65,
  archTopV: 21.2,
  archThicknessMm: 5.9,
  tailV: 14,
  tailInsideMm: 0.4,
};

type TailBones = Pick<
  Bones,
  'noseWidthMm' | 'noseDropMm' | 'intercanthalMm' | 'eyeWidthMm' | 'outerCornerMm'
>;

/** How far out the line nose wing – outer eye corner stands at height v (nose not leaning). */
export function tailLimitMm(bones: TailBones, v: number): number {
  const wing = { uMm: bones.noseWidthMm / 2, vMm: -bones.noseDropMm };
  const corner = { uMm: bones.intercanthalMm / 2 + bones.eyeWidthMm, vMm: bones.outerCornerMm };
  return tailLimitAtMm({ wing, corner }, v);
}

/** Marks that obey the trade checks on these bones: front on its anchor, tail just inside the line. */
export function plannedBrow(bones: TailBones, plan: BrowPlan): BrowSpots {
  const front = frontMm(bones, plan.front);
  const tail = tailLimitMm(bones, plan.tailV) - plan.tailInsideMm;
  const arch = front + (tail - front) * plan.archShare;
  return {
    frontLower: [front, plan.frontLowerV],
    frontTop: [front + plan.frontSlantMm, plan.frontLowerV + plan.frontThicknessMm],
    archTop: [arch, plan.archTopV],
    archLower: [arch - archLeanMm, plan.archTopV - plan.archThicknessMm],
    tail: [tail, plan.tailV],
  };
}

/** The lower arch mark lies a little nearer the midline than the upper one (drawn by eye). */
const archLeanMm = 0.8;

function frontMm(bones: TailBones, front: BrowPlan['front']): number {
  if (front === 'inner-corner') return bones.intercanthalMm / 2;
  if (front === 'nose-wing') return bones.noseWidthMm / 2;
  return front;
}
