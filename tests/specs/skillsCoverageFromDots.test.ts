import { expect, test } from 'vitest';
import { coverageFromDots } from '#skills/skin/coverageFromDots.ts';
import { coverageFromDotsWords } from '#words/skills/coverageFromDots.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(coverageFromDots, coverageFromDotsWords, seed);
});

test('[hand] 8 dots of 0.2 mm: 8 × 0.031416 = 0.2513, 22.2 %; as radius 63.4, without overlap 25.1, as squares 27.4, bare 77.8', () => {
  const given = { dotsPerMm2: 8, acrossMm: 0.2 };
  const answer = coverageFromDots.answer(given);
  expect(answer.kind === 'number' && answer.exact).toBeCloseTo(22.222, 2);
  const value = (id: string) => coverageFromDots.slips.find((slip) => slip.id === id)?.value(given);
  expect(value('radius')).toBeCloseTo(63.405, 2);
  expect(value('no-overlap')).toBeCloseTo(25.133, 2);
  expect(value('square')).toBeCloseTo(27.385, 2);
  expect(value('bare')).toBeCloseTo(77.778, 2);
});
