import { test } from 'vitest';
import { bundled } from './bundled.ts';
import { middleMs } from './middleMs.ts';

const { interval } = await bundled<typeof import('./healings.ts')>('healings.ts');

/** The bar is 16 ms, one frame, on a quiet machine, for the interval of one blend at one time. */
test('the interval of a blend: 400 simulated healings', () => {
  console.log(`400 healings: ${middleMs(41, interval).toFixed(1)} ms`);
});
