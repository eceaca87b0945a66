import { describe, expect, it } from 'vitest';
import {
  between,
  blend,
  clamp,
  distance,
  mirrored,
  onSide,
  readTable,
  spotAfter,
  spotAt,
  type Spots,
} from '#lib/face/spot.ts';

const corners: Spots = [
  [1, 2],
  [5, 6],
  [9, 3],
];

describe('places in a drawing', () => {
  it('[hand] held between two limits', () => {
    expect([clamp(-3, 0, 2), clamp(1, 0, 2), clamp(7, 0, 2)]).toEqual([0, 1, 2]);
  });

  it('[hand] a quarter of the way from 10 to 18 is 12, and on past the end', () => {
    expect([blend(10, 18, 0), blend(10, 18, 0.25), blend(10, 18, 1), blend(10, 18, 2)]).toEqual([
      10, 12, 18, 26,
    ]);
    expect(between([1, 10], [5, 2], 0.25)).toEqual([2, 8]);
  });

  it('[hand] a right triangle of 3, 4 and 5', () => {
    expect(distance([1, 2], [4, 6])).toBe(5);
    expect(distance([4, 6], [1, 2])).toBe(5);
  });

  it('[hand] the i-th spot, held inside the list; an empty list has the origin', () => {
    expect([-1, 0, 1, 2, 3].map((i) => spotAt(corners, i))).toEqual([
      [1, 2],
      [1, 2],
      [5, 6],
      [9, 3],
      [9, 3],
    ]);
    expect(spotAt([], 0)).toEqual([0, 0]);
  });

  it('[hand] the next spot of a closed outline: after the last comes the first', () => {
    expect([0, 1, 2].map((i) => spotAfter(corners, i))).toEqual([
      [5, 6],
      [9, 3],
      [1, 2],
    ]);
    expect(spotAfter([], 0)).toEqual([0, 0]);
  });

  it('[hand] mirrored: across x = 0 and in reverse order', () => {
    expect(mirrored(corners)).toEqual([
      [-9, 3],
      [-5, 6],
      [-1, 2],
    ]);
    expect(mirrored(mirrored(corners))).toEqual(corners);
  });

  it('[hand] on the client’s left outward is +x, on the right -x', () => {
    expect(onSide(1, corners)).toEqual(corners);
    expect(onSide(-1, corners)).toEqual([
      [-1, 2],
      [-5, 6],
      [-9, 3],
    ]);
  });
});

describe('reading a small table', () => {
  const table: Spots = [
    [2, 10],
    [4, 30],
    [8, 50],
  ];

  it.each([
    [0, 10], // before the table: its first value
    [2, 10],
    [3, 20],
    [4, 30],
    [5, 35],
    [8, 50],
    [20, 50], // after it: its last
  ])('[hand] at %d it reads %d', (x, value) => {
    expect(readTable(table, x)).toBe(value);
  });

  it('[hand] at a step the earlier value holds up to and on the step', () => {
    expect(
      readTable(
        [
          [0, 1],
          [1, 1],
          [1, 9],
          [2, 9],
        ],
        1,
      ),
    ).toBe(1);
    expect(
      readTable(
        [
          [0, 1],
          [1, 1],
          [1, 9],
          [2, 9],
        ],
        1.5,
      ),
    ).toBe(9);
  });

  it('[hand] one line only: its value everywhere', () => {
    expect([-1, 3, 9].map((x) => readTable([[3, 7]], x))).toEqual([7, 7, 7]);
  });
});
