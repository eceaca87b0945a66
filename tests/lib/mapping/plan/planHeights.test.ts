import { difference } from 'polyclip-ts';
import { expect, test } from 'vitest';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { browMarks, type Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf, type Outline } from '#lib/mapping/outline/outline.ts';
import { outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { areaBeyondMm2 } from '#lib/mapping/plan/areaBeyond.ts';
import { coverRows, withMargin } from '#lib/mapping/plan/coverRows.ts';
import { edgeSpans } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsFrom, heightsOf, listOf, withHeights, type BrowHeights } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { meetingHeightMm } from '#lib/mapping/plan/meetingHeight.ts';
import { nearest } from '#lib/mapping/plan/nearest.ts';
import { oldPieces } from '#lib/mapping/plan/oldPieces.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { planHeights, type PlannedHeights, type PlanTask } from '#lib/mapping/plan/planHeights.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { drawFrom, type Draw } from '#lib/quantities/seed.ts';
import { gridFinds, isCoverWithin } from './gridSearch.ts';
import { handBrow, lifted, limitsOf, seededTask } from './tasks.ts';

const both = ['right', 'left'] as const;
/** What a plan may leave outside over the least, mm², for the sake of equal sides; and of the margin. */
const toleranceMm2 = 0.06;
const marginToleranceMm2 = (mm2: number) => 0.03 + 3e-3 * mm2;
const freeSides = ({ free }: PlanTask): readonly Side[] => (free === 'both' ? both : [free]);
const solved = Array.from({ length: 350 }, (_, seed) => {
  const task = seededTask(seed);
  return { seed, task, plan: planHeights(task) };
});
const planned = solved.flatMap(({ seed, task, plan }) => (plan.ok ? [{ seed, task, plan }] : []));
const each = planned.flatMap(({ seed, task, plan }) =>
  freeSides(task).map((side) => {
    const old = task.old[side];
    const spans = edgeSpans(task.brows[side]);
    const cover = plan.cover[side];
    if (!old || !cover) throw new Error('every free side has old work and a plan');
    return {
      name: `seed ${seed} ${side}`,
      task,
      side,
      old,
      spans,
      cover,
      brow: withHeights(task.brows[side], plan.heights[side]),
      outline: drawn(withHeights(task.brows[side], plan.heights[side])),
    };
  }),
);

/**
 * What a second polygon package finds outside, mm². Its curves are cut coarser: it takes a hundred times as
 * long.
 */
function outsideAgain(corners: readonly { uMm: number; vMm: number }[], outline: Outline): number {
  const left = difference([ringOf(corners)], [ringOf(outlinePolygon(outline, 40))]);
  return left.reduce(
    (sum, polygon) =>
      sum + polygon.reduce((part, ring, i) => part + (i === 0 ? 1 : -1) * Math.abs(shoelace(ring)), 0),
    0,
  );
}

test('[library] over 500 seeded old shapes: where it says covered, two polygon packages find at most 0.01 mm² outside', () => {
  let covered = 0;
  for (const { name, old, cover, outline } of each) {
    if (cover.outMm2 > 0) continue;
    covered++;
    expect(outsideOf(old, outline).areaMm2, name).toBeLessThanOrEqual(0.01);
    expect(outsideAgain(old.corners, outline), name).toBeLessThanOrEqual(0.01);
  }
  expect(each.length).toBeGreaterThanOrEqual(500);
  expect(covered).toBeGreaterThan(150);
});

test('[library] what stays outside has the same area by both polygon packages, and it is the area the plan says', () => {
  let compared = 0;
  for (const { name, old, cover, outline } of each.filter(({ cover }) => cover.outMm2 > 0)) {
    const { areaMm2, beforeFrontMm, beyondTailMm } = outsideOf(old, outline);
    if (++compared % 3 === 0)
      expect(Math.abs(areaMm2 - outsideAgain(old.corners, outline)), name).toBeLessThan(0.03);
    if (beforeFrontMm === 0 && beyondTailMm === 0)
      expect(Math.abs(areaMm2 - cover.outMm2), name).toBeLessThan(0.02);
  }
});

test('[library] covered exactly where some heights cover: its own do, place by place, and where it finds none no grid of 0.1 mm does', () => {
  for (const { name, task, side, old, cover, brow } of each) {
    const was = task.brows[side];
    const agrees = (marginMm: number, isCovered: boolean) =>
      isCovered
        ? isCoverWithin(brow, was, old, task.limits[side], marginMm, 1e-3)
        : !gridFinds(was, old, task.limits[side], marginMm);
    expect(agrees(task.marginMm, cover.outMm2 === 0 && cover.marginOutMm2 === 0), name).toBe(true);
    if (cover.marginOutMm2 > 0) expect(agrees(0, cover.outMm2 === 0), name).toBe(true);
  }
});

test('[library] limits contradict exactly where that search finds no heights at all', () => {
  const speck = (brow: Brow) => {
    const [u, v] = [
      (brow.frontTop.uMm + brow.archTop.uMm) / 2,
      (brow.frontTop.vMm + brow.archTop.vMm + brow.frontLower.vMm + brow.archLower.vMm) / 4,
    ];
    return [
      { uMm: u, vMm: v },
      { uMm: u + 0.1, vMm: v },
      { uMm: u, vMm: v + 0.1 },
    ];
  };
  let refused = 0;
  for (const { seed, task, plan } of solved) {
    const found = freeSides(task).every((side) => {
      const old = task.old[side];
      return (
        old && gridFinds(task.brows[side], { ...old, corners: speck(task.brows[side]) }, task.limits[side], 0)
      );
    });
    expect(plan.ok ? 'planned' : plan.reason, `seed ${seed}`).toBe(found ? 'planned' : 'limits-contradict');
    if (!plan.ok) refused++;
  }
  expect(refused).toBeGreaterThan(2);
});

test('[property] cover never breaks an approved limit, and a side that is not free stays as it was', () => {
  for (const { task, plan } of planned) {
    for (const side of both) {
      const heights = listOf(plan.heights[side]);
      if (!freeSides(task).includes(side)) expect(heights).toEqual(listOf(heightsOf(task.brows[side])));
      else
        for (const { coefficients, atLeast } of rowsOf(task, side))
          expect(rowValue(coefficients, heights)).toBeGreaterThan(atLeast - 1e-7);
    }
  }
});

test('[property] no other heights that keep limits and cover are more equal, or as equal with less movement', () => {
  const draw = drawFrom(31);
  let [tried, alike] = [0, 0];
  for (const { seed, task, plan } of planned) {
    const [apart, moved] = [asymmetry(plan.heights), movement(task, plan.heights)];
    // Other heights that leave less are seldom met, so more are drawn where nothing need be left.
    const isCovered = freeSides(task).every((side) => plan.cover[side]?.marginOutMm2 === 0);
    for (let i = 0; i < (task.free !== 'both' ? 12 : isCovered ? 100 : 6); i++) {
      const far = feasible(task, plan, draw);
      for (const share of [1, 0.1, 1e-2, 1e-3]) {
        const heights = between(plan.heights, far, share);
        if (!freeSides(task).every((side) => keeps(task, plan, side, listOf(heights[side])))) continue;
        tried++;
        expect(asymmetry(heights), `seed ${seed}`).toBeGreaterThan(apart * (1 - 1e-6) - 1e-6);
        // Both sides carried by the same change are as equal as before.
        const same = {
          right: far.right,
          left: forBrowMarks((mark) => far.right[mark] + plan.heights.left[mark] - plan.heights.right[mark]),
        };
        const carried = between(plan.heights, same, share);
        if (task.free !== 'both' || !both.every((side) => keeps(task, plan, side, listOf(carried[side]))))
          continue;
        alike++;
        expect(movement(task, carried), `seed ${seed}`).toBeGreaterThan(moved - 1e-5);
      }
    }
  }
  expect(tried).toBeGreaterThan(4000);
  expect(alike).toBeGreaterThan(500);
});

test('[property] inside the limits no random heights leave less of the old shape outside than the plan says', () => {
  const draw = drawFrom(33);
  for (const { name, task, side, old, outline } of each.filter(({ cover }) => cover.outMm2 > 0)) {
    const limits = task.limits[side];
    const leftMm2 = outsideOf(old, outline).areaMm2;
    for (let i = 0; i < 30; i++) {
      const heights = forBrowMarks(
        (mark) =>
          task.brows[side][mark].vMm -
          limits.lowerMostMm[mark] +
          draw() * (limits.raiseMostMm[mark] + limits.lowerMostMm[mark]),
      );
      const brow = withHeights(task.brows[side], heights);
      const other = outlineOf(brow);
      const isInside = rowsOf(task, side).every(
        ({ coefficients, atLeast }) => rowValue(coefficients, listOf(heights)) >= atLeast,
      );
      if (isInside && other.ok)
        expect(leftMm2, name).toBeLessThan(outsideOf(old, other).areaMm2 + toleranceMm2);
    }
  }
});

test('[property] wider limits and a smaller margin never leave more outside', () => {
  for (const { seed, task, plan } of planned.slice(0, 120)) {
    const wider = (side: Side) => ({
      ...task.limits[side],
      raiseMostMm: forBrowMarks((m) => task.limits[side].raiseMostMm[m] + 0.3),
      lowerMostMm: forBrowMarks((m) => task.limits[side].lowerMostMm[m] + 0.3),
    });
    const wide = planHeights({ ...task, limits: { right: wider('right'), left: wider('left') } });
    const slim = planHeights({ ...task, marginMm: task.marginMm / 2 });
    for (const side of freeSides(task)) {
      const was = plan.cover[side];
      const now = wide.ok ? wide.cover[side] : undefined;
      if (!was || !now) throw new Error(`still planned ${seed}`);
      expect(now.outMm2, `seed ${seed}`).toBeLessThanOrEqual(was.outMm2 + toleranceMm2);
      if (was.outMm2 === 0)
        expect(now.marginOutMm2, `seed ${seed}`).toBeLessThanOrEqual(
          was.marginOutMm2 + marginToleranceMm2(was.marginOutMm2),
        );
      // Half the margin is half the way out, wherever its edge lies beyond: never a larger area.
      if (slim.ok && was.outMm2 === 0)
        expect(slim.cover[side]?.marginOutMm2, `seed ${seed}`).toBeLessThanOrEqual(
          was.marginOutMm2 + marginToleranceMm2(was.marginOutMm2),
        );
    }
  }
});

test('[library] without old work the closed form and the quadratic programme agree to 1e-12', () => {
  let met = 0;
  for (let seed = 0; seed < 300; seed++) {
    const { brows, limits, weights } = seededTask(seed);
    const bare = (side: Side) => ({
      raiseMostMm: limits[side].raiseMostMm,
      lowerMostMm: limits[side].lowerMostMm,
    });
    const plan = planHeights({
      brows,
      free: 'both',
      old: {},
      limits: { right: bare('right'), left: bare('left') },
      marginMm: 0.5,
      weights,
    });
    if (!plan.ok) throw new Error(plan.reason);
    const room = (side: Side, mark: keyof Brow) => ({
      vMm: brows[side][mark].vMm,
      raiseMostMm: limits[side].raiseMostMm[mark],
      lowerMostMm: limits[side].lowerMostMm[mark],
    });
    const meet = browMarks.map((mark) =>
      meetingHeightMm({ right: room('right', mark), left: room('left', mark) }, weights),
    );
    const isPinned = both.some((side) => limits[side].raiseMostMm.tail + limits[side].lowerMostMm.tail === 0);
    if (isPinned || meet.some((height) => height === undefined)) continue;
    met++;
    browMarks.forEach((mark, i) => {
      expect(Math.abs(plan.heights.right[mark] - (meet[i] ?? NaN))).toBeLessThan(1e-12);
      expect(plan.heights.left[mark]).toBe(plan.heights.right[mark]);
    });
  }
  expect(met).toBeGreaterThan(100);
});

test('[hand] where the limits contradict, both sides go as far as they may and the rest stays', () => {
  // The left side is 3 mm higher; 1 up and 0.5 down leave 1.5 mm.
  const plan = planHeights({
    brows: { right: handBrow, left: lifted(handBrow, 3) },
    free: 'both',
    old: {},
    limits: { right: limitsOf(1, 0.5), left: limitsOf(1, 0.5) },
    marginMm: 0,
    weights: { right: 1, left: 1 },
  });
  if (!plan.ok) throw new Error(plan.reason);
  for (const mark of browMarks) {
    expect(plan.heights.right[mark]).toBeCloseTo(handBrow[mark].vMm + 1, 6);
    expect(plan.heights.left[mark]).toBeCloseTo(handBrow[mark].vMm + 2.5, 6);
  }
  expect(plan.heldBy.filter(({ kind, side }) => kind === 'raise' && side === 'right').length).toBe(5);
  expect(plan.heldBy.filter(({ kind, side }) => kind === 'lower' && side === 'left').length).toBe(5);
});

test('[hand] one side free: it goes to the other as far as it may', () => {
  for (const [apart, moved] of [
    [0.7, 0.7],
    [3, 1],
    [-0.3, -0.3],
    [-2, -0.5],
  ] as const) {
    const plan = planHeights({
      brows: { right: handBrow, left: lifted(handBrow, apart) },
      free: 'right',
      old: {},
      limits: { right: limitsOf(1, 0.5), left: limitsOf(0, 0) },
      marginMm: 0,
      weights: { right: 1, left: 1 },
    });
    if (!plan.ok) throw new Error(plan.reason);
    for (const mark of browMarks) expect(plan.heights.right[mark] - handBrow[mark].vMm).toBeCloseTo(moved, 9);
  }
});

function drawn(brow: Brow) {
  const outline = outlineOf(brow);
  if (!outline.ok) throw new Error(outline.reason);
  return outline;
}

function ringOf(points: readonly { uMm: number; vMm: number }[]): [number, number][] {
  return points.map(({ uMm, vMm }) => [uMm, vMm]);
}

function shoelace(ring: readonly (readonly [number, number])[]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length] ?? [0, 0];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

type Heights = Readonly<Record<Side, BrowHeights>>;
const asymmetry = ({ right, left }: Heights) =>
  browMarks.reduce((sum, mark) => sum + (left[mark] - right[mark]) ** 2, 0);
const movement = ({ brows, weights }: PlanTask, heights: Heights) =>
  both.reduce(
    (sum, side) =>
      sum +
      weights[side] *
        browMarks.reduce((part, mark) => part + (heights[side][mark] - brows[side][mark].vMm) ** 2, 0),
    0,
  );
const between = (from: Heights, to: Heights, share: number): Heights => {
  const side = (name: Side) =>
    forBrowMarks((mark) => from[name][mark] + share * (to[name][mark] - from[name][mark]));
  return { right: side('right'), left: side('left') };
};
/**
 * Random heights that keep the limits and are no worse covered: the nearest such to random ones. Both sides
 * take the same draw.
 */
function feasible(task: PlanTask, plan: PlannedHeights, draw: Draw): Heights {
  const aim = browMarks.map(() => 4 * (draw() - 0.5));
  const side = (name: Side): BrowHeights => {
    if (!freeSides(task).includes(name)) return plan.heights[name];
    const before = listOf(plan.heights[name]);
    const eased = coverOf(task, name).map((row) => ({
      ...row,
      atLeast: Math.min(row.atLeast, rowValue(row.coefficients, before)),
    }));
    const found = nearest(
      before.map((v, i) => v + (aim[i] ?? 0)),
      [1, 1, 1, 1, 1],
      [...rowsOf(task, name), ...eased],
    );
    return found.ok ? heightsFrom(found.unknowns) : plan.heights[name];
  };
  return { right: side('right'), left: side('left') };
}

function coverOf(task: PlanTask, side: Side) {
  const [spans, old] = [edgeSpans(task.brows[side]), task.old[side]];
  if (!old) throw new Error('marks in order, old work present');
  return withMargin(coverRows(old, spans, side, task.brows[side].tail.uMm), task.marginMm);
}

function rowsOf(task: PlanTask, side: Side) {
  const spans = edgeSpans(task.brows[side]);

  return limitRows(task.brows[side], spans, side, task.limits[side], task.old[side]?.areaMm2);
}

/**
 * Limits hold and no place of the old edge is worse covered than by the plan, but for rounding. Where not all
 * is covered a plan comes to within a tenth of its tolerance of what equal sides could gain: other heights
 * must leave that much less.
 */
function keeps(task: PlanTask, plan: PlannedHeights, side: Side, heights: readonly number[]): boolean {
  const before = listOf(plan.heights[side]);
  return (
    leavesLess(task, plan, side, heights) &&
    rowsOf(task, side).every(
      ({ coefficients, atLeast }) => rowValue(coefficients, heights) >= atLeast - 1e-9,
    ) &&
    coverOf(task, side).every(
      ({ coefficients, atLeast }) =>
        rowValue(coefficients, heights) >= Math.min(atLeast, rowValue(coefficients, before)) - 1e-9,
    )
  );
}

function leavesLess(task: PlanTask, plan: PlannedHeights, side: Side, heights: readonly number[]): boolean {
  const cover = plan.cover[side];
  if (!cover || cover.marginOutMm2 === 0) return true;
  const [now, was] = [areasMm2(task, side, heights), areasMm2(task, side, listOf(plan.heights[side]))];
  const isLess = (one: number, other: number, toleranceMm2: number) => one <= other - 0.15 * toleranceMm2;
  return (
    (cover.outMm2 === 0 || isLess(now.outMm2, was.outMm2, Math.max(0.01, 1e-3 * was.outMm2))) &&
    isLess(now.marginOutMm2, was.marginOutMm2, Math.max(4e-3, 1e-3 * was.marginOutMm2))
  );
}

function areasMm2({ brows, old, marginMm }: PlanTask, side: Side, heights: readonly number[]) {
  const shape = old[side];
  if (!shape) throw new Error('old work present');
  const { added, taken, margin } = oldPieces(shape, edgeSpans(brows[side]), brows[side].tail.uMm, marginMm);
  return {
    outMm2: areaBeyondMm2(added, heights) - areaBeyondMm2(taken, heights),
    marginOutMm2: areaBeyondMm2(margin, heights),
  };
}
