import { expect, test } from 'vitest';
import { lessonsAround } from '#components/lesson/lessonsAround.ts';

const strand = (count: number) => Array.from({ length: count }, (_, i) => ({ id: `l${i}` }));
const ends = (count: number, here: number) => {
  const listed = lessonsAround(strand(count), `l${here}`).map(({ id }) => id);
  return [listed.length, listed[0], listed.at(-1)];
};

test('[hand] a short strand is listed whole, a long one by the thirty around the lesson', () => {
  expect(ends(1, 0)).toEqual([1, 'l0', 'l0']);
  expect(ends(30, 29)).toEqual([30, 'l0', 'l29']);
  expect(ends(2000, 0)).toEqual([30, 'l0', 'l29']);
  expect(ends(2000, 1000)).toEqual([30, 'l985', 'l1014']);
  expect(ends(2000, 1999)).toEqual([30, 'l1970', 'l1999']);
});

test('[property] the lesson itself is always in its list', () => {
  for (const count of [1, 29, 30, 31, 60])
    for (let here = 0; here < count; here++)
      expect(lessonsAround(strand(count), `l${here}`)).toContainEqual({ id: `l${here}` });
});
