import { Bezier } from 'bezier-js';
import { expect, test } from 'vitest';
import { shareApart, shareAtRandom, shareOfDots } from '#lib/colour/coverage/coverage.ts';
import { type ExampleBrow, exampleBrow } from '#lib/colour/coverage/exampleBrow.ts';
import {
  dotsAtRandom,
  type DrawnStroke,
  type Spot,
  strokesApart,
  strokesCrossing,
} from '#lib/colour/coverage/strokePlaces.ts';
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
  for (let i = 0; i < 4600; i++)
    if ((i + 0.5) / 4600 < half) nearer += brow.thicknessMm((i + 0.5) / 4600) * 0.01;
  expect(nearer / 287.6).toBeCloseTo(0.5, 3);
  expect([brow.alongAtShare(0), brow.alongAtShare(1)].map((s) => Number(s.toFixed(4)))).toEqual([0, 1]);
});

const curve = ([a, b, c]: DrawnStroke) => new Bezier(a[0], a[1], b[0], b[1], c[0], c[1]);

test.each([4, 6, 8, 11])(
  '[library] strokes of %f mm are that long along their curve, within a tenth on the whole',
  (lengthMm) => {
    for (const strokes of [strokesApart(brow, 60, lengthMm), strokesCrossing(brow, 60, lengthMm, 1)]) {
      const mean = strokes.reduce((sum, stroke) => sum + curve(stroke).length(), 0) / strokes.length;
      expect(Math.abs(mean / lengthMm - 1)).toBeLessThan(0.1);
    }
  },
);

/** Share of the brow, by looking at seeded places, within half a width of what was drawn. */
function seen(points: readonly (readonly Spot[])[], widthMm: number): number {
  const draw = drawFrom(77);
  let hits = 0;
  const looks = 2000;
  for (let i = 0; i < looks; i++) {
    const s = brow.alongAtShare(draw());
    const [x, y] = [s * brow.lengthMm, brow.middleMm(s) + brow.thicknessMm(s) * (draw() - 0.5)];
    if (points.some((line) => line.some(([a, b]) => (a - x) ** 2 + (b - y) ** 2 <= (widthMm / 2) ** 2)))
      hits++;
  }
  return hits / looks;
}
const walked = (strokes: readonly DrawnStroke[]) =>
  strokes.map((stroke) =>
    Array.from({ length: 81 }, (_, i) => curve(stroke).get(i / 80)).map(({ x, y }) => [x, y] as const),
  );

test.each([0.18, 0.35])('[library] what is drawn covers what the sum says, strokes %f mm wide', (widthMm) => {
  const sixty = { count: 60, lengthMm: 8, widthMm, areaMm2: 287.6 };
  // Round ends add a little; strokes that stick out at the front take a little.
  expect(Math.abs(seen(walked(strokesApart(brow, 60, 8)), widthMm) - shareApart(sixty))).toBeLessThan(0.05);
  expect(
    Math.abs(seen(walked(strokesCrossing(brow, 60, 8, 1)), widthMm) - shareAtRandom(sixty)),
  ).toBeLessThan(0.07);
});

test('[library] drawn dots cover what the sum says', () => {
  const dots = dotsAtRandom(brow, Math.round(8 * 287.6), 1);
  for (const diameterMm of [0.2, 0.3])
    expect(Math.abs(seen([dots], diameterMm) - shareOfDots({ perMm2: 8, diameterMm }))).toBeLessThan(0.04);
});

test('[property] a seed draws the same again; another seed another; counts are kept; nothing is not a number', () => {
  expect(strokesCrossing(brow, 30, 8, 3)).toEqual(strokesCrossing(brow, 30, 8, 3));
  expect(strokesCrossing(brow, 30, 8, 3)).not.toEqual(strokesCrossing(brow, 30, 8, 4));
  expect(dotsAtRandom(brow, 5, 3)).not.toEqual(dotsAtRandom(brow, 5, 4));
  for (const [area, count, length] of [
    [100, 1, 15],
    [500, 200, 2],
    [100, 200, 15],
  ] as const) {
    const one = exampleBrow(area);
    for (const strokes of [strokesApart(one, count, length), strokesCrossing(one, count, length, 1)]) {
      expect(strokes).toHaveLength(count);
      expect(strokes.flat(2).every(Number.isFinite)).toBe(true);
      for (const [start, , end] of strokes) expect(Math.max(start[0], end[0])).toBeLessThanOrEqual(46 + 1e-9);
    }
  }
});

/** A level bar 40 mm long and 10 mm thick: area lies evenly, strokes are straight. */
const plainBar: ExampleBrow = {
  lengthMm: 40,
  thicknessMm: () => 10,
  middleMm: () => 0,
  alongAtShare: (share) => share,
};
const near = (stroke: readonly (readonly [number, number])[]) =>
  stroke.map((spot) => spot.map((value) => expect.closeTo(value, 9)));

test('[hand] four strokes of 10 mm in one row of a bar: evenly along, climbing 9.5 and leaning out by the rest', () => {
  // √(100 − 90.25) = 3.122499 along, half of it either side of 5, 15, 25 and 35.
  const half = Math.sqrt(9.75) / 2;
  expect(strokesApart(plainBar, 4, 10)).toEqual(
    [5, 15, 25, 35].map((x) =>
      near([
        [x - half, -4.75],
        [x, 0],
        [x + half, 4.75],
      ]),
    ),
  );
});

test('[hand] strokes of 6 mm take two rows, the first below the middle, each with half of the climb; of 11.25 mm one, of 4 mm three', () => {
  // 9.5/6 − 0.2 = 1.38: two rows; each stroke climbs 4.75 about −2.5 or 2.5.
  const half = Math.sqrt(36 - 4.75 ** 2) / 2;
  expect(strokesApart(plainBar, 2, 6)).toEqual([
    near([
      [10 - half, -2.5 - 2.375],
      [10, -2.5],
      [10 + half, -2.5 + 2.375],
    ]),
    near([
      [30 - half, 2.5 - 2.375],
      [30, 2.5],
      [30 + half, 2.5 + 2.375],
    ]),
  ]);
  const rows = (strokeMm: number) =>
    new Set(strokesApart(plainBar, 12, strokeMm).map(([, [, y]]) => y.toFixed(6))).size;
  // 9.5/8 − 0.2 = 0.99 and 9.5/7.8 − 0.2 = 1.02 stand either side of a row more.
  expect([rows(11.25), rows(8), rows(7.8), rows(4)]).toEqual([1, 1, 2, 3]);
});

test('[hand] a long stroke ends at the tail and may begin before the front; none spans more than the brow', () => {
  const runMm = Math.sqrt(30 ** 2 - 9.5 ** 2);
  const [first, last] = strokesApart(plainBar, 2, 30);
  expect([first?.[0][0], first?.[2][0]]).toEqual(
    [10 - runMm / 2, 10 + runMm / 2].map((value) => expect.closeTo(value, 9)),
  );
  expect([last?.[0][0], last?.[2][0]]).toEqual([40 - runMm, 40].map((value) => expect.closeTo(value, 9)));
  for (const stroke of strokesApart(plainBar, 3, 100)) expect(stroke[2][0] - stroke[0][0]).toBeCloseTo(40, 9);
});

test('[hand] on a bent brow a stroke passes through its middle, as far above the line as across the brow', () => {
  const bent: ExampleBrow = { ...plainBar, middleMm: (along) => 8 * along * along };
  for (const [i, stroke] of strokesApart(bent, 4, 6).entries()) {
    const along = (i + 0.5) / 4;
    const { x, y } = curve(stroke).get(0.5);
    expect([x, y]).toEqual([
      expect.closeTo(40 * along, 9),
      expect.closeTo(8 * along * along + (i % 2 === 0 ? -2.5 : 2.5), 9),
    ]);
  }
});

test('[property] by chance: strokes as long as asked, inside the bar, climbing half to all of 0.95 of their length, three in ten leaning back', () => {
  const strokes = strokesCrossing(plainBar, 2000, 8, 5);
  const climbs = strokes.map(([start, , end]) => end[1] - start[1]);
  for (const [start, mid, end] of strokes) {
    expect(Math.hypot(end[0] - start[0], end[1] - start[1])).toBeCloseTo(8, 9);
    expect(mid).toEqual([
      expect.closeTo((start[0] + end[0]) / 2, 9),
      expect.closeTo((start[1] + end[1]) / 2, 9),
    ]);
    expect(
      Math.min(start[0], end[0]) > -1e-9 &&
        Math.max(start[0], end[0]) < 40 + 1e-9 &&
        start[1] > -5 - 1e-9 &&
        end[1] < 5 + 1e-9,
    ).toBe(true);
  }
  // 0.95 × 8 = 7.6 at most, 3.8 at least, and both nearly reached.
  expect([Math.min(...climbs), Math.max(...climbs)]).toEqual([
    expect.closeTo(3.8, 1),
    expect.closeTo(7.6, 1),
  ]);
  expect([Math.min(...climbs) >= 3.8, Math.max(...climbs) <= 7.6]).toEqual([true, true]);
  // Three standard deviations of 600 in 2000 are 61.
  const back = strokes.filter(([start, , end]) => end[0] < start[0]).length;
  expect(Math.abs(back - 600)).toBeLessThan(61);
  // As often below the middle as above: three standard deviations of 1000 are 67.
  expect(Math.abs(strokes.filter(([, mid]) => mid[1] > 0).length - 1000)).toBeLessThan(67);
  // Nine tenths of the thickness are the most a long stroke climbs; a brow of a point's thickness still takes
  // strokes.
  const long = strokesCrossing(plainBar, 500, 15, 5).map(([start, , end]) => end[1] - start[1]);
  expect([Math.max(...long) <= 9, Math.max(...long) > 8.9, Math.min(...long) >= 4.5]).toEqual([
    true,
    true,
    true,
  ]);
  for (const [start, , end] of strokesCrossing({ ...plainBar, thicknessMm: () => 0.05 }, 50, 8, 5))
    expect(Math.hypot(end[0] - start[0], end[1] - start[1])).toBeCloseTo(8, 9);
});

test('[property] dots by chance fill the bar evenly, and follow a brow that rises', () => {
  const dots = dotsAtRandom({ ...plainBar, middleMm: (along) => 100 * along }, 2000, 9);
  // Each tenth along and each fifth across holds its part, within four standard deviations.
  for (let part = 0; part < 10; part++)
    expect(Math.abs(dots.filter(([x]) => Math.floor(x / 4) === part).length - 200)).toBeLessThan(54);
  for (let part = 0; part < 5; part++)
    expect(
      Math.abs(dots.filter(([x, y]) => Math.floor((y - 2.5 * x + 5) / 2) === part).length - 400),
    ).toBeLessThan(72);
});
