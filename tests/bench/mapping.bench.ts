import { expect, test } from 'vitest';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import { readFace } from '#lib/mapping/compare/readFace.ts';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { choices, noisy, noseOff, symmetricFace } from '../lib/mapping/faces.ts';

const count = 64;
const faces = Array.from({ length: count }, (_, seed) =>
  noisy(noseOff(symmetricFace(seed), (seed % 13) - 6), 0.36, drawFrom(seed)),
);
const marks = faces.map(mirrorMarksOf);

/** What one move of a mark costs. The bar is 4 ms for all of it; each round here reads 64 faces. */
test('moving a mark: plain midline, robust midline, whole reading', async ({ bench }) => {
  const times = await bench.compare(
    bench('plain', () => marks.forEach((face) => fitMidline(face))),
    bench('robust', () => marks.forEach((face) => fitRobustMidline(face))),
    bench('whole', () => faces.forEach((face) => readFace(face, choices))),
  );
  expect(times.get('whole').latency.p50 / count).toBeLessThan(4);
});
