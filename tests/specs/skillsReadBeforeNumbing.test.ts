import { expect, test } from 'vitest';
import { readBeforeNumbing } from '#skills/colour/readBeforeNumbing.ts';
import {
  readBeforeNumbingWords,
  type NotedReading,
  type ReadBeforeGiven,
} from '#words/skills/readBeforeNumbing.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const right = (given: ReadBeforeGiven) => {
  const answer = readBeforeNumbing.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(readBeforeNumbing, readBeforeNumbingWords, seed);
});

test('[property] all four answers come often; with nothing written, redness alone decides, by a clear gap', () => {
  const count = (answer: string) =>
    seeds.filter((seed) => right(readBeforeNumbing.given(seed)) === answer).length;
  for (const answer of ['first', 'second', 'third', 'none'])
    expect(count(answer), answer).toBeGreaterThan(120);
  for (const seed of seeds) {
    const given = readBeforeNumbing.given(seed);
    const reds = given.readings.map(({ a }) => a);
    const gap = Math.min(
      ...reds.map(
        (_a, i) => Math.max(...reds.filter((_, j) => j !== i)) - Math.min(...reds.filter((_, j) => j !== i)),
      ),
    );
    expect(gap, `seed ${seed}: two readings always agree`).toBeLessThan(1.9);
  }
});

test('[hand] what is written decides before the numbers; then a red reading of +5; else all are kept', () => {
  const before: NotedReading = { l: 62, a: 10, b: 17, note: 'before' };
  const bare: NotedReading = { l: 62, a: 10, b: 17, note: 'not-written' };
  const given = (readings: ReadBeforeGiven['readings']): ReadBeforeGiven => ({ who: 'violinist', readings });
  for (const note of ['wiped', 'numbed', 'drawn', 'window'] as const) {
    expect(right(given([before, { ...before, note }, { ...before, l: 64 }]))).toBe('second');
    expect(right(given([before, before, { ...before, note }]))).toBe('third');
  }
  expect(right(given([{ ...bare, a: 15 }, bare, bare]))).toBe('first');
  expect(right(given([bare, bare, { ...bare, a: 6 }]))).toBe('third');
  expect(right(given([bare, { ...bare, a: 12.4 }, bare]))).toBe('none');
  expect(right(given([bare, { ...bare, a: 12.6 }, bare]))).toBe('second');
  expect(right(given([before, { ...before, l: 63.5 }, { ...before, l: 61 }]))).toBe('none');
});
