import { expect, test } from 'vitest';
import { dropsToRatio } from '#skills/colour/dropsToRatio.ts';
import { dropsToRatioWords } from '#words/skills/dropsToRatio.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(dropsToRatio, dropsToRatioWords, seed);
});

test('[hand] 6 and 4 drops: 1.5 for each, 40 % of the mix; other way round 0.67 and 60; share 0.6, ratio 66.7; whole 2.5, part 0.4', () => {
  const given = { first: 'even brown', second: 'orange', firstDrops: 6, secondDrops: 4 };
  const exact = (asks: 'ratio' | 'share') => {
    const answer = dropsToRatio.answer({ ...given, asks });
    return answer.kind === 'number' ? answer.exact : Number.NaN;
  };
  expect([exact('ratio'), exact('share')]).toEqual([1.5, 40]);
  const value = (id: string, asks: 'ratio' | 'share') =>
    dropsToRatio.slips.find((slip) => slip.id === id)?.value({ ...given, asks });
  expect(value('inverted', 'ratio')).toBeCloseTo(0.66667, 4);
  expect(value('inverted', 'share')).toBe(60);
  expect(value('share-for-ratio', 'ratio')).toBeCloseTo(0.6, 9);
  expect(value('share-for-ratio', 'share')).toBeCloseTo(66.6667, 3);
  expect(value('whole-for-one', 'ratio')).toBe(2.5);
  expect(value('whole-for-one', 'share')).toBeCloseTo(0.4, 9);
});

test('[property] both questions are asked, of two different bottles', () => {
  const dealt = Array.from({ length: 1000 }, (_, seed) => dropsToRatio.given(seed));
  for (const asks of ['ratio', 'share'])
    expect(dealt.filter((one) => one.asks === asks).length).toBeGreaterThan(300);
  for (const { first, second } of dealt) expect(first).not.toBe(second);
});
