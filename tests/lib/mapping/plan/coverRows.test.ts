import { Bezier } from 'bezier-js';
import { describe, expect, test } from 'vitest';
import { halfEdgeCurve, type HalfEdge } from '#lib/mapping/outline/halfEdge.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { coverRows, withMargin } from '#lib/mapping/plan/coverRows.ts';
import { edgeSpans } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsOf, listOf } from '#lib/mapping/plan/heights.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { handBrow, shapeOf } from './tasks.ts';

const spans = edgeSpans(handBrow);

const heights = listOf(heightsOf(handBrow));

const drawn = outlineOf(handBrow);
if (!drawn.ok) throw new Error(drawn.reason);

const coverOf = (corners: readonly (readonly [number, number])[]) =>
  coverRows(shapeOf(corners), spans, 'left', 64);

const placesOf = (rows: ReturnType<typeof coverRows>, edge: 'upper' | 'lower') =>
  rows.flatMap(({ holder }) =>
    holder.kind === 'old-work' && holder.edge === edge ? [Number(holder.uMm.toFixed(4))] : [],
  );

describe('rows that cover an old shape', () => {
  test('[library] the four heights of a piece are the Bézier heights another package finds by splitting the curve, turned over for the lower edge', () => {
    // 8 mm of the upper edge and 2.5 mm of the lower one are one piece each; the old shape leaves the upright
    // sides out.
    const rows = coverOf([
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
    const shares = cover.flatMap(({ holder, marginShare }) =>
      holder.kind === 'old-work' && holder.edge === 'upper' ? [Number(marginShare.toFixed(9))] : [],
    );
    expect(shares).toEqual([1, 1, 1, 1, 0.8, 0.6, 0.4]);
  });

  test('[hand] in front of the front and beyond the tail there is nothing to cover; the margin is added whole', () => {
    const cover = coverOf([
      [12, 20],
      [66, 20],
      [66, 21],
      [12, 25],
    ]);
    const upper = placesOf(cover, 'upper');
    expect([Math.min(...upper), Math.max(...upper)]).toEqual([14, 64]);
    const asked = (marginMm: number, uMm: number) =>
      withMargin(cover, marginMm).find(
        ({ holder }) =>
          holder?.kind === 'old-work' && holder.edge === 'upper' && Math.abs(holder.uMm - uMm) < 1e-9,
      )?.atLeast;
    // The old upper edge falls from 25 at 12 to 21 at 66: 2/27 a mm.
    expect(asked(0, 14)).toBeCloseTo(25 - 4 / 27, 9);
    expect(asked(0.5, 14)).toBeCloseTo(25.5 - 4 / 27, 9);
    expect(asked(0.5, 64)).toBeCloseTo(21 + 4 / 27, 9);
  });
});
