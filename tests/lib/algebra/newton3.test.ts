import { expect, test } from 'vitest';
import { newton3 } from '#lib/algebra/newton3.ts';
import type { Triple } from '#lib/algebra/solve3.ts';

/** Powers of two leave nothing to rounding. */
const exact = { step: 2 ** -10, longestMove: 0.5, nearEnough: 1e-9 };
/** A miss that vanishes only there, and how often it was looked at. */
function around(root: Triple) {
  let looks = 0;
  const missOf = ([x, y, z]: Triple): Triple => {
    looks++;
    return [x - root[0], y - root[1], z - root[2]];
  };
  return { missOf, looks: () => looks };
}

test('[hand] three equations that bend: x² = 2, xy = 3 and z + y = 1 from x = y = z = 1', () => {
  const found = newton3(([x, y, z]) => [(1 + x) ** 2 - 2, (1 + x) * (1 + y) - 3, z + y + 1], {
    step: 1e-7,
    longestMove: 1,
    nearEnough: 1e-12,
  });
  [Math.SQRT2 - 1, 3 / Math.SQRT2 - 1, -3 / Math.SQRT2].forEach((value, i) =>
    expect(found?.[i]).toBeCloseTo(value, 9),
  );
});

test('[hand] straight misses: one look where it begins at the goal, five where a single move gets there, and exactly', () => {
  const there = around([0, 0, 0]);
  expect(newton3(there.missOf, exact)).toEqual([0, 0, 0]);
  expect(there.looks()).toBe(1);
  const near = around([0.25, -0.5, 0.125]);
  expect(newton3(near.missOf, exact)).toEqual([0.25, -0.5, 0.125]);
  expect(near.looks()).toBe(5);
});

test('[hand] no number moves more than half at once, and the others keep their shares of the move', () => {
  const seen: Triple[] = [];
  const root: Triple = [1, -2, 0.5];
  newton3((at) => {
    seen.push(at);
    return [at[0] - root[0], at[1] - root[1], at[2] - root[2]];
  }, exact);
  // Four looks a round, the first where it stands: a quarter of the way each time.
  expect(seen.filter((_, look) => look % 4 === 0)).toEqual([
    [0, 0, 0],
    [0.25, -0.5, 0.125],
    [0.5, -1, 0.25],
    [0.75, -1.5, 0.375],
    [1, -2, 0.5],
  ]);
});

test('[hand] 59 moves of half reach 29.5 and no more', () => {
  expect(newton3(around([29.5, 0, 0]).missOf, exact)).toEqual([29.5, 0, 0]);
  const beyond = around([0, 30, 0]);
  expect(newton3(beyond.missOf, exact)).toBeUndefined();
  expect(beyond.looks()).toBe(60 * 4);
});

test('[hand] a limit is not to be touched, either side of 0', () => {
  for (const sign of [1, -1]) {
    expect(newton3(around([0, 0, sign * 3.75]).missOf, { ...exact, farthest: 4 })).toEqual([
      0,
      0,
      sign * 3.75,
    ]);
    expect(newton3(around([0, 0, sign * 4]).missOf, { ...exact, farthest: 4 })).toBeUndefined();
    expect(newton3(around([sign * 5, 0, 0]).missOf, { ...exact, farthest: 4 })).toBeUndefined();
    expect(newton3(around([sign * 5, 0, 0]).missOf, exact)).toEqual([sign * 5, 0, 0]);
  }
});

test('[hand] refused: slopes that lead nowhere, no root, what is not a number', () => {
  expect(newton3(([x]) => [x - 1, x - 1, 1], exact)).toBeUndefined();
  expect(newton3(([x, y, z]) => [x * x + x + 1, y, z], exact)).toBeUndefined();
  expect(newton3(() => [NaN, 0, 0], exact)).toBeUndefined();
  expect(newton3(([x, y, z]) => [x - Infinity, y, z], exact)).toBeUndefined();
});

test('[hand] a miss as long as what is near enough is still a miss', () => {
  // 3, 4 and 12 make 13.
  const missOf = ([x, y, z]: Triple): Triple => [x + 3, y + 4, z + 12];
  expect(newton3(missOf, { ...exact, longestMove: 16, nearEnough: 13 })).toEqual([-3, -4, -12]);
  expect(newton3(missOf, { ...exact, longestMove: 16, nearEnough: 13.5 })).toEqual([0, 0, 0]);
});
