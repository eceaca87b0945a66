import { difference } from 'polyclip-ts';
import { expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { signedAreaMm2 } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import { handBrow, seededTask, shapeOf } from './tasks.ts';

const outline = (brow: Brow) => {
  const found = outlineOf(brow);
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] what stands out: above, below, in front, beyond the tail', () => {
  const drawn = outline(handBrow);
  // A square through the arch top: between 46.5 and 47.5 the edge stays at 33 to a thousandth, so 1 mm × 2 mm
  // stand out.
  const above = outsideOf(
    shapeOf([
      [46.5, 30],
      [47.5, 30],
      [47.5, 35],
      [46.5, 35],
    ]),
    drawn,
  );
  expect(above.areaMm2).toBeCloseTo(2, 2);
  expect(above.aboveMm).toBeCloseTo(2, 1);
  expect([above.belowMm, above.beforeFrontMm, above.beyondTailMm]).toEqual([0, 0, 0]);
  const below = outsideOf(
    shapeOf([
      [45.5, 25.5],
      [46.5, 25.5],
      [46.5, 30],
      [45.5, 30],
    ]),
    drawn,
  );
  expect(below.areaMm2).toBeCloseTo(1.5, 2);
  expect(below.belowMm).toBeCloseTo(1.5, 1);
  expect(below.aboveMm).toBe(0);
  const ends = outsideOf(
    shapeOf([
      [12, 20],
      [67.4, 19],
      [67.4, 20],
      [12, 22],
    ]),
    drawn,
  );
  expect(ends.beforeFrontMm).toBeCloseTo(2, 9);
  expect(ends.beyondTailMm).toBeCloseTo(3.4, 9);
  expect(
    outsideOf(
      shapeOf([
        [20, 21],
        [40, 27.5],
        [40, 30],
        [20, 25],
      ]),
      drawn,
    ),
  ).toEqual({ areaMm2: 0, pieces: [], aboveMm: 0, belowMm: 0, beforeFrontMm: 0, beyondTailMm: 0 });
});

/**
 * The outline's own corners, every so many, each shifted by so little of itself that only the last digits
 * change.
 */
const nearlyOn = (brow: Brow, every: number, times: number, draw: () => number) =>
  outlinePolygon(outline(brow), 96)
    .filter((_, i) => i % every === 0)
    .map(({ uMm, vMm }): readonly [number, number] => [
      uMm * (1 + times * (2 * draw() - 1)),
      vMm * (1 + times * (2 * draw() - 1)),
    ]);

test('[property] an old shape whose corners lie on the outline but for the last digit stands out by next to nothing, and nothing throws', () => {
  const draw = drawFrom(seedFrom('nearly-on-the-outline', 1));
  const brows = Array.from({ length: 12 }, (_, seed) => seededTask(seed).brows.left);
  for (const times of [1e-16, 1e-15, 1e-14, 1e-12, 0])
    for (const every of [4, 8, 16])
      for (const brow of brows) {
        const old = shapeOf(nearlyOn(brow, every, times, draw));
        const { areaMm2 } = outsideOf(old, outline(brow));
        // Chords of an edge that bends inward leave the outline a little; wrong pieces would be tens of mm².
        expect(areaMm2).toBeGreaterThanOrEqual(0);
        expect(areaMm2).toBeLessThan(0.3 * every);
      }
});

test('[library] where corners nearly meet, the area outside is the one another polygon package finds', () => {
  const draw = drawFrom(seedFrom('nearly-on-the-outline', 2));
  for (let seed = 0; seed < 5; seed++) {
    const brow = seededTask(seed).brows.right;
    const corners = nearlyOn(brow, 8, 1e-16, draw);
    const theirs = difference(
      [[...corners, corners[0] ?? [0, 0]].map(([u, v]): [number, number] => [u, v])],
      [outlinePolygon(outline(brow), 96).map(({ uMm, vMm }): [number, number] => [uMm, vMm])],
    );
    const area = theirs.reduce(
      (sum, polygon) =>
        sum +
        polygon.reduce(
          (all, ring, i) =>
            all + (i === 0 ? 1 : -1) * Math.abs(signedAreaMm2(ring.map(([uMm, vMm]) => ({ uMm, vMm })))),
          0,
        ),
      0,
    );
    expect(outsideOf(shapeOf(corners), outline(brow)).areaMm2).toBeCloseTo(area, 2);
  }
});

test('[hand] an old shape inside an outline that it touches at the tail: nothing stands out, although the package loses its way there', () => {
  const drawn = outline({
    frontLower: { uMm: 15.3, vMm: 13.1 },
    frontTop: { uMm: 15.3, vMm: 17.6 },
    archTop: { uMm: 39.8, vMm: 20.6 },
    archLower: { uMm: 40.7, vMm: 15.5 },
    tail: { uMm: 55, vMm: 13.2 },
  });
  const around = outline({
    frontLower: { uMm: 15.7, vMm: 10.799999998958212 },
    frontTop: { uMm: 14.2, vMm: 17.400000005148797 },
    archTop: { uMm: 40.5, vMm: 23.4999999660738 },
    archLower: { uMm: 39.9, vMm: 15.099999998961556 },
    tail: { uMm: 55.3, vMm: 12.990867322425935 },
  });
  const old = shapeOf(spreadShape(drawn, 0.1).map(({ uMm, vMm }) => [uMm, vMm]));
  const { areaMm2, pieces } = outsideOf(old, around);
  expect(areaMm2).toBeLessThan(0.01);
  expect(pieces).toEqual([]);
});
