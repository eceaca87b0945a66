import { expect, test } from 'vitest';
import { bundled } from './bundled.ts';
import { middle, middleMs } from './middleMs.ts';

const { faces, library, plainly } = await bundled<typeof import('./moves.ts')>('moves.ts');

/**
 * The bar is 4 ms on a quiet machine, in the middle of sixteen faces, for midline, differences, outlines,
 * cover, plan, audit and growth together.
 */
test('moving a mark: everything, against the same work written down plainly', () => {
  const times = faces.map((face) => ({
    ours: middleMs(41, () => library(face)),
    plain: middleMs(5, () => plainly(face)),
  }));
  const [ours, plain] = [middle(times.map((face) => face.ours)), middle(times.map((face) => face.plain))];
  console.log(
    `moving a mark: ${ours.toFixed(2)} ms (${times.map((face) => face.ours.toFixed(1)).join(', ')}), plainly ${plain.toFixed(1)} ms, ratio ${(plain / ours).toFixed(1)}`,
  );
  expect(plain / ours).toBeGreaterThan(2);
});
