import fc from 'fast-check';
import { expect, it } from 'vitest';
import { quadraticRoots } from '#lib/algebra/quadraticRoots.ts';
import { real } from '../../tools/real.ts';

const sorted = (roots: readonly number[]) => [...roots].sort((a, b) => a - b);

it('[hand] (x − 2)(x − 3), (x + 2)(x + 3), 2(x − 1)(x + 4)', () => {
  expect(sorted(quadraticRoots(1, -5, 6))).toEqual([2, 3]);
  expect(sorted(quadraticRoots(1, 5, 6))).toEqual([-3, -2]);
  expect(sorted(quadraticRoots(2, 6, -8))).toEqual([-4, 1]);
});
it('[hand] a double root, no root, a straight line, a level line, nothing at all', () => {
  expect(new Set(quadraticRoots(1, -4, 4))).toEqual(new Set([2]));
  expect(quadraticRoots(1, 0, 1)).toEqual([]);
  expect(quadraticRoots(0, 4, -6)).toEqual([1.5]);
  expect(quadraticRoots(0, 0, 5)).toEqual([]);
  expect(quadraticRoots(0, 0, 0)).toEqual([]);
  expect(quadraticRoots(3, 0, 0)).toEqual([0]);
  expect(quadraticRoots(1, 0, -9).map(Math.abs)).toEqual([3, 3]);
});
it('[hand] a small root beside a large one keeps its digits: x² − 10⁸x + 1', () => {
  expect(sorted(quadraticRoots(1, -1e8, 1))[0]).toBeCloseTo(1e-8, 20);
});
it('[property] both roots come back', () => {
  fc.assert(
    fc.property(real(-50, 50), real(-50, 50), real(0.1, 5), (p, q, a) => {
      const roots = sorted(quadraticRoots(a, -a * (p + q), a * p * q));
      if (Math.abs(p - q) < 1e-3) return true;
      return (
        roots.length === 2 &&
        Math.abs((roots[0] ?? 99) - Math.min(p, q)) < 1e-6 &&
        Math.abs((roots[1] ?? 99) - Math.max(p, q)) < 1e-6
      );
    }),
  );
});
