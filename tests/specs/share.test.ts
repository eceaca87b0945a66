import { expect, test } from 'vitest';
import { isWhole, oneIn, partOf } from '#tests/tools/share.ts';

const list = Array.from({ length: 17 }, (_, i) => i);

test('[property] two who part a list take all of it, and nothing twice', () => {
  const taken = [0, 1].flatMap((nth) => partOf(list, nth, 2));
  expect(isWhole ? new Set(taken).size : taken.toSorted((a, b) => a - b)).toEqual(isWhole ? 17 : list);
});

test('[property] one in so many of a list is about that share of it, never none', () => {
  const { length } = oneIn(5, list, 'a list');
  expect(isWhole ? 4 : length).toBeGreaterThanOrEqual(3);
  expect(length).toBeLessThanOrEqual(4);
});
