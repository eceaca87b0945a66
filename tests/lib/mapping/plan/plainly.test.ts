import { expect, test } from 'vitest';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { withHeights } from '#lib/mapping/plan/heights.ts';
import { planHeights } from '#lib/mapping/plan/planHeights.ts';
import { movedFace, ourMove } from '../../../bench/movedMark.ts';
import { plainCost, plainMove, plainShortMm } from '../../../bench/plainMove.ts';

test('[library] what a moved mark brings is what the same work written down plainly finds', () => {
  for (let seed = 0; seed < 6; seed++) {
    const moved = movedFace(seed);
    const ours = ourMove(moved);
    const plain = plainMove(moved.set, moved.old, ours.reading.readingMm, ours.task.marginMm);
    const planned = planHeights(ours.task);
    if (!planned.ok) throw new Error(planned.reason);
    for (const mark of browMarks) {
      for (const side of ['right', 'left'] as const) {
        expect(ours.task.brows[side][mark].vMm).toBeCloseTo(plain.brows[side][mark].vMm, 9);
        expect(
          Math.abs(planned.heights[side][mark] - plain.plan[side][mark].vMm),
          `seed ${seed} ${side} ${mark}`,
        ).toBeLessThan(0.5);
      }
      // The plain sum lets every mark err alike; ours lets the midline's err by more where they disagree.
      const { outward, up } = ours.reading.brows[mark];
      const widens = ours.reading.midlineMm / ours.reading.readingMm;
      for (const [i, { standardUncertainty }] of [outward, up].entries()) {
        expect(standardUncertainty / (plain.uncertainty[mark][i] ?? NaN)).toBeGreaterThan(0.985);
        expect(standardUncertainty / (plain.uncertainty[mark][i] ?? NaN)).toBeLessThan(1.015 * widens);
      }
    }
    // By the plain plan's own cost, with its margin a hair slimmer: rows ask up to 0.02 mm too much, steps
    // end at 0.01.
    const cost = plainCost(ours.task.brows, moved.old, ours.task.marginMm - 0.01);
    const at = {
      right: withHeights(ours.task.brows.right, planned.heights.right),
      left: withHeights(ours.task.brows.left, planned.heights.left),
    };
    expect(cost(at), `seed ${seed}`).toBeLessThan(cost(plain.plan) * 1.03 + 0.02);
    for (const side of ['right', 'left'] as const) {
      expect(ours.areaMm2[side]).toBeCloseTo(plain.areaMm2[side], 2);
      expect(plain.shortMm[side]).toBeLessThan(0.05);
      expect(planned.cover[side]?.outMm2).toBe(0);
      expect(plainShortMm(ours.plan.brows[side], moved.old[side], 0)).toBeLessThan(1e-3);
    }
  }
});
