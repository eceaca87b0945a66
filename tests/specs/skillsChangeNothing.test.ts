import { expect, test } from 'vitest';
import { changeNothing } from '#skills/mapping/changeNothing.ts';
import { changeNothingWords } from '#words/skills/changeNothing.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(changeNothing, changeNothingWords, seed);
});

test('[hand] read from the page as a person would: unlike sides, else the one range without 0', () => {
  for (const seed of seeds) {
    const given = changeNothing.given(seed);
    const sides = changeNothingWords.givens(given)[1] ?? '';
    const [right, left] = sides.replace('Right side: ', '').replace(/\.$/, '').split('. Left side: ');
    const rows = changeNothingWords.table?.(given).rows ?? [];
    const real = rows.filter(([, , range = '']) => !(range.startsWith('−') && range.includes('to +')));
    const answer = changeNothing.answer(given);
    if (answer.kind !== 'choice') throw new Error('not a choice');
    if (right !== left) expect(answer.correct, sides).toBe('measure-again');
    else if (real.length === 0) expect(answer.correct).toBe('change-nothing');
    else {
      expect(real).toHaveLength(1);
      const [what = '', difference = ''] = real[0] ?? [];
      const isPlus = difference.startsWith('+');
      expect(answer.correct).toBe(what.startsWith('arch') ? (isPlus ? 'raise-right-arch' : 'raise-left-arch') : isPlus ? 'bring-in-left-front' : 'bring-in-right-front');
    }
  }
});

test('[property] "change nothing" is right on about two in five, and every move comes', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const answer = changeNothing.answer(changeNothing.given(seed));
    if (answer.kind === 'choice') counts.set(answer.correct, (counts.get(answer.correct) ?? 0) + 1);
  }
  expect(counts.get('change-nothing')).toBeGreaterThan(330);
  expect(counts.get('change-nothing')).toBeLessThan(460);
  expect(counts.size).toBe(6);
  for (const count of counts.values()) expect(count).toBeGreaterThan(60);
});
