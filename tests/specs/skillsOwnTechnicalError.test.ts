import { expect, test } from 'vitest';
import { ownTechnicalError } from '#skills/mapping/ownTechnicalError.ts';
import { ownTechnicalErrorWords } from '#words/skills/ownTechnicalError.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(ownTechnicalError, ownTechnicalErrorWords, seed);
});

test('[hand] four pairs 2, −3, 1 and 4 apart: √(30/8) = 1.94; without the 2 it is 2.74, the mean size 2.5', () => {
  const given = {
    pairs: [
      [30, 32],
      [28, 25],
      [41, 42],
      [22, 26],
    ].map(([firstMm = 0, secondMm = 0]) => ({ firstMm, secondMm })),
  };
  const answer = ownTechnicalError.answer(given);
  expect(answer.kind === 'number' && answer.exact).toBeCloseTo(Math.sqrt(3.75), 10);
  const value = (id: string) => ownTechnicalError.slips.find((slip) => slip.id === id)?.value(given);
  expect(value('forgot-two')).toBeCloseTo(Math.sqrt(7.5), 10);
  expect(value('mean-difference')).toBeCloseTo(2.5, 10);
  expect(value('repeatability')).toBeCloseTo(2.77 * Math.sqrt(3.75), 10);
  expect(value('no-root')).toBeCloseTo(3.75, 10);
  // Mean 30.75; Σ(x − mean)² = 373.5.
  expect(value('all-readings')).toBeCloseTo(Math.sqrt(373.5 / 7), 10);
});

test('[property] no degenerate picture: four or five pairs, heights of a brow sheet, no difference over 8 mm', () => {
  for (let seed = 0; seed < 1000; seed++) {
    const { pairs } = ownTechnicalError.given(seed);
    expect([4, 5]).toContain(pairs.length);
    for (const { firstMm, secondMm } of pairs) {
      expect(Math.min(firstMm, secondMm)).toBeGreaterThanOrEqual(16);
      expect(Math.max(firstMm, secondMm)).toBeLessThanOrEqual(49);
      expect(Math.abs(secondMm - firstMm)).toBeLessThanOrEqual(8);
    }
  }
});
