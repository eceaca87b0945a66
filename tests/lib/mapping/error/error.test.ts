import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { comparePasses } from '#lib/mapping/uncertainty/comparePasses.ts';
import { meanOfReadings } from '#lib/mapping/uncertainty/meanOfReadings.ts';
import { spreadInterval } from '#lib/mapping/uncertainty/spreadInterval.ts';
import { studentFactor } from '#lib/mapping/uncertainty/studentFactor.ts';
import { technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import { drawFrom, drawNormal } from '#lib/quantities/seed.ts';
import { studentT975 } from '#lib/tables/studentT.ts';
import { real } from '#tests/tools/real.ts';

const pairsOf = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([firstMm, secondMm]) => ({ firstMm, secondMm }));

test('[library] every row of the t table is jstat’s, to half a unit of the third decimal', () => {
  expect(studentT975.length).toBe(34);
  for (const [dof, t] of studentT975) {
    const exact = Number.isFinite(dof) ? jstat.studentt.inv(0.975, dof) : 1.959964;
    expect(Math.abs(t - exact), String(dof)).toBeLessThanOrEqual(0.0005);
  }
});

test('[hand] between two rows the wider factor counts; the ends hold', () => {
  expect([1, 2, 30, 39, 40, 59, 60, 99, 100, 5000].map(studentFactor)).toEqual([
    12.706, 4.303, 2.042, 2.042, 2.021, 2.021, 2, 2, 1.984, 1.984,
  ]);
  expect(studentFactor(Infinity)).toBe(1.96);
  expect(studentFactor(0)).toBe(12.706);
});

test('[property] the factor is never too narrow, and falls', () => {
  for (let dof = 1; dof <= 400; dof++) {
    expect(studentFactor(dof)).toBeGreaterThan(jstat.studentt.inv(0.975, dof) - 0.0005);
    expect(studentFactor(dof + 1)).toBeLessThanOrEqual(studentFactor(dof));
  }
});

test('[table] 2-sided limits of a standard deviation of 100 gears: 0.006278908 lies between 0.00551 and 0.00729', () => {
  const { value, lo, hi } = spreadInterval(0.006278908, 99);
  expect(value).toBe(0.006278908);
  expect(Math.abs(lo - 0.00551)).toBeLessThanOrEqual(0.000005);
  expect(Math.abs(hi - 0.00729)).toBeLessThanOrEqual(0.000005);
});

test('[hand] twenty pairs fix an error of 1 to √(20/34.170) and √(20/9.591)', () => {
  const { lo, hi } = spreadInterval(1, 20);
  expect(lo).toBeCloseTo(0.765, 3);
  expect(hi).toBeCloseTo(1.444, 3);
});

test('[property] 2,000 technical errors from N pairs: the interval holds the true one in 93 to 97 %', () => {
  for (const count of [3, 8, 20]) {
    let hits = 0;
    for (let seed = 0; seed < 2000; seed++) {
      const draw = drawFrom(seed + 700_000 + count);
      const fit = technicalError(
        Array.from({ length: count }, () => ({
          firstMm: 40 + 0.3 * drawNormal(draw),
          secondMm: 40 + 0.3 * drawNormal(draw),
        })),
      );
      if (!fit.ok) throw new Error(fit.reason);
      const { lo, hi } = spreadInterval(fit.temMm, count);
      hits += lo <= 0.3 && 0.3 <= hi ? 1 : 0;
    }
    expect(hits / 2000, `${count} pairs`).toBeGreaterThanOrEqual(0.93);
    expect(hits / 2000, `${count} pairs`).toBeLessThanOrEqual(0.97);
  }
});

test('[property] 2,000 unshifted pairs of passes: about 5 % are called shifted; a shift of one error with twenty pairs mostly is', () => {
  const called = (shiftMm: number, count: number) => {
    let shifted = 0;
    for (let seed = 0; seed < 2000; seed++) {
      const draw = drawFrom(seed + 800_000 + count);
      const passes = comparePasses(
        Array.from({ length: count }, () => ({
          firstMm: 30 + 0.3 * drawNormal(draw),
          secondMm: 30 + shiftMm + 0.3 * drawNormal(draw),
        })),
      );
      shifted += passes.ok && passes.isShifted ? 1 : 0;
    }
    return shifted / 2000;
  };
  for (const count of [3, 10, 20]) {
    expect(called(0, count)).toBeGreaterThanOrEqual(0.03);
    expect(called(0, count)).toBeLessThanOrEqual(0.07);
  }
  expect(called(0.3, 20)).toBeGreaterThan(0.8);
  expect(called(-0.3, 20)).toBeGreaterThan(0.8);
});

test('[hand] differences 1, 2 and 3: shift 2 ± 4.303 × 1/√3, scatter 1/√2, nothing shown', () => {
  const passes = comparePasses(pairsOf([10, 11], [20, 22], [30, 33]));
  if (!passes.ok) throw new Error(passes.reason);
  expect(passes.shift.value).toBeCloseTo(2, 12);
  expect(passes.shift.standardUncertainty).toBeCloseTo(1 / Math.sqrt(3), 12);
  expect(passes.shift.lo).toBeCloseTo(2 - 4.303 / Math.sqrt(3), 12);
  expect(passes.scatterMm).toBeCloseTo(Math.SQRT1_2, 12);
  expect(passes.isShifted).toBe(false);
  const same = comparePasses(pairsOf([10, 11], [20, 21]));
  expect(same.ok && same.isShifted && same.scatterMm).toBe(0);
  expect(comparePasses(pairsOf([1, 2]))).toEqual({ ok: false, reason: 'fewer-than-two-pairs' });
  expect(comparePasses([])).toEqual({ ok: false, reason: 'fewer-than-two-pairs' });
});

test('[property] N·TEM² = (N − 1)·scatter² + N·shift²/2: the technical error holds both parts', () => {
  const reading = real(0, 60);
  fc.assert(
    fc.property(
      fc.array(fc.record({ firstMm: reading, secondMm: reading }), { minLength: 2, maxLength: 40 }),
      (repeats) => {
        const tem = technicalError(repeats);
        const passes = comparePasses(repeats);
        if (!tem.ok || !passes.ok) throw new Error('two or more pairs have both');
        const count = repeats.length;
        const parts = (count - 1) * passes.scatterMm ** 2 + (count * passes.shift.value ** 2) / 2;
        expect(Math.abs(count * tem.temMm ** 2 - parts)).toBeLessThan(1e-9 * (1 + parts));
      },
    ),
  );
});

test('[table] mercury, three readings of mean 37.8 and deviation 0.964365: 35.404 to 40.196', () => {
  // Three numbers with exactly that mean and deviation: m − s, m, m + s.
  const fit = meanOfReadings([37.8 - 0.964365, 37.8, 37.8 + 0.964365]);
  if (!fit.ok) throw new Error(fit.reason);
  expect(fit.deviationMm).toBeCloseTo(0.964365, 12);
  expect(Math.abs(fit.mean.lo - 35.40438)).toBeLessThan(0.0005);
  expect(Math.abs(fit.mean.hi - 40.19562)).toBeLessThan(0.0005);
  expect(fit.mean.k).toBe(4.303);
});

test('[hand] two readings 1 apart: 12.706 × 0.5 either way; one reading has no spread', () => {
  const fit = meanOfReadings([10, 11]);
  expect(fit.ok && fit.mean.hi).toBeCloseTo(10.5 + 12.706 / 2, 12);
  expect(meanOfReadings([10])).toEqual({ ok: false, reason: 'fewer-than-two-readings' });
  expect(meanOfReadings([])).toEqual({ ok: false, reason: 'fewer-than-two-readings' });
});
