import { expect, test } from 'vitest';
import { changeNothing } from '#skills/mapping/changeNothing.ts';
import { changeNothingWords } from '#words/skills/changeNothing.ts';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(changeNothing, changeNothingWords, seed);
});

test('[hand] read from the page as a person would: unlike sides, else the one range without 0; without her yes a real one is told, asked and drawn first', () => {
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
      const saidYes = changeNothingWords.givens(given).join(' ').includes('said yes');
      if (!saidYes) expect(answer.correct).toBe('ask-first');
      else
        expect(answer.correct).toBe(
          what.startsWith('arch')
            ? isPlus
              ? 'raise-right-arch'
              : 'raise-left-arch'
            : isPlus
              ? 'bring-in-left-front'
              : 'bring-in-right-front',
        );
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
  expect(counts.size).toBe(7);
  for (const count of counts.values()) expect(count).toBeGreaterThan(60);
});

test('[property] no pigment without her yes: a real difference under 3 mm that she has not asked about is never answered with a move', () => {
  let asked = 0;
  for (const seed of seeds) {
    const given = changeNothing.given(seed);
    const answer = changeNothing.answer(given);
    if (answer.kind !== 'choice') throw new Error('not a choice');
    for (const { differenceMm } of Object.values(given.compared))
      expect(Math.abs(differenceMm)).toBeLessThan(mappingFacts['most-see-mm'].value);
    const isMove = /^(raise|bring)/.test(answer.correct);
    if (isMove) expect(given.wish, String(seed)).toBe('said-yes');
    if (answer.correct === 'ask-first') asked++;
  }
  expect(asked).toBeGreaterThan(150);
});

test('[hand] it says that the skin is meant, and leaving a real difference untold is half right', () => {
  const seed =
    seeds.find((one) => {
      const answer = changeNothing.answer(changeNothing.given(one));
      return answer.kind === 'choice' && answer.correct === 'ask-first';
    }) ?? 0;
  const given = changeNothing.given(seed);
  expect(changeNothingWords.givens(given)[0]).toContain('in the skin');
  expect(changeNothingWords.option('ask-first', given)).toBe('Real: tell her, ask, draw it first');
  expect(changeNothingWords.option('raise-left-arch', given)).toContain('with pigment');
  const slips = changeNothing.slips.filter(({ value }) => value(given) === 'change-nothing');
  expect(slips.map(({ id, credit }) => [id, credit])).toEqual([['left-untold', 0.6]]);
});
