import { browMarks } from '../mapping/marks/markSet.ts';
import { growthFromMarginMm as insideMargin, growthSince as insideGrowth } from '../mapping/plan/growth.ts';
import type { ApprovedLimits } from '../mapping/plan/limits.ts';
import { readOldShape as insideOld, type OldShape } from '../mapping/plan/oldShape.ts';
import { outsideOf as insideOutside } from '../mapping/plan/outsideOf.ts';
import { oldSkins, planCorrections as insidePlan } from '../mapping/plan/planCorrections.ts';
import type { PlanTask } from '../mapping/plan/planHeights.ts';
import { spreadShape as insideSpread } from '../mapping/plan/spreadShape.ts';
import {
  above0,
  between,
  each,
  list,
  maybe,
  ok,
  oneOf,
  refusing,
  shape,
  throwing,
  yesOrNo,
  type Checked,
} from './domain.ts';
import * as of from './mappingDomains.ts';
import { bothSides, errorMm, factor, lengthMm, sides } from './units.ts';

export {
  oldSkins,
  type Contradiction,
  type CorrectionPlan,
  type Move,
  type NoCorrectionPlan,
  type OldSkin,
} from '../mapping/plan/planCorrections.ts';
export type { ApprovedLimits } from '../mapping/plan/limits.ts';
export type { NoPlan, PlannedHeights, PlanTask } from '../mapping/plan/planHeights.ts';
export type { NoLimits, SideCover } from '../mapping/plan/sideRoom.ts';

export type { SideWeights } from '../mapping/plan/meetingHeight.ts';
export type { Holder, Row } from '../mapping/plan/row.ts';
export type { BrowHeights } from '../mapping/plan/heights.ts';
export type { Edge as EdgeName } from '../mapping/plan/edgeSpans.ts';
export type { NoOldShape, OldShape } from '../mapping/plan/oldShape.ts';
export type { Outside } from '../mapping/plan/outsideOf.ts';
export type { Growth, NoGrowth } from '../mapping/plan/growth.ts';

const corners = list(of.facePoint, 2000);
const oldShape = shape<OldShape>({ ok, corners: list(of.facePoint, 2000, 3), areaMm2: above0(1e6) });
const mostMm = each(browMarks, lengthMm);
const limits = shape<ApprovedLimits>({
  raiseMostMm: mostMm,
  lowerMostMm: mostMm,
  thicknessMostMm: maybe(lengthMm),
  growthMostShare: maybe(between(-1, 100)),
  isTailWithinFront: maybe(yesOrNo),
});
const task = shape<PlanTask>({
  brows: of.brows,
  free: oneOf([...sides, 'both']),
  old: shape({ right: maybe(oldShape), left: maybe(oldShape) }),
  limits: bothSides(limits),
  marginMm: lengthMm,
  weights: bothSides(above0(1e6)),
});

/** The outline of old work from its corners, or the reason why they make none. */
export const readOldShape: Checked<typeof insideOld> = refusing(insideOld, 'corners', corners);
/** The old shape of work that has spread by so many mm since it was drawn. */
export const spreadShape: typeof insideSpread = throwing(
  insideSpread,
  'outline spreadMm',
  of.outline,
  lengthMm,
);
/** What of an old shape lies outside an outline: area, pieces, and how far at most. */
export const outsideOf: typeof insideOutside = throwing(insideOutside, 'old outline', oldShape, of.outline);
/** How much larger an outline is than the old work under it. */
export const growthSince: Checked<typeof insideGrowth> = refusing(
  insideGrowth,
  'old outline',
  oldShape,
  of.outline,
);
/** What the margin alone adds to a brow's thickness at every refresh, mm. */
export const growthFromMarginMm: typeof insideMargin = throwing(
  insideMargin,
  'marginFactor markUncertaintyMm',
  factor,
  errorMm,
);
/** The smallest set of corrections inside the approved limits. `halfMm`: half the interval of left minus right of each mark. */
export const planCorrections: Checked<typeof insidePlan> = refusing(
  insidePlan,
  'task skin halfMm',
  task,
  oneOf(oldSkins),
  each(browMarks, errorMm),
);
