import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { chiSquarePoint, chiSquareShareBelow } from '#lib/quantities/chiSquare.ts';
import { real } from '#tests/tools/real.ts';

test('[table] lower 2.5 % points for 5, 10, 20, 30 and 100 (NIST/SEMATECH e-Handbook)', () => {
  for (const [dof, printed] of [
    [5, 0.831],
    [10, 3.247],
    [20, 9.591],
    [30, 16.791],
    [100, 74.222],
  ] as const) {
    expect(Math.abs(chiSquarePoint(0.025, dof) - printed), String(dof)).toBeLessThanOrEqual(0.0005);
  }
});

test('[library] share and points agree with jstat for 1 to 300 degrees of freedom', () => {
  for (let dof = 1; dof <= 300; dof += dof < 40 ? 1 : 13) {
    for (const share of [0.001, 0.025, 0.5, 0.975, 0.999]) {
      const point = chiSquarePoint(share, dof);
      expect(Math.abs(point / jstat.chisquare.inv(share, dof) - 1), `${dof}, ${share}`).toBeLessThan(1e-7);
      expect(chiSquareShareBelow(point, dof), `${dof}, ${share}`).toBeCloseTo(
        jstat.chisquare.cdf(point, dof),
        9,
      );
    }
  }
});

test('[property] the share grows from 0 to 1, and the point undoes it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 120 }), real(0.01, 0.99), real(0.1, 3), (dof, share, step) => {
      const point = chiSquarePoint(share, dof);
      expect(chiSquareShareBelow(point, dof)).toBeCloseTo(share, 8);
      expect(chiSquareShareBelow(point + step, dof)).toBeGreaterThan(chiSquareShareBelow(point, dof));
    }),
  );
});

test('[hand] nothing lies below 0; two degrees of freedom are the exponential: 1 − 1/e below 2', () => {
  expect(chiSquareShareBelow(0, 4)).toBe(0);
  expect(chiSquareShareBelow(-1, 3)).toBe(0);
  expect(chiSquareShareBelow(Number.NaN, 3)).toBe(0);
  expect(chiSquareShareBelow(2, 2)).toBeCloseTo(1 - 1 / Math.E, 14);
  expect(chiSquarePoint(0.5, 2)).toBeCloseTo(2 * Math.LN2, 8);
});
