import { expect, test } from 'vitest';
import { bundled } from './bundled.ts';
import { middleMs } from './middleMs.ts';

const { interval } = await bundled<typeof import('./healings.ts')>('healings.ts');

/** The bar is 16 ms, one frame, for the interval of one blend at one time. */
test('the interval of a blend: 400 simulated healings', () => {
  const ms = middleMs(41, interval);
  console.log(`400 healings: ${ms.toFixed(1)} ms`);
  expect(ms).toBeLessThan(16);
});
