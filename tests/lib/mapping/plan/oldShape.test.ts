import { expect, test } from 'vitest';
import { practiceOldShape } from '#lib/face/oldShape.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { readOldShape } from '#lib/mapping/plan/oldShape.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { handBrow, seededTask } from './tasks.ts';

const outline = (brow: Brow) => {
  const found = outlineOf(brow);
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] an old shape: corners in either direction; what is refused', () => {
  const square = [
    { uMm: 20, vMm: 20 },
    { uMm: 30, vMm: 20 },
    { uMm: 30, vMm: 25 },
    { uMm: 20, vMm: 25 },
  ];
  expect(readOldShape(square)).toEqual({ ok: true, corners: square, areaMm2: 50 });
  expect(readOldShape([...square].reverse())).toEqual({ ok: true, corners: square, areaMm2: 50 });
  expect(readOldShape(square.slice(0, 2))).toEqual({ ok: false, reason: 'too-few-corners' });
  expect(readOldShape([...square.slice(0, 3), { uMm: NaN, vMm: 25 }])).toEqual({
    ok: false,
    reason: 'not-a-number',
  });
  expect(readOldShape([...square.slice(0, 3), { uMm: 20, vMm: 201 }])).toEqual({
    ok: false,
    reason: 'not-a-number',
  });
  expect(readOldShape([...square.slice(0, 3), { uMm: 20, vMm: 200 }]).ok).toBe(true);
  expect(readOldShape(square.map((corner) => ({ ...corner, vMm: 20 })))).toEqual({
    ok: false,
    reason: 'no-area',
  });
  expect(
    readOldShape([
      { uMm: 20, vMm: 20 },
      { uMm: 30, vMm: 25 },
      { uMm: 30, vMm: 20 },
      { uMm: 20, vMm: 26 },
    ]),
  ).toEqual({ ok: false, reason: 'crosses-itself' });
});

test('[hand] an old shape: a line that meets itself at a corner, or runs round twice, crosses itself', () => {
  const read = (...corners: readonly (readonly [number, number])[]) =>
    readOldShape(corners.map(([uMm, vMm]) => ({ uMm, vMm })));
  const crosses = { ok: false, reason: 'crosses-itself' };
  // A figure eight through one corner of both loops, and with the corner on one loop only.
  expect(read([20, 15], [35, 22.5], [50, 30], [50, 10], [35, 22.5], [20, 30])).toEqual(crosses);
  expect(read([20, 15], [50, 30], [50, 10], [35, 22.5], [20, 30])).toEqual(crosses);
  // The same outline walked twice.
  const around = [
    [20, 20],
    [50, 20],
    [50, 35],
    [20, 35],
  ] as const;
  expect(read(...around, ...around)).toEqual(crosses);
  // A side walked there and back is a spike: the area is right, and nothing is crossed.
  expect(read([20, 20], [50, 20], [60, 20], [50, 20], [50, 35], [20, 35])).toMatchObject({
    ok: true,
    areaMm2: 450,
  });
  // Two corners on one point, and one corner resting on another edge from inside, cross nothing.
  expect(read([20, 20], [20, 20], [50, 20], [50, 35], [20, 35])).toMatchObject({ ok: true, areaMm2: 450 });
  expect(read([20, 20], [50, 20], [50, 35], [35, 20], [20, 35])).toMatchObject({ ok: true, areaMm2: 225 });
});

test('[property] practice old shapes: 8 to 16 corners, readable, the same for a seed; some lifted, some longer', () => {
  let [lifted, longer] = [0, 0];
  for (let seed = 0; seed < 400; seed++) {
    const brow = seededTask(seed % 20).brows.right;
    const shape = practiceOldShape(brow, seed);
    expect(practiceOldShape(brow, seed)).toEqual(shape);
    expect(shape.corners.length).toBeGreaterThanOrEqual(8);
    expect(shape.corners.length).toBeLessThanOrEqual(16);
    expect(readOldShape(shape.corners)).toEqual({
      ok: true,
      corners: shape.corners,
      areaMm2: expect.any(Number),
    });
    if (shape.liftedMm > 0) lifted++;
    if (shape.longerMm > 0) longer++;
    const tip = Math.max(...shape.corners.map(({ uMm }) => uMm));
    if (shape.longerMm > 2.5) expect(tip).toBeGreaterThan(brow.tail.uMm - 1);
  }
  expect(lifted / 400).toBeCloseTo(0.25, 1);
  expect(longer / 400).toBeCloseTo(0.25, 1);
});

test('[hand] work drawn through five marks and spread: edges up and down, front in, tail out', () => {
  const drawn = outline(handBrow);
  const corners = spreadShape(drawn, 0.5);
  expect(corners[0]).toEqual({ uMm: 14.5, vMm: 16.5 });
  expect(corners.at(-1)).toEqual({ uMm: 13.5, vMm: 25.5 });
  expect(corners).toContainEqual({ uMm: 64.5, vMm: 20 });
  expect(corners).toContainEqual({ uMm: 47, vMm: 33.5 });
  expect(corners).toContainEqual({ uMm: 46, vMm: 26.5 });
  for (const { uMm, vMm } of corners.slice(1, -1)) {
    const span = spanAt(drawn, uMm);
    if (span)
      expect(Math.min(Math.abs(vMm - span.upperMm - 0.5), Math.abs(span.lowerMm - 0.5 - vMm))).toBeLessThan(
        1e-9,
      );
  }
  const bare = readOldShape(spreadShape(drawn, 0));
  if (!bare.ok) throw new Error(bare.reason);
  expect(bare.corners).toHaveLength(21);
  // Twenty chords: the outline's 287.625 mm² to one part in a hundred.
  expect(Math.abs(bare.areaMm2 / 287.625 - 1)).toBeLessThan(0.01);
  for (let seed = 0; seed < 40; seed++)
    expect(readOldShape(spreadShape(outline(seededTask(seed).brows.left), 0.1 * (seed % 10))).ok).toBe(true);
});
