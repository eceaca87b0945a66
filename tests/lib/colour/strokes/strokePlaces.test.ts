import { Bezier } from 'bezier-js';
import { expect, test } from 'vitest';
import { shareApart, shareAtRandom, shareOfDots } from '#lib/colour/coverage.ts';
import { exampleBrow } from '#lib/colour/strokes/exampleBrow.ts';
import { dotsAtRandom, type DrawnStroke, type Spot, strokesApart, strokesCrossing } from '#lib/colour/strokes/strokePlaces.ts';
import { drawFrom } from '#lib/quantities/seed.ts';

const brow = exampleBrow(287.6);

test('[hand] the brow has the area asked for, its middle highest at 0.62, its tail a point; half the area lies nearer the front than 0.4', () => {
  for (const area of [120, 287.6, 480]) {
    const one = exampleBrow(area);
    let sum = 0;
    for (let i = 0; i < 4600; i++) sum += one.thicknessMm((i + 0.5) / 4600) * 0.01;
    expect(sum).toBeCloseTo(area, 2);
  }
  expect(brow.thicknessMm(1)).toBe(0);
  expect(brow.thicknessMm(-0.1)).toBe(brow.thicknessMm(0));
  expect(brow.thicknessMm(0)).toBeCloseTo((0.8 * 287.6) / (46 * (1.1 - 0.25 - 1 / 7)), 9);
  expect(brow.middleMm(0)).toBe(0);
  expect(brow.middleMm(0.62)).toBeCloseTo(4.2, 12);
  expect(brow.middleMm(0.62)).toBeGreaterThan(Math.max(brow.middleMm(0.6), brow.middleMm(0.64)));
  let nearer = 0;
  const half = brow.alongAtShare(0.5);
  for (let i = 0; i < 4600; i++) if ((i + 0.5) / 4600 < half) nearer += brow.thicknessMm((i + 0.5) / 4600) * 0.01;
  expect(nearer / 287.6).toBeCloseTo(0.5, 3);
  expect([brow.alongAtShare(0), brow.alongAtShare(1)].map((s) => Number(s.toFixed(4)))).toEqual([0, 1]);
});

const curve = ([a, b, c]: DrawnStroke) => new Bezier(a[0], a[1], b[0], b[1], c[0], c[1]);

test.each([4, 6, 8, 11])('[library] strokes of %f mm are that long along their curve, within a tenth on the whole', (lengthMm) => {
  for (const strokes of [strokesApart(brow, 60, lengthMm), strokesCrossing(brow, 60, lengthMm, 1)]) {
    const mean = strokes.reduce((sum, stroke) => sum + curve(stroke).length(), 0) / strokes.length;
    expect(Math.abs(mean / lengthMm - 1)).toBeLessThan(0.1);
  }
});

/** Share of the brow, by looking at seeded places, within half a width of what was drawn. */
function seen(points: readonly (readonly Spot[])[], widthMm: number): number {
  const draw = drawFrom(77);
  let hits = 0;
  const looks = 2000;
  for (let i = 0; i < looks; i++) {
    const s = brow.alongAtShare(draw());
    const [x, y] = [s * brow.lengthMm, brow.middleMm(s) + brow.thicknessMm(s) * (draw() - 0.5)];
    if (points.some((line) => line.some(([a, b]) => (a - x) ** 2 + (b - y) ** 2 <= (widthMm / 2) ** 2))) hits++;
  }
  return hits / looks;
}
const walked = (strokes: readonly DrawnStroke[]) => strokes.map((stroke) => Array.from({ length: 81 }, (_, i) => curve(stroke).get(i / 80)).map(({ x, y }) => [x, y] as const));

test.each([0.18, 0.35])('[library] what is drawn covers what the sum says, strokes %f mm wide', (widthMm) => {
  const sixty = { count: 60, lengthMm: 8, widthMm, areaMm2: 287.6 };
  // Round ends add a little; strokes that stick out at the front take a little.
  expect(Math.abs(seen(walked(strokesApart(brow, 60, 8)), widthMm) - shareApart(sixty))).toBeLessThan(0.05);
  expect(Math.abs(seen(walked(strokesCrossing(brow, 60, 8, 1)), widthMm) - shareAtRandom(sixty))).toBeLessThan(0.07);
});

test('[library] drawn dots cover what the sum says', () => {
  const dots = dotsAtRandom(brow, Math.round(8 * 287.6), 1);
  for (const diameterMm of [0.2, 0.3]) expect(Math.abs(seen([dots], diameterMm) - shareOfDots({ perMm2: 8, diameterMm }))).toBeLessThan(0.04);
});

test('[property] a seed draws the same again; another seed another; counts are kept; nothing is not a number', () => {
  expect(strokesCrossing(brow, 30, 8, 3)).toEqual(strokesCrossing(brow, 30, 8, 3));
  expect(strokesCrossing(brow, 30, 8, 3)).not.toEqual(strokesCrossing(brow, 30, 8, 4));
  expect(dotsAtRandom(brow, 5, 3)).not.toEqual(dotsAtRandom(brow, 5, 4));
  for (const [area, count, length] of [[100, 1, 15], [500, 200, 2], [100, 200, 15]] as const) {
    const one = exampleBrow(area);
    for (const strokes of [strokesApart(one, count, length), strokesCrossing(one, count, length, 1)]) {
      expect(strokes).toHaveLength(count);
      expect(strokes.flat(2).every(Number.isFinite)).toBe(true);
      for (const [start, , end] of strokes) expect(Math.max(start[0], end[0])).toBeLessThanOrEqual(46 + 1e-9);
    }
  }
});
