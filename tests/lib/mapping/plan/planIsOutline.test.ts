import { expect, test } from 'vitest';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { planCorrections } from '#lib/mapping/plan/planCorrections.ts';
import type { PlanTask } from '#lib/mapping/plan/planHeights.ts';
import { handBrow, lifted, limitsOf, seededTask } from './tasks.ts';
import { task } from './correctionsTask.ts';

const half = (mm: number) => forBrowMarks(() => mm);

const plan = (changes: Partial<PlanTask> = {}, halfMm = 0.5) => {
  const found = planCorrections({ ...task, ...changes }, 'quiet', half(halfMm));
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] a plan is an outline: a lower front mark is not raised past the upper one, however much its limit allows', () => {
  const only = (raise: number) => ({
    ...limitsOf(0, 0),
    raiseMostMm: { ...forBrowMarks(() => 0), frontLower: raise },
  });
  const { brows } = plan({
    brows: { right: handBrow, left: lifted(handBrow, 12) },
    limits: { right: only(10), left: limitsOf(0, 0) },
  });
  // The upper mark stays at 25 mm, so the lower one stops just under it.
  expect(outlineOf(brows.right).ok).toBe(true);
  expect(brows.right.frontLower.vMm).toBeGreaterThan(24.9);
});

test('[hand] a plan is an outline: the lower edge is not raised through the upper one at the arch', () => {
  const only = (raise: number) => ({
    ...limitsOf(0, 0),
    raiseMostMm: { ...forBrowMarks(() => 0), archLower: raise },
  });
  const { brows } = plan({
    brows: { right: handBrow, left: lifted(handBrow, 12) },
    limits: { right: only(10), left: limitsOf(0, 0) },
  });
  expect(outlineOf(brows.right).ok).toBe(true);
  // Both arch marks stand almost under each other, at 33 mm the upper one.
  expect(brows.right.archLower.vMm).toBeGreaterThan(31);
});

test('[hand] the side that is not free must be an outline, too', () => {
  const broken = { ...handBrow, frontTop: { uMm: 14, vMm: 16 } };
  for (const [free, brows] of [
    ['right', { right: handBrow, left: broken }],
    ['left', { right: broken, left: handBrow }],
  ] as const)
    expect(planCorrections({ ...task, brows, free }, 'quiet', half(0.5))).toEqual({
      ok: false,
      reason: 'front-top-not-above-lower',
    });
});

test('[property] every plan is an outline on both sides, and names what holds it once', () => {
  for (let seed = 0; seed < 60; seed++) {
    const found = planCorrections(seededTask(seed), 'quiet', half(0.4));
    if (!found.ok) continue;
    expect([outlineOf(found.brows.right).ok, outlineOf(found.brows.left).ok], `${seed}`).toEqual([
      true,
      true,
    ]);
    const named = found.heldBy.map((holder) => JSON.stringify(holder));
    expect(new Set(named).size, `${seed}`).toBe(named.length);
  }
});
