import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandOf } from '#lib/mapping/compare/band.ts';
import {
  budgetMm,
  differenceUncertaintyMm,
  markUncertaintyMm,
  readingsNeeded,
  rectangularMm,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor, falseAlarmRate } from '#lib/mapping/uncertainty/familyWise.ts';
import { repeatabilityMm, technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import { includesZero, intervalAround } from '#lib/quantities/interval.ts';
import { real } from '#tests/tools/real.ts';

test('[hand] technical error: differences 0.3, −0.4, 0 and 1.2', () => {
  const repeats = [
    { firstMm: 10.3, secondMm: 10 },
    { firstMm: 8, secondMm: 8.4 },
    { firstMm: 5, secondMm: 5 },
    { firstMm: 31.2, secondMm: 30 },
  ];
  // Σd² = 0.09 + 0.16 + 1.44 = 1.69; over 8; root.
  expect(technicalError(repeats)).toEqual({
    ok: true,
    temMm: expect.closeTo(1.3 / Math.sqrt(8), 12),
    pairs: 4,
  });
  expect(technicalError([])).toEqual({ ok: false, reason: 'no-repeats' });
});

test('[hand] repeatability is 1.96 √2 of one reading’s spread, printed 2.77', () => {
  expect(repeatabilityMm(0.3)).toBeCloseTo(0.831, 12);
  expect(repeatabilityMm(1)).toBeCloseTo(1.96 * Math.SQRT2, 2);
});

test('[hand] budget: 0.5 mm pencil line, 0.1 mm caliper, 0.5 mm thread', () => {
  expect(rectangularMm({ halfWidthMm: 0.25 })).toBeCloseTo(0.144, 3);
  expect(rectangularMm({ halfWidthMm: 0.05 })).toBeCloseTo(0.029, 3);
  expect(rectangularMm({ halfWidthMm: 3 })).toBeCloseTo(Math.sqrt(3), 14);
  expect(budgetMm([{ halfWidthMm: 0.25 }, { halfWidthMm: 0.05 }, { halfWidthMm: 0.25 }])).toBeCloseTo(
    0.206,
    3,
  );
  // 3² + 4² + 12² = 13².
  expect(budgetMm([3, 4, 12].map((a) => ({ halfWidthMm: a * Math.sqrt(3) })))).toBeCloseTo(13, 12);
  expect(budgetMm([])).toBe(0);
});

/** Worked by hand from u = √(2(TEM²/n + 0.206²)), for the design’s example budget. */
const table = [
  [0.2, 1, 0.41, 0.8, 1.14],
  [0.2, 3, 0.33, 0.65, 0.94],
  [0.3, 1, 0.51, 1.01, 1.44],
  [0.3, 3, 0.38, 0.75, 1.07],
  [0.5, 1, 0.76, 1.5, 2.14],
  [0.5, 3, 0.5, 0.98, 1.4],
] as const;
test.each(table)(
  '[hand] TEM %f mm, %i readings: u %f, smallest real difference %f and %f',
  (temMm, readings, u, single, ten) => {
    const budget = budgetMm([{ halfWidthMm: 0.25 }, { halfWidthMm: 0.05 }, { halfWidthMm: 0.25 }]);
    const reading = { temMm, readings, budgetMm: budget };
    expect(Math.abs(differenceUncertaintyMm(reading) - u)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(smallestRealDifferenceMm(reading, 1.96) - single)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(smallestRealDifferenceMm(reading, 2.8) - ten)).toBeLessThanOrEqual(0.005);
  },
);

test('[hand] one mark: TEM 3 read 9 times and a budget of 1: √2; fewer than one reading counts as one', () => {
  expect(markUncertaintyMm({ temMm: 3, readings: 9, budgetMm: 1 })).toBeCloseTo(Math.SQRT2, 14);
  expect(markUncertaintyMm({ temMm: 3, readings: 0, budgetMm: 4 })).toBe(5);
  expect(differenceUncertaintyMm({ temMm: 3, readings: 1, budgetMm: 4 })).toBeCloseTo(5 * Math.SQRT2, 13);
  expect(smallestRealDifferenceMm({ temMm: 3, readings: 1, budgetMm: 4 }, 2)).toBeCloseTo(
    10 * Math.SQRT2,
    13,
  );
});

test('[hand] readings needed: room (2/1)²/2 − 1 = 1, TEM² = 7.3: eight', () => {
  expect(readingsNeeded(2, { temMm: Math.sqrt(7.3), budgetMm: 1 }, 1)).toEqual({ ok: true, readings: 8 });
  expect(readingsNeeded(20, { temMm: 0.1, budgetMm: 0.2 }, 1.96)).toEqual({ ok: true, readings: 1 });
  expect(readingsNeeded(Math.SQRT2, { temMm: 1, budgetMm: 1.01 }, 1)).toEqual({
    ok: false,
    reason: 'budget-alone-is-wider',
  });
  expect(readingsNeeded(2, { temMm: 1, budgetMm: Math.SQRT2 }, 1)).toEqual({
    ok: false,
    reason: 'budget-alone-is-wider',
  });
});

test('[property] the readings needed are enough and one fewer is not', () => {
  const size = real(0.05, 3);
  fc.assert(
    fc.property(size, size, size, (wanted, temMm, budget) => {
      const needed = readingsNeeded(wanted, { temMm, budgetMm: budget }, 1.96);
      if (!needed.ok) {
        expect(
          smallestRealDifferenceMm({ temMm: 0, readings: 1, budgetMm: budget }, 1.96),
        ).toBeGreaterThanOrEqual(wanted * (1 - 1e-12));
        return;
      }
      expect(
        smallestRealDifferenceMm({ temMm, readings: needed.readings, budgetMm: budget }, 1.96),
      ).toBeLessThanOrEqual(wanted * (1 + 1e-9));
      if (needed.readings > 1)
        expect(
          smallestRealDifferenceMm({ temMm, readings: needed.readings - 1, budgetMm: budget }, 1.96),
        ).toBeGreaterThan(wanted * (1 - 1e-9));
    }),
  );
});

test('[table] coverage factors: 1.959964 for one, 2.80 for ten; false alarms 40.1 % for ten', () => {
  expect(familyCoverageFactor(1)).toBeCloseTo(1.959963984540054, 9);
  expect(familyCoverageFactor(10)).toBeCloseTo(2.8, 2);
  expect(falseAlarmRate(10)).toBeCloseTo(0.401, 3);
  expect(falseAlarmRate(1)).toBeCloseTo(0.05, 14);
  expect(falseAlarmRate(2, 0.1)).toBeCloseTo(0.19, 14);
  expect(familyCoverageFactor(1, 0.01)).toBeCloseTo(2.5758293035489, 9);
  expect(familyCoverageFactor(0)).toBe(familyCoverageFactor(1));
  expect(familyCoverageFactor(NaN)).toBe(familyCoverageFactor(1));
});

test('[hand] bands: zero inside is not shown; few see it to 1 mm, some below 3, most from 3', () => {
  const notice = { fewSeeMm: 1, mostSeeMm: 3 };
  expect(bandOf(intervalAround(5, 3, 1.96), notice)).toBe('not-shown');
  expect(bandOf(intervalAround(2, 1, 2), notice)).toBe('not-shown');
  expect(bandOf(intervalAround(0.9, 0.2, 2), notice)).toBe('few-see');
  expect(bandOf(intervalAround(-1, 0.2, 2), notice)).toBe('few-see');
  expect(bandOf(intervalAround(1.01, 0.2, 2), notice)).toBe('some-see');
  expect(bandOf(intervalAround(-2, 0.9, 2), notice)).toBe('some-see');
  expect(bandOf(intervalAround(2.99, 0.5, 2), notice)).toBe('some-see');
  expect(bandOf(intervalAround(3, 0.5, 2), notice)).toBe('most-see');
  expect(bandOf(intervalAround(-4, 0.5, 2), notice)).toBe('most-see');
});

test('[hand] an interval is value ± k u; zero on its edge is inside', () => {
  expect(intervalAround(1.5, 0.5, 2)).toEqual({
    value: 1.5,
    lo: 0.5,
    hi: 2.5,
    standardUncertainty: 0.5,
    k: 2,
  });
  expect(includesZero(intervalAround(1, 0.5, 2))).toBe(true);
  expect(includesZero(intervalAround(-1, 0.5, 2))).toBe(true);
  expect(includesZero(intervalAround(1.01, 0.5, 2))).toBe(false);
  expect(includesZero(intervalAround(-1.01, 0.5, 2))).toBe(false);
});
