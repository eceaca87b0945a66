import { expect, test } from 'vitest';
import { bisectorOf, lineThrough, xAtHeightMm } from '#lib/geometry/crossing.ts';
import { signedDistanceMm } from '#lib/geometry/line.ts';

const at = (xMm: number, yMm: number) => ({ xMm, yMm });

test('[hand] a line through (3, 8) and (0, 4): 3-4-5 triangle, normal (0.8, −0.6), 2.4 mm below the origin', () => {
  const line = lineThrough(at(3, 8), at(0, 4));
  expect(line?.normal.x).toBeCloseTo(0.8, 12);
  expect(line?.normal.y).toBeCloseTo(-0.6, 12);
  expect(line?.offsetMm).toBeCloseTo(-2.4, 12);
  if (!line) return;
  expect(signedDistanceMm(at(3, 8), line)).toBeCloseTo(0, 12);
  expect(signedDistanceMm(at(0, 4), line)).toBeCloseTo(0, 12);
  expect(signedDistanceMm(at(3, 0), line)).toBeCloseTo(4.8, 12);
});

test('[hand] an upright line points its normal to the right; turned upside down, to the left', () => {
  expect(lineThrough(at(2, 5), at(2, -5))).toEqual({ normal: { x: 1, y: 0 }, offsetMm: 2 });
  expect(lineThrough(at(2, -5), at(2, 5))?.normal.x).toBe(-1);
});

test('[hand] the bisector of (−2, 0) and (4, 8): through (1, 4), along (−0.8, 0.6)', () => {
  const line = bisectorOf(at(-2, 0), at(4, 8));
  expect(line?.normal.x).toBeCloseTo(0.6, 12);
  expect(line?.normal.y).toBeCloseTo(0.8, 12);
  expect(line?.offsetMm).toBeCloseTo(3.8, 12);
  if (!line) return;
  expect(signedDistanceMm(at(1, 4), line)).toBeCloseTo(0, 12);
  expect(signedDistanceMm(at(1 - 0.8, 4 + 0.6), line)).toBeCloseTo(0, 12);
  expect(signedDistanceMm(at(4, 8), line)).toBeCloseTo(5, 12);
  expect(signedDistanceMm(at(-2, 0), line)).toBeCloseTo(-5, 12);
});

test('[hand] one point twice fixes no line', () => {
  expect(lineThrough(at(1, 1), at(1, 1))).toBeUndefined();
  expect(bisectorOf(at(1, 1), at(1, 1))).toBeUndefined();
});

test('[hand] where the line through (3, 8) and (0, 4) crosses heights 8, 4 and 0; a level line crosses none', () => {
  const line = lineThrough(at(3, 8), at(0, 4));
  if (!line) throw new Error('two points fix a line');
  expect(xAtHeightMm(line, 8)).toBeCloseTo(3, 12);
  expect(xAtHeightMm(line, 4)).toBeCloseTo(0, 12);
  expect(xAtHeightMm(line, 0)).toBeCloseTo(-3, 12);
  const level = lineThrough(at(-1, 2), at(1, 2));
  expect(level && xAtHeightMm(level, 5)).toBeUndefined();
});
