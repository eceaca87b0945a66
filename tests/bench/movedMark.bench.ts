import { expect, test } from 'vitest';
import { markUncertaintyMm, budgetMm } from '#lib/mapping/budget.ts';
import { coverMarginFactor } from '#lib/mapping/plan/planValues.ts';
import { choices } from '../lib/mapping/faces.ts';
import { movedFace, ourMove } from './movedMark.ts';
import { plainMove } from './plainMove.ts';

const faces = Array.from({ length: 8 }, (_, seed) => movedFace(seed));
const markMm = markUncertaintyMm({ ...choices, budgetMm: budgetMm(choices.budget) });

/** The bar is 4 ms for midline, differences, outlines, cover, plan, audit and growth together; each round moves a mark on eight faces. */
test('moving a mark: everything, against the same work written down plainly', async ({ bench }) => {
  const times = await bench.compare(
    bench('library', () => faces.forEach((face) => ourMove(face))),
    bench('plain', () => faces.forEach(({ set, old }) => plainMove(set, old, markMm, coverMarginFactor * markMm))),
  );
  const [ours, plain] = [times.get('library').latency.p50 / faces.length, times.get('plain').latency.p50 / faces.length];
  console.log(`moving a mark: ${ours.toFixed(2)} ms, plainly ${plain.toFixed(1)} ms, ratio ${(plain / ours).toFixed(0)}`);
  expect(ours).toBeLessThan(4);
});
