import { expect, test } from 'vitest';
import { includesZero, intervalAround } from '#lib/quantities/interval.ts';

test('[hand] 3 ± 2 · 0.5 runs from 2 to 4', () => {
  expect(intervalAround(3, 0.5, 2)).toEqual({ value: 3, lo: 2, hi: 4, standardUncertainty: 0.5, k: 2 });
});

test('[hand] zero lies inside an interval, on either end of it, or outside', () => {
  const around = (value: number) => includesZero(intervalAround(value, 0.5, 2));
  expect([-1.5, -1, -0.5, 0, 0.5, 1, 1.5].map(around)).toEqual([false, true, true, true, true, true, false]);
});
