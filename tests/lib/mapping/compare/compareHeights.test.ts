import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Taken } from '#lib/mapping/marks/markSet.ts';
import { compareHeights, type HeightReading } from '#lib/mapping/compare/compareHeights.ts';
import { includesZero } from '#lib/quantities/interval.ts';
import { real } from '#tests/tools/real.ts';

const rest: Taken = { pose: 'rest', posture: 'sitting', skin: 'normal' };
const talking: Taken = { ...rest, pose: 'raised' };
const error = { temMm: 0.3, readings: 3, budgetMm: Math.hypot(0.25, 0.05, 0.25) / Math.sqrt(3) };
const at = (taken: Taken, right: number, left: number): HeightReading => ({ taken, archMm: { right, left } });

test('[hand] the baker: 1.6 mm apart talking is real, 0.4 at rest is not shown, and the two are not compared', () => {
  const { first, second, change } = compareHeights(at(talking, 19.6, 21.2), at(rest, 18.2, 18.6), error);
  // u = √(0.3²/3 + 0.206²) = 0.2693; √2 u = 0.3808; k of two comparisons, each at 1 − √0.95 = 2.532 %:
  // 2.2365.
  expect(first.value).toBeCloseTo(1.6, 10);
  expect(first.lo).toBeCloseTo(1.6 - 0.852, 3);
  expect(first.hi).toBeCloseTo(1.6 + 0.852, 3);
  expect(includesZero(first)).toBe(false);
  expect(second.value).toBeCloseTo(0.4, 10);
  expect(second.standardUncertainty).toBeCloseTo(0.3808, 4);
  expect(includesZero(second)).toBe(true);
  expect(change).toEqual({ ok: false, reasons: ['pose-differs'] });
});

test('[hand] the factor is 2.236 for two differences and 2.491 for four (Šidák, two-sided 5 %)', () => {
  const unlike = compareHeights(at(talking, 20, 20), at(rest, 20, 20), error);
  const alike = compareHeights(at(rest, 20, 20), at(rest, 20, 20), error);
  expect(unlike.first.k).toBeCloseTo(2.236, 3);
  expect(unlike.second.k).toBe(unlike.first.k);
  expect(alike.first.k).toBeCloseTo(2.491, 3);
  expect(alike.change.ok && alike.change.left.k).toBe(alike.first.k);
});

test('[property] the change of each side is later minus earlier, and their difference is the change of the difference', () => {
  const height = real(5, 40);
  fc.assert(
    fc.property(height, height, height, height, (r1, l1, r2, l2) => {
      const { first, second, change } = compareHeights(at(rest, r1, l1), at(rest, r2, l2), error);
      if (!change.ok) return false;
      return (
        Math.abs(change.right.value - (r2 - r1)) < 1e-9 &&
        Math.abs(change.left.value - change.right.value - (second.value - first.value)) < 1e-9 &&
        Math.abs(change.right.hi - change.right.value - (first.hi - first.value)) < 1e-9
      );
    }),
  );
});
