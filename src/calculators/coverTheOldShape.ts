import type { Brows } from '#lib/mapping/marks/brow.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { budgetMm, markUncertaintyMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { browMarks, type Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf, type NoOutline } from '#lib/mapping/outline/outline.ts';
import { growthSince, type Growth } from '#lib/mapping/plan/growth.ts';
import type { ApprovedLimits } from '#lib/mapping/plan/limits.ts';
import { readOldShape, type NoOldShape, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf, type Outside } from '#lib/mapping/plan/outsideOf.ts';
import {
  planCorrections,
  type CorrectionPlan,
  type NoCorrectionPlan,
} from '#lib/mapping/plan/planCorrections.ts';
import { coverMarginFactor } from '#lib/mapping/numbers/plan.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { exampleBudget } from '#lib/mapping/numbers/start.ts';
import { browOf, coverFields, type CoverState } from './coverFields.ts';
import type { Calculator } from './spec.ts';

export type CoverSide = Readonly<{ outside: Outside; growth: Growth | undefined }>;
export type Cover =
  | Readonly<{
      ok: true;
      plan: CorrectionPlan;
      sides: Readonly<Record<Side, CoverSide>>;
      /** The margin that the reading error asks for, mm. */
      askedMarginMm: number;
    }>
  | Readonly<{
      ok: false;
      side: Side;
      shape: 'planned' | 'old';
      reason: NoOutline['reason'] | NoOldShape['reason'];
    }>
  | Exclude<NoCorrectionPlan, NoOutline>;

/** Heights of five marks are compared. */
const k = familyCoverageFactor(browMarks.length);

/**
 * What of the old work the approved limits let the outline cover, the corrections that do it, what stays out,
 * and the growth.
 */
export const coverTheOldShape: Calculator<CoverState, Cover> = {
  ...coverFields,
  solve: (state) => {
    const shapes = { right: shapesOf(state, 'right'), left: shapesOf(state, 'left') };
    const { right, left } = shapes;
    if (!right.ok) return right;
    if (!left.ok) return left;
    const reading = {
      temMm: state.error,
      readings: Math.round(state.readings),
      budgetMm: budgetMm(exampleBudget),
    };
    const brows: Brows = { right: right.planned, left: left.planned };
    const limits: ApprovedLimits = {
      raiseMostMm: forBrowMarks(() => state.raise),
      lowerMostMm: forBrowMarks(() => state.lower),
      thicknessMostMm: state.thickness,
      growthMostShare: state.growth / 100,
    };
    const half = smallestRealDifferenceMm(reading, k);
    const plan = planCorrections(
      {
        brows,
        free: state.free,
        old: { right: right.old, left: left.old },
        limits: { right: limits, left: limits },
        marginMm: state.margin,
        weights: { right: 1, left: 1 },
      },
      state.skin,
      forBrowMarks(() => half),
    );
    if (!plan.ok) {
      return plan.reason === 'skin-not-quiet' || plan.reason === 'limits-contradict'
        ? plan
        : { ok: false, side: 'right', shape: 'planned', reason: plan.reason };
    }
    const [seenRight, seenLeft] = [seen(plan, right.old, 'right'), seen(plan, left.old, 'left')];
    if (!seenRight.ok) return seenRight;
    if (!seenLeft.ok) return seenLeft;
    return {
      ok: true,
      plan,
      sides: { right: seenRight, left: seenLeft },
      askedMarginMm: coverMarginFactor * markUncertaintyMm(reading),
    };
  },
};

type Shapes = Readonly<{ ok: true; planned: Brows[Side]; old: OldShape }>;
type NoShapes = Extract<Cover, Readonly<{ shape: unknown }>>;

function shapesOf(state: CoverState, side: Side): Shapes | NoShapes {
  const planned = browOf(state, 'planned', side);
  const outline = outlineOf(planned);
  if (!outline.ok) return { ok: false, side, shape: 'planned', reason: outline.reason };
  const drawn = outlineOf(browOf(state, 'old', side));
  if (!drawn.ok) return { ok: false, side, shape: 'old', reason: drawn.reason };
  const old = readOldShape(spreadShape(drawn, state.spread));
  return old.ok ? { ok: true, planned, old } : { ok: false, side, shape: 'old', reason: old.reason };
}

function seen(
  plan: CorrectionPlan,
  old: OldShape,
  side: Side,
): (CoverSide & Readonly<{ ok: true }>) | NoShapes {
  const outline = outlineOf(plan.brows[side]);
  if (!outline.ok) return { ok: false, side, shape: 'planned', reason: outline.reason };
  const growth = growthSince(old, outline);
  return { ok: true, outside: outsideOf(old, outline), growth: growth.ok ? growth : undefined };
}
