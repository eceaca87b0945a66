import { expect, test } from 'vitest';
import { mixedSet } from '#lib/practice/mixedSet.ts';

const ids = ['a', 'b', 'c', 'd', 'e'] as const;

test('[property] every skill comes, none twice in a row, indexes run on', () => {
  for (let done = 0; done < 300; done++) {
    const items = mixedSet(ids, [], done, 6);
    expect(items).toHaveLength(6);
    expect(new Set(items.map(({ id }) => id)).size).toBe(5);
    for (let i = 1; i < items.length; i++) expect(items[i]?.id).not.toBe(items[i - 1]?.id);
    expect(items.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4, 5].map((i) => done + i));
  }
});

test('[hand] what is due comes first and counts as review', () => {
  const items = mixedSet(ids, ['d', 'b'], 7, 6);
  expect(items.slice(0, 2).map(({ id, rung }) => `${id} ${rung}`)).toEqual(['b review', 'd review']);
  expect(items.slice(2).every(({ rung }) => rung === 'mixed')).toBe(true);
});

test('[hand] nothing done: the order as given; no skills: nothing', () => {
  expect(mixedSet(ids, [], 0, 5).map(({ id }) => id)).toEqual(ids);
  expect(mixedSet([], [], 3, 6)).toEqual([]);
});

test('[property] orders differ from set to set', () => {
  const orders = new Set(
    Array.from({ length: 60 }, (_, i) =>
      mixedSet(ids, [], 1 + 6 * i, 5)
        .map(({ id }) => id)
        .join(''),
    ),
  );
  expect(orders.size).toBeGreaterThan(30);
});
