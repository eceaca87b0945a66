import { describe, expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { edgeSpans, heightRow } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsFrom, heightsOf, listOf, withHeights } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { leastDifferenceMm } from '#lib/mapping/plan/meetingHeight.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { handBrow, lifted, limitsOf } from './tasks.ts';

const spans = edgeSpans(handBrow);

const heights = listOf(heightsOf(handBrow));

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

test('[hand] sides that just meet leave 0, not −0', () => {
  expect(
    leastDifferenceMm({
      right: { vMm: 22, raiseMostMm: 1, lowerMostMm: 1 },
      left: { vMm: 20, raiseMostMm: 1, lowerMostMm: 1 },
    }),
  ).toBe(0);
});
