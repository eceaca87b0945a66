import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judge } from '#components/practice/placeMidline/judge.ts';
import { pinReachMm } from '#components/practice/placeMidline/placeView.ts';
import { bisectorOf, lineThrough, xAtHeightMm } from '#lib/geometry/crossing.ts';
import { rangeEnds } from '#lib/quantities/closedRange.ts';
import { placeMidline } from '#skills/mapping/placeMidline.ts';

const levels = [0, 1, 2, 3, 4] as const;

const faulty = /NaN|undefined|Infinity|\[object|-\d|−0(?!\.\d*[1-9])/;

test('[hand] a line through two points, a bisector and a crossing, by similar triangles', () => {
  const nose = lineThrough({ xMm: 0, yMm: 14 }, { xMm: 3, yMm: -47 });
  // 3 mm over 61 mm of height, so 127 mm lower than the glabella it is 127 × 3 / 61 off.
  expect(nose && xAtHeightMm(nose, -113)).toBeCloseTo(381 / 61, 12);
  const fronts = bisectorOf({ xMm: -14, yMm: 10 }, { xMm: 14, yMm: 12 });
  // Square to 2 in 28 through (0, 11): 124 mm lower it stands 124 × 2 / 28 to the side.
  expect(fronts && xAtHeightMm(fronts, -113)).toBeCloseTo(124 / 14, 12);
  expect(lineThrough({ xMm: 1, yMm: 1 }, { xMm: 1, yMm: 1 })).toBeUndefined();
  expect(bisectorOf({ xMm: 1, yMm: 1 }, { xMm: 1, yMm: 1 })).toBeUndefined();
  expect(xAtHeightMm({ normal: { x: 0, y: 1 }, offsetMm: 2 }, 5)).toBeUndefined();
});

test('[hand] both ends of the range are right, a tenth beyond is not; one end alone earns half', () => {
  for (const level of levels) {
    const given = placeMidline.given(44, level);
    const { exact, brows, chin } = placeMidline.answer(given);
    const credit = (browsMm: number, chinMm: number) => placeMidline.mark(given, { browsMm, chinMm }).credit;
    const [b, c] = [rangeEnds(brows), rangeEnds(chin)];
    expect([credit(b.lo, c.hi), credit(b.hi, c.lo), credit(b.lo, c.lo)]).toEqual([1, 1, 1]);
    expect([
      credit(b.lo - 0.1, exact.chinMm),
      credit(exact.browsMm, c.hi + 0.1),
      credit(b.hi + 0.1, c.lo - 0.1),
    ]).toEqual([0.5, 0.5, 0]);
  }
});

test('[property] any two pins are judged with numbers that can be read', () => {
  const pin = fc.double({ min: -pinReachMm, max: pinReachMm, noNaN: true });
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 999 }),
      fc.constantFrom(...levels),
      pin,
      pin,
      (seed, level, top, foot) => {
        const judged = judge(placeMidline.given(seed, level), { top, foot });
        expect(judged && `${judged.feedback.title} ${judged.feedback.text} ${judged.library}`).not.toMatch(
          faulty,
        );
        expect([0, 0.5, 1]).toContain(judged?.marked.credit);
      },
    ),
    { numRuns: 2000 },
  );
});
