import { expect, test } from 'vitest';
import { coverageFromStrokes } from '#skills/skin/coverageFromStrokes.ts';
import { coverageFromStrokesWords } from '#words/skills/coverageFromStrokes.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(coverageFromStrokes, coverageFromStrokesWords, seed);
});

test('[hand] 60 strokes of 8 × 0.18 mm on 288 mm²: 86.4/288 = 30 % side by side; crossing 1 − e^−0.3 = 25.9 %; without the width 166.7', () => {
  const given = { count: 60, lengthMm: 8, widthMm: 0.18, areaMm2: 288, crossing: false };
  const exact = (crossing: boolean) => {
    const answer = coverageFromStrokes.answer({ ...given, crossing });
    return answer.kind === 'number' ? answer.exact : Number.NaN;
  };
  expect(exact(false)).toBeCloseTo(30, 9);
  expect(exact(true)).toBeCloseTo(25.9182, 4);
  const value = (id: string, crossing = false) =>
    coverageFromStrokes.slips.find((slip) => slip.id === id)?.value({ ...given, crossing });
  expect(value('other-way')).toBeCloseTo(25.9182, 4);
  expect(value('other-way', true)).toBeCloseTo(30, 9);
  expect(value('bare')).toBeCloseTo(70, 9);
  expect(value('as-share')).toBeCloseTo(0.3, 9);
  expect(value('no-width')).toBeCloseTo(166.667, 3);
});

test('[property] both kinds are dealt, and brows are of a brow’s size', () => {
  const dealt = Array.from({ length: 1000 }, (_, seed) => coverageFromStrokes.given(seed));
  expect(dealt.filter(({ crossing }) => crossing).length).toBeGreaterThan(300);
  expect(dealt.filter(({ crossing }) => !crossing).length).toBeGreaterThan(300);
  for (const { areaMm2, count } of dealt)
    expect(areaMm2 >= 200 && areaMm2 <= 400 && count >= 40 && count <= 120).toBe(true);
});
