import { expect, test } from 'vitest';
import {
  differenceReachedByMm,
  shareAtLeast,
  spreadFromMeanSizeMm,
} from '#lib/mapping/compare/usualDifference.ts';

test('[hand] the mean size of a normal difference is σ√(2/π)', () => {
  expect(spreadFromMeanSizeMm(Math.sqrt(2 / Math.PI))).toBeCloseTo(1, 12);
  expect(spreadFromMeanSizeMm(2 * Math.sqrt(2 / Math.PI))).toBeCloseTo(2, 12);
});

test('[table] half of all people lie beyond 0.6745 σ, 5 in 100 beyond 1.96 σ, everybody beyond 0 (1.96: NIST e-Handbook, t table, last row; 0.6745 from memory)', () => {
  const spread = spreadFromMeanSizeMm(1.7);
  expect(shareAtLeast(0, 1.7)).toBeCloseTo(1, 12);
  expect(shareAtLeast(0.674489750196 * spread, 1.7)).toBeCloseTo(0.5, 9);
  expect(shareAtLeast(1.95996398454 * spread, 1.7)).toBeCloseTo(0.05, 9);
  expect(shareAtLeast(-2, 1.7)).toBe(shareAtLeast(2, 1.7));
});

test('[property] reached-by undoes at-least', () => {
  for (const share of [0.01, 0.25, 0.5, 0.9, 0.995])
    expect(shareAtLeast(differenceReachedByMm(share, 1.7), 1.7)).toBeCloseTo(share, 9);
});
