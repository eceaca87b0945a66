import { expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { growthFromMarginMm, growthSince } from '#lib/mapping/plan/growth.ts';
import { handBrow, shapeOf } from './tasks.ts';

const outline = (brow: Brow) => {
  const found = outlineOf(brow);
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] growth: a strip 2 mm thick under a strip-like stretch of the outline', () => {
  const drawn = outline(handBrow);
  const grown = growthSince(
    shapeOf([
      [20, 22],
      [40, 26],
      [40, 28],
      [20, 24],
    ]),
    drawn,
  );
  if (!grown.ok) throw new Error(grown.reason);
  let sum = 0;
  for (let i = 0; i < 2000; i++) {
    const span = spanAt(drawn, 20 + (i + 0.5) / 100);
    sum += ((span?.upperMm ?? NaN) - (span?.lowerMm ?? NaN)) / 2000;
  }
  expect(grown.thicknessMm).toBeCloseTo(sum - 2, 3);
  expect(grown.areaMm2).toBeCloseTo(287.625 - 40, 9);
  expect(grown.share).toBeCloseTo(247.625 / 40, 9);
  expect(
    growthSince(
      shapeOf([
        [70, 20],
        [80, 20],
        [80, 22],
      ]),
      drawn,
    ),
  ).toEqual({ ok: false, reason: 'nothing-shared' });
});

test('[table] the margin alone adds 1.0 to 1.6 mm, 15 to 25 % of a brow 6.5 mm thick', () => {
  expect(growthFromMarginMm(1.64, 0.3)).toBeCloseTo(1, 1);
  expect(growthFromMarginMm(1.64, 0.5)).toBeCloseTo(1.6, 1);
  expect(Math.round((100 * growthFromMarginMm(1.64, 0.3)) / 6.5)).toBe(15);
  expect(Math.round((100 * growthFromMarginMm(1.64, 0.5)) / 6.5)).toBe(25);
});
