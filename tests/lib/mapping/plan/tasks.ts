import { practiceOldShape } from '#lib/face/oldShape.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { ApprovedLimits } from '#lib/mapping/plan/limits.ts';
import { readOldShape, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import type { PlanTask } from '#lib/mapping/plan/planHeights.ts';
import { drawFrom, seedFrom, type Draw } from '#lib/quantities/seed.ts';

/** The brow of the outline's worked sum: 287.625 mm². */
export const handBrow: Brow = {
  frontLower: { uMm: 15, vMm: 17 },
  frontTop: { uMm: 14, vMm: 25 },
  archTop: { uMm: 47, vMm: 33 },
  archLower: { uMm: 46, vMm: 27 },
  tail: { uMm: 64, vMm: 20 },
};

export const lifted = (brow: Brow, byMm: number): Brow =>
  forBrowMarks((mark) => ({ ...brow[mark], vMm: brow[mark].vMm + byMm }));

export const limitsOf = (raise: number, lower: number): ApprovedLimits => ({
  raiseMostMm: forBrowMarks(() => raise),
  lowerMostMm: forBrowMarks(() => lower),
});

export function shapeOf(corners: readonly (readonly [number, number])[]): OldShape {
  const shape = readOldShape(corners.map(([uMm, vMm]) => ({ uMm, vMm })));
  if (!shape.ok) throw new Error(shape.reason);
  return shape;
}

function seededShape(brow: Brow, seed: number): OldShape {
  const shape = readOldShape(practiceOldShape(brow, seed).corners);
  if (!shape.ok) throw new Error(`${seed}: ${shape.reason}`);
  return shape;
}

/** Limits in tenths, so that a grid of tenths holds both ends. */
function drawnLimits(draw: Draw, most: number, isPlain: boolean): ApprovedLimits {
  const tenths = () => Math.round(draw() * most * 10) / 10;
  const [raise, lower] = [tenths(), tenths()];
  const limits = { ...limitsOf(raise, lower), isTailWithinFront: draw() < 0.3 };
  if (isPlain) return limits;
  return {
    ...limits,
    ...(draw() < 0.6 && { thicknessMostMm: 7 + 3 * draw() }),
    ...(draw() < 0.6 && { growthMostShare: 0.1 + 0.4 * draw() }),
  };
}

/** A practice face with old work on both brows and limits drawn with it. */
export function seededTask(seed: number, isPlain = seed % 2 === 0): PlanTask {
  const draw = drawFrom(seedFrom('plan-task', seed));
  const level = ([0, 1, 2, 3] as const)[seed % 4] ?? 0;
  const { landmarks } = practiceFace(seed, level).face;
  const browOf = (side: Side): Brow =>
    forBrowMarks((mark) => ({ uMm: landmarks[side][mark][0], vMm: landmarks[side][mark][1] }));
  const brows = { right: browOf('right'), left: browOf('left') };
  return {
    brows,
    free: (['both', 'both', 'right', 'left'] as const)[Math.floor(seed / 4) % 4] ?? 'both',
    old: { right: seededShape(brows.right, 2 * seed), left: seededShape(brows.left, 2 * seed + 1) },
    limits: { right: drawnLimits(draw, 2, isPlain), left: drawnLimits(draw, 2, isPlain) },
    marginMm: [0, 0.2, 0.4, 0.6][Math.floor(draw() * 4)] ?? 0,
    weights: { right: 1, left: draw() < 0.5 ? 1 : 3 },
  };
}
