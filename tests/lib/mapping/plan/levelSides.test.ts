import { describe, expect, test } from 'vitest';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { edgeSpans } from '#lib/mapping/plan/edgeSpans.ts';
import { levelSides } from '#lib/mapping/plan/levelSides.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { type Holder, type Row } from '#lib/mapping/plan/row.ts';
import { handBrow, limitsOf } from './tasks.ts';

const limit = (mark: 'tail' | 'archTop'): Holder => ({ kind: 'raise', side: 'left', mark });

describe('both sides together', () => {
  const atMost = (mm: number): Row => ({ coefficients: [-1], atLeast: -mm, holder: limit('tail') });
  const atLeast = (mm: number): Row => ({ coefficients: [1], atLeast: mm, holder: limit('archTop') });

  test('[hand] equal where rows allow it: the weighted mean, or as near to it as they leave', () => {
    const now = { right: [20], left: [24] };
    const room = { right: { rows: [], at: [20] }, left: { rows: [], at: [24] } };
    expect(levelSides(now, { right: 1, left: 3 }, room).heights).toEqual({ right: [23], left: [23] });
    const held = levelSides(now, { right: 1, left: 1 }, { ...room, right: { rows: [atMost(21)], at: [20] } });
    expect(held.heights.right[0]).toBeCloseTo(21, 9);
    expect(held.heights.left[0]).toBeCloseTo(21, 9);
    expect(held.heldBy).toEqual([limit('tail')]);
  });

  test('[hand] where they cannot meet the gap is as small as the rows allow, and both rows hold it', () => {
    const found = levelSides(
      { right: [0], left: [5] },
      { right: 1, left: 1 },
      { right: { rows: [atMost(1)], at: [0] }, left: { rows: [atLeast(2)], at: [5] } },
    );
    expect(found.heights.right[0]).toBeCloseTo(1, 6);
    expect(found.heights.left[0]).toBeCloseTo(2, 6);
    expect(found.heldBy).toEqual([limit('tail'), limit('archTop')]);
  });

  test('[hand] differences settled, the move is the least by weight: 2t² + 3(t − 3)² + 3(t − 5)² is least at 3', () => {
    // Right: first at most as high as second; left: first at least 2 above second. So they differ by 1 and
    // −1, and 3 moves both.
    const right: Row = { coefficients: [-1, 1], atLeast: 0 };
    const left: Row = { coefficients: [1, -1], atLeast: 2 };
    const { heights } = levelSides(
      { right: [0, 0], left: [4, 4] },
      { right: 1, left: 3 },
      { right: { rows: [right], at: [0, 0] }, left: { rows: [left], at: [4, 2] } },
    );
    [3, 3].forEach((value, i) => expect(heights.right[i]).toBeCloseTo(value, 5));
    [4, 2].forEach((value, i) => expect(heights.left[i]).toBeCloseTo(value, 5));
  });

  test('[hand] the same with rows that weigh marks: (2t + 2)² + (t + 1)² + 3(2t − 1)² + 3(t − 5)² is least at 0.8', () => {
    // Right: first at most twice the second; left: at least 5 more than twice the second. The least
    // differences are 1 and −2.
    const right: Row = { coefficients: [-1, 2], atLeast: 0 };
    const left: Row = { coefficients: [1, -2], atLeast: 5 };
    const { heights } = levelSides(
      { right: [0, 0], left: [4, 4] },
      { right: 1, left: 3 },
      { right: { rows: [right], at: [0, 0] }, left: { rows: [left], at: [5, 0] } },
    );
    [3.6, 1.8].forEach((value, i) => expect(heights.right[i]).toBeCloseTo(value, 7));
    [4.6, -0.2].forEach((value, i) => expect(heights.left[i]).toBeCloseTo(value, 7));
  });

  test('[hand] far from where the rows let them stand, both still come as near to each other as they may: 1 and 1.01', () => {
    const { heights } = levelSides(
      { right: [40], left: [40] },
      { right: 1, left: 1 },
      { right: { rows: [atMost(1)], at: [1] }, left: { rows: [atLeast(1.01), atMost(40)], at: [1.01] } },
    );
    expect(heights.right[0]).toBeCloseTo(1, 6);
    expect(heights.left[0]).toBeCloseTo(1.01, 6);
  });

  test('[hand] a side whose own rows leave the method no room stays where it was said to fit; the other goes as near the mean as it may', () => {
    const found = levelSides(
      { right: [2], left: [4] },
      { right: 1, left: 1 },
      { right: { rows: [atLeast(1), atMost(0)], at: [7] }, left: { rows: [atMost(2.5)], at: [2] } },
    );
    expect(found.heights.right).toEqual([7]);
    expect(found.heights.left[0]).toBeCloseTo(2.5, 9);
    expect(found.heldBy).toEqual([limit('tail')]);
  });
});

test('[hand] no limit but raising and lowering: ten rows, one of each for each mark', () => {
  const rows = limitRows(handBrow, edgeSpans(handBrow), 'right', limitsOf(1, 2), 100);
  expect(rows.map(({ holder: one }) => one?.kind)).toEqual([
    'raise',
    'lower',
    'raise',
    'lower',
    'raise',
    'lower',
    'raise',
    'lower',
    'raise',
    'lower',
  ]);
  expect(
    forBrowMarks(
      (mark) => rows.filter(({ holder: one }) => one && 'mark' in one && one.mark === mark).length,
    ),
  ).toEqual(forBrowMarks(() => 2));
});
