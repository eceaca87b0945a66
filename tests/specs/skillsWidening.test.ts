import { expect, test } from 'vitest';
import { widening } from '#skills/skin/widening.ts';
import { wideningWords } from '#words/skills/widening.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(widening, wideningWords, seed);
});

test('[hand] 30 % by strokes that go from 0.2 to 0.3 mm: 45 % side by side, 1 − 0.7^1.5 = 41.4 % crossing', () => {
  const given = { freshPercent: 30, freshMm: 0.2, healedMm: 0.3, isCrossing: false };
  const exact = (isCrossing: boolean) => {
    const answer = widening.answer({ ...given, isCrossing });
    return answer.kind === 'number' ? answer.exact : Number.NaN;
  };
  expect(exact(false)).toBeCloseTo(45, 9);
  expect(exact(true)).toBeCloseTo(41.434, 3);
  const value = (id: string) => widening.slips.find((slip) => slip.id === id)?.value(given);
  expect(value('other-way')).toBeCloseTo(41.434, 3);
  expect(value('added-widths')).toBeCloseTo(75, 9);
  expect(value('added-per-cent')).toBeCloseTo(80, 9);
  expect(value('gain-only')).toBeCloseTo(15, 9);
});

test('[property] both kinds are dealt, and strokes only widen', () => {
  const dealt = Array.from({ length: 1000 }, (_, seed) => widening.given(seed));
  expect(dealt.filter(({ isCrossing }) => isCrossing).length).toBeGreaterThan(300);
  expect(dealt.filter(({ isCrossing }) => !isCrossing).length).toBeGreaterThan(300);
  for (const { freshMm, healedMm } of dealt) expect(healedMm).toBeGreaterThan(freshMm);
});
