import { expect, test } from 'vitest';
import { hueLean } from '#skills/colour/hueLean.ts';
import { hueLeanWords, type HueLeanGiven } from '#words/skills/hueLean.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const right = (given: HueLeanGiven) => {
  const answer = hueLean.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(hueLean, hueLeanWords, seed);
});

test('[property] all three answers come often, for red and for yellow; the larger number misleads often', () => {
  for (const asks of ['red', 'yellow']) {
    for (const answer of ['first', 'second', 'not-shown']) {
      expect(
        seeds.filter((seed) => hueLean.given(seed).asks === asks && right(hueLean.given(seed)) === answer)
          .length,
        `${asks} ${answer}`,
      ).toBeGreaterThan(60);
    }
  }
  expect(seeds.filter((seed) => hueLean.slips[0]?.value(hueLean.given(seed)) !== '').length).toBeGreaterThan(
    150,
  );
});

test('[table] two measured people, 40.7° and 62.3°: the first leans red, whatever the doubt up to 10°', () => {
  const given: HueLeanGiven = {
    first: { client: 'baker', l: 62.82, a: 12.69, b: 10.91 },
    second: { client: 'cyclist', l: 67.37, a: 8.71, b: 16.6 },
    doubtDeg: 5,
    asks: 'red',
  };
  expect(right(given)).toBe('first');
  expect(right({ ...given, asks: 'yellow' })).toBe('second');
  expect(right({ ...given, doubtDeg: 10.7 })).toBe('first');
  expect(right({ ...given, doubtDeg: 10.9 })).toBe('not-shown');
});
