import { describe, expect, test } from 'vitest';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { growthSince } from '#lib/mapping/plan/growth.ts';
import { readOldShape, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { handBrow, shapeOf } from './tasks.ts';

const drawn = outlineOf(handBrow);
if (!drawn.ok) throw new Error(drawn.reason);

describe('old shapes', () => {
  test('[hand] at the limits: 200 mm out, a hundredth of a mm²', () => {
    for (const far of [200, -200])
      expect(
        readOldShape([
          { uMm: 0, vMm: 0 },
          { uMm: far, vMm: 0 },
          { uMm: 0, vMm: far },
        ]).ok,
      ).toBe(true);
    expect(
      readOldShape([
        { uMm: 0, vMm: 0 },
        { uMm: 1, vMm: 0 },
        { uMm: 0, vMm: 0.02 },
      ]),
    ).toMatchObject({ ok: true, areaMm2: 0.01 });
    expect(
      readOldShape([
        { uMm: 0, vMm: 0 },
        { uMm: 1, vMm: 0 },
        { uMm: 0, vMm: 0.0199 },
      ]),
    ).toEqual({ ok: false, reason: 'no-area' });
  });

  test('[hand] a corner that only touches another edge does not cross it: two triangles of 25 mm² that meet in a point', () => {
    const touching = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 0],
      [0, 10],
    ] as const;
    for (let start = 0; start < 5; start++)
      for (const sign of [1, -1]) {
        const corners = touching
          .map((_, i) => touching[(start + i) % 5] ?? [0, 0])
          .map(([uMm, vMm]) => ({ uMm, vMm: sign * vMm }));
        expect(readOldShape(corners)).toMatchObject({ ok: true, areaMm2: 50 });
      }
  });
});

describe('what stands out', () => {
  test('[hand] old work all around the outline stands out by its area less 287.625 mm², in one piece with a hole', () => {
    const around = outsideOf(
      shapeOf([
        [5, 5],
        [75, 5],
        [75, 45],
        [5, 45],
      ]),
      drawn,
    );
    expect(around.areaMm2).toBeCloseTo(2800 - 287.625, 1);
    expect(around.pieces).toHaveLength(1);
    expect([around.beforeFrontMm, around.beyondTailMm]).toEqual([9, 11]);
  });

  test('[hand] old work apart from the outline stands out whole, each corner once; a speck below 0.0001 mm² is rounding', () => {
    const apart = outsideOf(
      shapeOf([
        [70, 5],
        [80, 5],
        [80, 9],
        [70, 9],
      ]),
      drawn,
    );
    expect(apart.areaMm2).toBeCloseTo(40, 9);
    expect(apart.pieces.map((piece) => piece.length)).toEqual([4]);
    expect(apart.beyondTailMm).toBe(16);
    const speck = (mm: number): OldShape => ({
      ok: true,
      areaMm2: mm * mm,
      corners: [
        [70, 5],
        [70 + mm, 5],
        [70 + mm, 5 + mm],
        [70, 5 + mm],
      ].map(([uMm = NaN, vMm = NaN]) => ({ uMm, vMm })),
    });
    expect(outsideOf(speck(0.009), drawn)).toEqual({
      areaMm2: 0,
      pieces: [],
      aboveMm: 0,
      belowMm: 0,
      beforeFrontMm: 0,
      beyondTailMm: 0,
    });
    expect(outsideOf(speck(0.011), drawn).pieces).toHaveLength(1);
  });

  test('[hand] old work that ends where the outline begins shares nothing with it', () => {
    expect(
      growthSince(
        shapeOf([
          [4, 20],
          [14, 20],
          [14, 22],
          [4, 22],
        ]),
        drawn,
      ),
    ).toEqual({ ok: false, reason: 'nothing-shared' });
  });
});
