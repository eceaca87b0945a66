import { expect, test } from 'vitest';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { planCorrections } from '#lib/mapping/plan/planCorrections.ts';
import { leaveBelowMm } from '#lib/mapping/numbers/plan.ts';
import type { PlanTask } from '#lib/mapping/plan/planHeights.ts';
import { handBrow, lifted, limitsOf, seededTask, shapeOf } from './tasks.ts';
import { task } from './correctionsTask.ts';

const half = (mm: number) => forBrowMarks(() => mm);

const plan = (changes: Partial<PlanTask> = {}, halfMm = 0.5) => {
  const found = planCorrections({ ...task, ...changes }, 'quiet', half(halfMm));
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] skin that is raised, itchy or scaly stops the plan before anything else', () => {
  for (const skin of ['raised', 'itchy', 'scaly'] as const) {
    expect(planCorrections(task, skin, half(0.5))).toEqual({ ok: false, reason: 'skin-not-quiet', skin });
    const nonsense = {
      ...task,
      brows: { right: { ...handBrow, tail: { uMm: NaN, vMm: 0 } }, left: handBrow },
    };
    expect(planCorrections(nonsense, skin, half(0.5))).toEqual({ ok: false, reason: 'skin-not-quiet', skin });
  }
});

test('[hand] raise the lower side by 1.4 mm, give or take half the interval', () => {
  const { moves, remainingMm } = plan();
  for (const mark of browMarks) {
    expect(moves.right[mark]).toEqual({ byMm: expect.closeTo(1.4, 6), halfMm: 0.5, isLeft: false });
    expect(moves.left[mark]).toEqual({ byMm: 0, halfMm: 0.5, isLeft: true });
    expect(remainingMm[mark]).toBeCloseTo(0, 6);
  }
});

test('[hand] both free: each moves half way, with half the doubt; a heavier side moves less', () => {
  const even = plan({ free: 'both' });
  expect(even.moves.right.tail).toEqual({ byMm: expect.closeTo(0.7, 6), halfMm: 0.25, isLeft: false });
  expect(even.moves.left.tail).toEqual({ byMm: expect.closeTo(-0.7, 6), halfMm: 0.25, isLeft: false });
  const uneven = plan({ free: 'both', weights: { right: 1, left: 3 } });
  expect(uneven.moves.right.tail.byMm).toBeCloseTo(1.05, 6);
  expect(uneven.moves.right.tail.halfMm).toBeCloseTo(0.375, 9);
  expect(uneven.moves.left.tail.halfMm).toBeCloseTo(0.125, 9);
});

test('[hand] a move within half its interval, or within 0.25 mm, is left, and then not made at all', () => {
  expect(leaveBelowMm).toBe(0.25);
  const small = plan({}, 1.5);
  for (const mark of browMarks) {
    expect(small.moves.right[mark].isLeft).toBe(true);
    expect(small.brows.right[mark].vMm).toBeCloseTo(handBrow[mark].vMm, 5);
    expect(small.remainingMm[mark]).toBeCloseTo(1.4, 5);
  }
  const tiny = (apart: number) =>
    plan({ brows: { right: handBrow, left: lifted(handBrow, apart) } }, 0.1).moves.right.tail.isLeft;
  expect(tiny(0.24)).toBe(true);
  expect(tiny(0.26)).toBe(false);
});

test('[hand] limits that contradict are named with the gap, the room and what stays', () => {
  const { contradictions } = plan({
    free: 'both',
    limits: { right: limitsOf(0.5, 0), left: limitsOf(0, 0.6) },
  });
  expect(contradictions.length).toBe(5);
  expect(contradictions[0]).toEqual({
    mark: 'frontLower',
    gapMm: expect.closeTo(1.4, 9),
    roomMm: expect.closeTo(1.1, 9),
    leastMm: expect.closeTo(0.3, 9),
  });
  expect(plan({ limits: { right: limitsOf(1.4, 0), left: limitsOf(0, 0) } }).contradictions).toEqual([]);
  // The side that is not free gives no room, whatever its limits say.
  expect(
    plan({ limits: { right: limitsOf(1.3, 0), left: limitsOf(9, 9) } }).contradictions[0]?.leastMm,
  ).toBeCloseTo(0.1, 9);
});

test('[hand] old work under the lower edge holds a side that should rise', () => {
  // The old lower edge runs along the brow’s own: it cannot be raised without laying the old work bare.
  const old = shapeOf([
    [17, 18.5],
    [46, 27.2],
    [46, 30],
    [17, 24],
  ]);
  const { moves, heldBy, cover } = plan({ old: { right: old } });
  expect(cover.right?.outMm2).toBe(0);
  expect(moves.right.archTop.byMm).toBeCloseTo(1.4, 3);
  expect(moves.right.archLower.byMm).toBeLessThan(0.3);
  expect(
    heldBy.some((holder) => holder.kind === 'old-work' && holder.side === 'right' && holder.edge === 'lower'),
  ).toBe(true);
});

test('[hand] the ferry pilot: an old upper edge 1.8 mm above what the limit of 1.0 mm reaches leaves 0.8 mm', () => {
  const old = shapeOf([
    [30, 26],
    [46.5, 29],
    [47.5, 29],
    [60, 24],
    [60, 25],
    [47.5, 34.8],
    [46.5, 34.8],
    [30, 29],
  ]);
  const both = { right: handBrow, left: handBrow };
  const { moves, cover, heldBy } = plan(
    {
      brows: both,
      free: 'both',
      old: { right: old },
      limits: { right: limitsOf(1, 1), left: limitsOf(1, 1) },
    },
    0,
  );
  expect(cover.right?.outMm2).toBeGreaterThan(0);
  expect(moves.right.archTop.byMm).toBeCloseTo(1, 3);
  expect(heldBy[0]).toEqual({ kind: 'raise', side: 'right', mark: expect.any(String) });
  // Both sides rise together.
  expect(moves.left.archTop.byMm).toBeCloseTo(1, 3);
});

test('[property] seeded faces: left marks do not move, others move by more; leaving never uncovers more', () => {
  for (let seed = 0; seed < 80; seed++) {
    const seeded = seededTask(seed);
    const found = planCorrections(seeded, 'quiet', half(0.6));
    if (!found.ok) continue;
    for (const side of ['right', 'left'] as const) {
      for (const mark of browMarks) {
        const { byMm, isLeft } = found.moves[side][mark];
        expect(found.brows[side][mark].vMm - seeded.brows[side][mark].vMm).toBeCloseTo(byMm, 9);
        expect(byMm).toBeLessThanOrEqual(seeded.limits[side].raiseMostMm[mark] + 2e-6);
        expect(-byMm).toBeLessThanOrEqual(seeded.limits[side].lowerMostMm[mark] + 2e-6);
        if (isLeft) expect(Math.abs(byMm)).toBeLessThanOrEqual(0.6);
      }
    }
  }
});

test('[hand] only the marks that are worth moving are moved: a tail 0.1 mm apart stays, the rest rises by 1.4', () => {
  const left = { ...lifted(handBrow, 1.4), tail: { uMm: 64, vMm: 20.1 } };
  const { moves, remainingMm, brows } = plan({ brows: { right: handBrow, left } });
  expect(moves.right.tail).toEqual({ byMm: expect.closeTo(0, 6), halfMm: 0.5, isLeft: true });
  expect(remainingMm.tail).toBeCloseTo(0.1, 6);
  expect(brows.right.tail.vMm).toBeCloseTo(20, 6);
  for (const mark of ['frontLower', 'frontTop', 'archTop', 'archLower'] as const)
    expect(moves.right[mark]).toEqual({ byMm: expect.closeTo(1.4, 6), halfMm: 0.5, isLeft: false });
});

test('[hand] a move too small to be worth making is made where leaving it would lay old work bare', () => {
  // Old work stands 0.15 mm over the arch at 47 and half a mm beyond it, where the edge has fallen by 13 B;
  // raising the arch raises the edge there by 1 − B of it.
  const t = 16.5 / 17;
  const fall = 1 - 1.5 * t + 0.5 * t ** 3;
  const old = shapeOf([
    [46.5, 30],
    [47.5, 30],
    [47.5, 33.15],
    [46.5, 33.15],
  ]);
  for (const side of ['right', 'left'] as const) {
    const { moves, cover } = plan({
      brows: { right: handBrow, left: handBrow },
      free: side,
      old: { [side]: old },
    });
    expect(cover[side]?.outMm2).toBe(0);
    expect(moves[side].archTop).toEqual({
      byMm: expect.closeTo((0.15 + 13 * fall) / (1 - fall), 4),
      halfMm: 0.5,
      isLeft: false,
    });
    expect(moves[side].archLower).toEqual({ byMm: expect.closeTo(0, 6), halfMm: 0.5, isLeft: true });
    expect(moves[side].frontTop.isLeft).toBe(true);
  }
});

test('[hand] the left side alone may move: it comes down by what it stands higher; without an outline there is no plan', () => {
  const { moves } = plan({ free: 'left' });
  for (const mark of browMarks) {
    expect(moves.left[mark].byMm).toBeCloseTo(-1.4, 6);
    expect(moves.right[mark].byMm).toBe(0);
  }
  const bent = { ...handBrow, tail: { uMm: 10, vMm: 20 } };
  for (const free of ['right', 'both'] as const)
    expect(
      planCorrections({ ...task, free, brows: { ...task.brows, right: bent } }, 'quiet', half(0.5)),
    ).toEqual({ ok: false, reason: 'tail-inside-front' });
  expect(
    planCorrections({ ...task, free: 'both', brows: { ...task.brows, left: bent } }, 'quiet', half(0.5)),
  ).toEqual({ ok: false, reason: 'tail-inside-front' });
});
