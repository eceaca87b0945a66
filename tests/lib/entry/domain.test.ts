import { expect, test } from 'vitest';
import {
  above0,
  also,
  between,
  called,
  each,
  either,
  list,
  maybe,
  ok,
  oneOf,
  refusing,
  shape,
  text,
  throwing,
  whole,
  yesOrNo,
  type Domain,
} from '#lib/entry/domain.ts';

const isTaken = (domain: Domain<unknown>) => (value: unknown) => domain.complaint(value) === undefined;
const numbers = [-Infinity, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3, Infinity, NaN];
const others = ['1', '', true, false, null, undefined, [], {}, () => 1, 1n];

test('[hand] numbers: both ends belong to a range, 0 does not lie above 0, halves are not whole', () => {
  expect(numbers.filter(isTaken(between(-1, 2)))).toEqual([-1, -0.5, 0, 0.5, 1, 1.5, 2]);
  expect(numbers.filter(isTaken(above0(2)))).toEqual([0.5, 1, 1.5, 2]);
  expect(numbers.filter(isTaken(whole(0, 2)))).toEqual([0, 1, 2]);
  for (const domain of [between(-1, 2), above0(2), whole(0, 2)])
    expect(others.filter(isTaken(domain))).toEqual([]);
  expect(between(-1, 2).complaint(3)).toEqual({ at: '', must: 'be a number from -1 to 2' });
  expect(above0(2).complaint(0)).toEqual({ at: '', must: 'be a number above 0, up to 2' });
  expect(whole(0, 2).complaint(0.5)).toEqual({ at: '', must: 'be a whole number from 0 to 2' });
});

test('[hand] words, yes or no, texts, functions, and the mark of a result', () => {
  const all = [...others, 'near', 1];
  expect(all.filter(isTaken(oneOf(['near', 'far'])))).toEqual(['near']);
  expect(oneOf(['near', 'far']).complaint('')).toEqual({ at: '', must: 'be one of: near, far' });
  expect(all.filter(isTaken(yesOrNo))).toEqual([true, false]);
  expect(yesOrNo.complaint(1)).toEqual({ at: '', must: 'be true or false' });
  expect(all.filter(isTaken(text))).toEqual(['1', '', 'near']);
  expect(text.complaint(1)).toEqual({ at: '', must: 'be a text' });
  expect(all.filter(isTaken(ok))).toEqual([true]);
  expect(ok.complaint(false)).toEqual({
    at: '',
    must: 'be true: this was refused, or made by hand',
  });
  expect(all.filter(isTaken(called()))).toEqual([others[8]]);
  expect(called().complaint(1)).toEqual({ at: '', must: 'be a function' });
});

test('[hand] left out or as said; either of two, with what the second complains of', () => {
  expect([undefined, 1, 3].filter(isTaken(maybe(whole(0, 2))))).toEqual([undefined, 1]);
  expect(maybe(whole(0, 2)).complaint(3)).toEqual(whole(0, 2).complaint(3));
  const both = either(whole(0, 2), yesOrNo);
  expect([1, true, 3, 'no'].filter(isTaken(both))).toEqual([1, true]);
  expect(both.complaint(3)).toEqual(yesOrNo.complaint(3));
});

test('[hand] lists, plain and typed, with as many items as said; the first wrong item is named by its place', () => {
  const some = list(whole(0, 2), 3, 1);
  const values = [
    [],
    [1],
    [0, 1, 2],
    [0, 1, 2, 0],
    Float64Array.of(1, 2),
    '12',
    { length: 1, 0: 1 },
    1,
    null,
  ];
  expect(values.filter(isTaken(some))).toEqual([[1], [0, 1, 2], Float64Array.of(1, 2)]);
  expect(isTaken(list(whole(0, 2), 3))([])).toBe(true);
  expect(some.complaint([])).toEqual({ at: '', must: 'be a list of 1 to 3' });
  expect(list(text, 2, 2).complaint(['a'])).toEqual({ at: '', must: 'be a list of 2' });
  expect(some.complaint([0, 5, 7])).toEqual({ at: '[1]', must: 'be a whole number from 0 to 2' });
  expect(list(list(text, 3), 3).complaint([['a'], ['b', 1]])?.at).toBe('[1][1]');
});

test('[hand] objects need each part, and may hold more; the first wrong part is named by its path', () => {
  const point = shape<{ xMm: number; label?: string }>({ xMm: between(0, 5), label: maybe(text) });
  const values = [
    { xMm: 1 },
    { xMm: 5, label: 'front', more: 1 },
    {},
    { xMm: 1, label: 2 },
    null,
    1,
    'x',
    undefined,
  ];
  expect(values.filter(isTaken(point))).toEqual([{ xMm: 1 }, { xMm: 5, label: 'front', more: 1 }]);
  expect(point.complaint(null)).toEqual({ at: '', must: 'be an object with xMm, label' });
  expect(point.complaint(1)).toEqual({ at: '', must: 'be an object with xMm, label' });
  expect(point.complaint({ xMm: 9, label: 2 })).toEqual({ at: '.xMm', must: 'be a number from 0 to 5' });
  expect(
    shape<{ inner: ArrayLike<{ xMm: number }> }>({ inner: list(shape({ xMm: between(0, 5) }), 2) }).complaint(
      {
        inner: [{ xMm: 1 }, { xMm: 6 }],
      },
    ),
  ).toEqual({ at: '.inner[1].xMm', must: 'be a number from 0 to 5' });
  const sides = each(['right', 'left'], yesOrNo);
  expect(sides.complaint({ right: true, left: false })).toBeUndefined();
  expect(sides.complaint({ right: true })).toEqual({ at: '.left', must: 'be true or false' });
  expect(sides.complaint(1)).toEqual({ at: '', must: 'be an object with right, left' });
});

test('[hand] an order among parts is asked only of what has its parts', () => {
  const range = also(
    shape({ lo: between(0, 9), hi: between(0, 9) }),
    ({ lo, hi }) => lo < hi,
    'have its ends in order',
  );
  expect(range.complaint({ lo: 1, hi: 2 })).toBeUndefined();
  expect(range.complaint({ lo: 2, hi: 2 })).toEqual({ at: '', must: 'have its ends in order' });
  expect(range.complaint({ lo: 2 })).toEqual({ at: '.hi', must: 'be a number from 0 to 9' });
});

test('[hand] a refused argument is named with its part; the function is not called', () => {
  const calls: number[] = [];
  const double = (xMm: number, { steps }: { steps: number } = { steps: 1 }) => {
    calls.push(xMm);
    return { ok: true as const, twice: 2 * xMm * steps };
  };
  const domains = [between(0, 5), maybe(shape({ steps: whole(1, 3) }))] as const;
  const answering = refusing(double, 'xMm options', ...domains);
  expect(answering(2)).toEqual({ ok: true, twice: 4 });
  expect(answering(2, { steps: 3 })).toEqual({ ok: true, twice: 12 });
  expect(answering(6, { steps: 9 })).toEqual({
    ok: false,
    reason: 'argument-not-accepted',
    at: 'xMm',
    must: 'be a number from 0 to 5',
  });
  expect(answering(1, { steps: 9 })).toEqual({
    ok: false,
    reason: 'argument-not-accepted',
    at: 'options.steps',
    must: 'be a whole number from 1 to 3',
  });
  const strict = throwing(double, 'xMm', ...domains);
  expect(strict(2)).toEqual({ ok: true, twice: 4 });
  expect(() => strict(6)).toThrow(new RangeError('double: xMm must be a number from 0 to 5.'));
  // Where no name was given, the place among the arguments stands for it.
  expect(() => strict(1, { steps: 9 })).toThrow('double: 1.steps must be a whole number from 1 to 3.');
  expect(calls).toEqual([2, 2, 2]);
});
