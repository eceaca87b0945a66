import { expect, test } from 'vitest';
import { bundled } from './bundled.ts';
import { middle } from './middleMs.ts';

const { states, answer, readings } = await bundled<typeof import('./covers.ts')>('covers.ts');

/**
 * What the planner before this one took for the same sixty answers, in readings of a face, in one run on one
 * machine. It put rows on the corners of the old shape and let each corner's rows give way by a price; it is
 * no longer in the library.
 */
const byCornersInReadings = 280;

const timed = (run: () => unknown) => {
  const from = performance.now();
  run();
  return performance.now() - from;
};

test('an answer of “Cover of the old shape”, against the planner by corners', () => {
  // By turns, so that a machine that is busy for a while slows both.
  const rounds = Array.from({ length: 12 }, () => ({
    ours: timed(() => states.forEach(answer)),
    reading: timed(() => Array.from({ length: 10 }, readings)) / 10,
  })).slice(3);
  const ratio = middle(rounds.map(({ ours, reading }) => ours / reading));
  const ms = middle(rounds.map(({ ours }) => ours)) / states.length;
  console.log(
    `an answer: ${ms.toFixed(2)} ms, ${ratio.toFixed(0)} readings of a face; by corners ${byCornersInReadings}: ${(ratio / byCornersInReadings).toFixed(2)} of it`,
  );
  expect(ratio / byCornersInReadings).toBeLessThan(0.7);
});
