import { expect, test } from 'vitest';
import { isInRange, rangeAround, rangeEnds, roundScaled } from '#lib/quantities/closedRange.ts';

/** 334 one-decimal answers, each with its two ends and itself: 1,002 cases. */
const exacts = Array.from({ length: 334 }, (_, i) => (i + 100) / 10);

test('[property] 1,002 one-decimal answers on the edge or in the middle are right, the next tenth is not', () => {
  let cases = 0;
  for (const exact of exacts) {
    const range = rangeAround(exact, 0.1, 1);
    for (const tenths of [-1, 0, 1]) {
      const typed = Number(((Math.round(exact * 10) + tenths) / 10).toFixed(1));
      expect(isInRange(range, typed), `${typed} for ${exact}`).toBe(true);
      cases++;
    }
    for (const tenths of [-2, 2])
      expect(isInRange(range, (Math.round(exact * 10) + tenths) / 10)).toBe(false);
  }
  expect(cases).toBe(1002);
});

test('[hand] the plain comparison this replaces does reject answers on the edge', () => {
  const naive = exacts.filter((exact) => Math.abs(Number((exact + 0.1).toFixed(1)) - exact) > 0.1);
  expect(naive.length).toBeGreaterThan(0);
});

test('[hand] ends as numbers', () => {
  expect(rangeAround(31.5197, 0.1, 1)).toEqual({ lo: 314, hi: 316, decimals: 1 });
  expect(rangeEnds({ lo: 314, hi: 316, decimals: 1 })).toEqual({ lo: 31.4, hi: 31.6, tolerance: 0.1 });
  expect(rangeAround(-0.04, 0.1, 1)).toEqual({ lo: -1, hi: 1, decimals: 1 });
});

test('[hand] halves go away from zero even when the binary number lies a hair under', () => {
  expect(roundScaled(31.25, 1)).toBe(313);
  expect(roundScaled(1.005, 2)).toBe(101);
  expect(roundScaled(-1.005, 2)).toBe(-101);
  expect(Object.is(roundScaled(-0.001, 1), 0)).toBe(true);
});

test('[property] a finer answer counts by its value, and nothing that is not finite is ever right', () => {
  const range = rangeAround(31.5, 0.1, 1);
  expect(isInRange(range, 31.5999)).toBe(true);
  expect(isInRange(range, 31.6001)).toBe(false);
  for (const value of [Number.NaN, Infinity, -Infinity]) expect(isInRange(range, value)).toBe(false);
});

test('[property] the exact value always lies in its own range', () => {
  for (let i = -5000; i < 5000; i++) expect(isInRange(rangeAround(i / 37, 0.1, 1), i / 37)).toBe(true);
});
