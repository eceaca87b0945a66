import { Bezier } from 'bezier-js';
import { describe, expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { halfEdgeCurve, type HalfEdge } from '#lib/mapping/outline/halfEdge.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { coverRows, easedRows } from '#lib/mapping/plan/coverRows.ts';
import { edgeSpans, heightRow } from '#lib/mapping/plan/edgeSpans.ts';
import { growthSince } from '#lib/mapping/plan/growth.ts';
import { heightsFrom, heightsOf, listOf, withHeights } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { leastDifferenceMm } from '#lib/mapping/plan/meetingHeight.ts';
import { readOldShape, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { handBrow, lifted, limitsOf, shapeOf } from './tasks.ts';

const spans = edgeSpans(handBrow);
const heights = listOf(heightsOf(handBrow));
const drawn = outlineOf(handBrow);
if (!drawn.ok) throw new Error(drawn.reason);
const coverOf = (corners: readonly (readonly [number, number])[]) =>
  coverRows(shapeOf(corners), spans, 'left', 64);
const placesOf = ({ rows }: ReturnType<typeof coverRows>, edge: 'upper' | 'lower') =>
  rows.flatMap(({ holder }) =>
    holder.kind === 'old-work' && holder.edge === edge ? [Number(holder.uMm.toFixed(4))] : [],
  );

describe('rows that cover an old shape', () => {
  test('[library] the four heights of a piece are the Bézier heights another package finds by splitting the curve, turned over for the lower edge', () => {
    // 8 mm of the upper edge and 2.5 mm of the lower one are one piece each; the old shape leaves the upright
    // sides out.
    const { rows } = coverOf([
      [20, 22],
      [22.5, 22.5],
      [28, 24],
      [20, 26],
    ]);
    const { upper, lower } = drawn;
    const wanted = (half: HalfEdge, from: number, to: number) => {
      const t = (uMm: number) => (uMm - half.end.uMm) / (half.arch.uMm - half.end.uMm);
      return new Bezier(...halfEdgeCurve(half).flatMap(({ uMm, vMm }) => [uMm, vMm]))
        .split(t(from), t(to))
        .points.map(({ y }) => y);
    };
    const ours = (edge: 'upper' | 'lower', most: number) =>
      rows
        .filter(
          ({ holder }) => holder.kind === 'old-work' && holder.edge === edge && holder.uMm <= most + 1e-9,
        )
        .map(({ coefficients }) => rowValue(coefficients, heights));
    ours('upper', 28).forEach((height, k) =>
      expect(height).toBeCloseTo(wanted(upper.front, 20, 28)[k] ?? NaN, 9),
    );
    ours('lower', 22.5).forEach((height, k) =>
      expect(height).toBeCloseTo(-(wanted(lower.front, 20, 22.5)[k] ?? NaN), 9),
    );
    expect([ours('upper', 28).length, ours('lower', 22.5).length]).toEqual([4, 4]);
  });

  test('[hand] places: 8 mm above and 2.5 mm below are cut in three; neighbours share a row; longer pieces are halved', () => {
    const cover = coverOf([
      [20, 22],
      [22.5, 22.5],
      [28, 24],
      [20, 26],
    ]);
    expect(placesOf(cover, 'upper')).toEqual([20, 22.6667, 25.3333, 28]);
    // 2.5 mm in one piece, 5.5 mm in three of 1.8333: 4 + 9 rows, the shared ends once.
    expect(placesOf(cover, 'lower')).toEqual([
      20, 20.8333, 21.6667, 22.5, 23.1111, 23.7222, 24.3333, 24.9444, 25.5556, 26.1667, 26.7778, 27.3889, 28,
    ]);
    expect(
      placesOf(
        coverOf([
          [20, 22],
          [22, 22],
          [29, 26],
          [20, 26],
        ]),
        'upper',
      ),
    ).toEqual([20, 21.5, 23, 24.5, 26, 27.5, 29]);
  });

  test('[hand] pieces part where the margin begins to shrink, 5 mm before the tail at 64; the margin falls by a fifth a mm', () => {
    const cover = coverOf([
      [55, 24],
      [62, 21],
      [62, 22],
      [55, 26],
    ]);
    expect(placesOf(cover, 'upper')).toEqual([55, 56.3333, 57.6667, 59, 60, 61, 62]);
    const shares = cover.rows.flatMap(({ holder, marginShare }) =>
      holder.kind === 'old-work' && holder.edge === 'upper' ? [Number(marginShare.toFixed(9))] : [],
    );
    expect(shares).toEqual([1, 1, 1, 1, 0.8, 0.6, 0.4]);
  });

  test('[hand] each corner speaks for the half of its edges nearer to it; in front of the front there is nothing to cover', () => {
    // Level sides of 16 mm: 8 mm each.
    expect(
      coverOf([
        [20, 22],
        [36, 24],
        [36, 27],
        [20, 25],
      ]).widthsMm.map((mm) => Number(mm.toFixed(9))),
    ).toEqual([8, 8, 8, 8]);
    // The lower edge runs from 12 to 36, the brow begins at 14: ∫ (u − 12)/24 from 14 to 36 is (24² − 2²)/48
    // = 11.9167 of 22.
    const [inner, outer] = coverOf([
      [12, 20],
      [36, 24],
      [36, 27],
      [12, 25],
    ]).widthsMm;
    expect(outer).toBeCloseTo(572 / 48, 9);
    expect(inner).toBeCloseTo(22 - 572 / 48, 9);
  });

  test('[hand] what may stay out eases a row by the two corners’ shares: 0.2 at one end, 0.4 at the other, 0.3 half way', () => {
    const cover = coverOf([
      [20, 22],
      [22.5, 22],
      [36, 27],
      [20, 25],
    ]);
    const upper = cover.rows.filter(({ holder }) => holder.kind === 'old-work' && holder.edge === 'upper');
    const [inner = NaN, outer = NaN] = upper[0]?.knots ?? [];
    expect(outer).not.toBe(inner);
    expect(upper.every(({ knots }) => knots[0] === inner && knots[1] === outer)).toBe(true);
    const eased = easedRows(
      { ...cover, rows: upper },
      0.5,
      cover.widthsMm.map((_, knot) => (knot === inner ? 0.2 : knot === outer ? 0.4 : 9)),
    );
    const at = (uMm: number) =>
      eased.find(({ holder }) => holder?.kind === 'old-work' && Math.abs(holder.uMm - uMm) < 1e-9)?.atLeast;
    // The old upper edge rises from 25 at 20 to 27 at 36.
    expect(at(20)).toBeCloseTo(25 + 0.5 - 0.2, 9);
    expect(at(28)).toBeCloseTo(26 + 0.5 - 0.3, 9);
    expect(at(36)).toBeCloseTo(27 + 0.5 - 0.4, 9);
  });
});

describe('edges as rows', () => {
  test('[hand] both ends belong to an edge; an upright front adds no stretch of its own', () => {
    const at = (uMm: number) =>
      [heightRow(spans.upper, uMm), heightRow(spans.lower, uMm)].map(
        (row) => row && Number(rowValue(row, heights).toFixed(9)),
      );
    expect([14, 15, 46, 47, 64].map(at).map(([upper]) => upper)[0]).toBe(25);
    expect([at(15)[1], at(46)[1], at(47)[0], ...at(64)]).toEqual([17, 27, 33, 20, 20]);
    const upright: Brow = { ...handBrow, frontTop: { uMm: 15, vMm: 25 } };
    const both = edgeSpans(upright);
    expect([both.upper.length, both.lower.length]).toEqual([2, 2]);
    expect(rowValue(heightRow(both.upper, 15) ?? [], listOf(heightsOf(upright)))).toBe(25);
  });

  test('[hand] heights as a list and back', () => {
    expect(listOf(heightsOf(handBrow))).toEqual(browMarks.map((mark) => handBrow[mark].vMm));
    expect(heightsFrom([1, 2, 3, 4, 5])).toEqual({
      frontLower: 1,
      frontTop: 2,
      archTop: 3,
      archLower: 4,
      tail: 5,
    });
    expect(withHeights(handBrow, heightsOf(lifted(handBrow, 2)))).toEqual(lifted(handBrow, 2));
  });
});

test('[hand] limits as rows: who holds, and a hair of room for a mark that may not move at all', () => {
  const rows = limitRows(handBrow, spans, 'left', limitsOf(0.5, 0.5), undefined);
  expect(rows.slice(0, 2)).toEqual([
    {
      coefficients: [-1, 0, 0, 0, 0].map((value) => expect.closeTo(value, 12)),
      atLeast: -17.5,
      holder: { kind: 'raise', side: 'left', mark: 'frontLower' },
    },
    {
      coefficients: [1, 0, 0, 0, 0],
      atLeast: 16.5,
      holder: { kind: 'lower', side: 'left', mark: 'frontLower' },
    },
  ]);
  const [up, down] = limitRows(handBrow, spans, 'left', limitsOf(0, 0), undefined);
  expect(up?.atLeast).toBeCloseTo(-17 - 1e-7, 12);
  expect(down?.atLeast).toBeCloseTo(17 - 1e-7, 12);
});

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

test('[hand] sides that just meet leave 0, not −0', () => {
  expect(
    leastDifferenceMm({
      right: { vMm: 22, raiseMostMm: 1, lowerMostMm: 1 },
      left: { vMm: 20, raiseMostMm: 1, lowerMostMm: 1 },
    }),
  ).toBe(0);
});
