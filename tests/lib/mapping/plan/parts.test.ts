import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { difference } from 'polyclip-ts';
import { expect, test } from 'vitest';
import { practiceOldShape } from '#lib/face/oldShape.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { halfEdgeCurve } from '#lib/mapping/outline/halfEdge.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { outlineAreaMm2 } from '#lib/mapping/outline/outlineSize.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { coverRows, easedRows } from '#lib/mapping/plan/coverRows.ts';
import { areaRow, edgeSpans, heightRow, spanRow } from '#lib/mapping/plan/edgeSpans.ts';
import { growthFromMarginMm, growthSince } from '#lib/mapping/plan/growth.ts';
import { heightsOf, listOf } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { leastDifferenceMm, meetingHeightMm } from '#lib/mapping/plan/meetingHeight.ts';
import { nearest } from '#lib/mapping/plan/nearest.ts';
import { readOldShape, signedAreaMm2 } from '#lib/mapping/plan/oldShape.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import { real } from '../../../tools/real.ts';
import { handBrow, limitsOf, seededTask, shapeOf } from './tasks.ts';

const outline = (brow: Brow) => {
  const found = outlineOf(brow);
  if (!found.ok) throw new Error(found.reason);
  return found;
};
/** The same brow with its front leaning the other way. */
const leaning: Brow = { ...handBrow, frontTop: { uMm: 17, vMm: 25 } };

test('[property] the rows of both edges give the outline’s own heights and area, for fronts leaning either way', () => {
  for (const brow of [
    handBrow,
    leaning,
    ...Array.from({ length: 40 }, (_, seed) => seededTask(seed).brows.left),
  ]) {
    const [spans, heights] = [edgeSpans(brow), listOf(heightsOf(brow))];
    expect(rowValue(areaRow(spans), heights)).toBeCloseTo(outlineAreaMm2(outline(brow)), 9);
    fc.assert(
      fc.property(real(0, 1), (share) => {
        const from = Math.min(brow.frontTop.uMm, brow.frontLower.uMm);
        const uMm = from + share * (brow.tail.uMm - from);
        const span = spanAt(outline(brow), uMm);
        expect(rowValue(heightRow(spans.upper, uMm) ?? [], heights)).toBeCloseTo(span?.upperMm ?? NaN, 9);
        expect(rowValue(heightRow(spans.lower, uMm) ?? [], heights)).toBeCloseTo(span?.lowerMm ?? NaN, 9);
      }),
      { seed: 1, numRuns: 50 },
    );
    expect(heightRow(spans.upper, brow.tail.uMm + 0.01)).toBeUndefined();
    expect(heightRow(spans.lower, 0)).toBeUndefined();
  }
});

test('[hand] the area row gives the worked 287.625 mm²', () => {
  expect(rowValue(areaRow(edgeSpans(handBrow)), listOf(heightsOf(handBrow)))).toBeCloseTo(287.625, 9);
});

test('[library] inner Bézier heights of a piece are those another package finds by splitting the curve', () => {
  const heights = listOf(heightsOf(handBrow));
  const { upper } = outline(handBrow);
  const curve = new Bezier(...halfEdgeCurve(upper.front).flatMap(({ uMm, vMm }) => [uMm, vMm]));
  const span = edgeSpans(handBrow).upper[0];
  if (!span) throw new Error('an upper front half');
  const at = (t: number) => span.endMm + t * (span.otherMm - span.endMm);
  const piece = curve.split(0.2, 0.7).points;
  const [a, b] = [at(0.2), at(0.7)];
  const ours = [
    spanRow(span, a, a, a),
    spanRow(span, a, a, b),
    spanRow(span, a, b, b),
    spanRow(span, b, b, b),
  ].map((row) => rowValue(row, heights));
  ours.forEach((height, i) => expect(height).toBeCloseTo(piece[i]?.y ?? NaN, 9));
});

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

test('[hand] cover rows ask for corner ± margin under the curves, less towards the tail, none of it on a leaning front', () => {
  const old = shapeOf([
    [16, 18],
    [58, 21.5],
    [58, 22.5],
    [16, 24],
  ]);
  const cover = coverRows(old, edgeSpans(handBrow), 'right', 64);
  const wanted = easedRows(cover, 0.6, []).map(({ atLeast, holder }) => ({ atLeast, holder }));
  const asked = (edge: 'upper' | 'lower', uMm: number) =>
    wanted.find(
      ({ holder }) =>
        holder?.kind === 'old-work' && holder.edge === edge && Math.abs(holder.uMm - uMm) < 1e-6,
    )?.atLeast;
  expect(asked('upper', 16)).toBeCloseTo(24.6, 9);
  expect(asked('lower', 16)).toBeCloseTo(-18 + 0.6, 9);
  expect(asked('upper', 58)).toBeCloseTo(23.1, 9);
  // 4 mm from the tail end four fifths of the margin are asked.
  const nearTail = easedRows(
    coverRows(
      shapeOf([
        [16, 18],
        [60, 21.5],
        [60, 22.5],
        [16, 24],
      ]),
      edgeSpans(handBrow),
      'right',
      64,
    ),
    0.5,
    [],
  );
  const last = nearTail.find(
    ({ holder }) =>
      holder?.kind === 'old-work' && holder.edge === 'upper' && Math.abs(holder.uMm - 60) < 1e-6,
  );
  expect(last?.atLeast).toBeCloseTo(22.9, 9);
  // The top of this front stands in front of its foot: under 15 mm the front line is the lower border, and no
  // margin is asked.
  const front = easedRows(
    coverRows(
      shapeOf([
        [14.5, 22],
        [40, 24],
        [40, 26],
        [14.5, 24],
      ]),
      edgeSpans(handBrow),
      'right',
      64,
    ),
    0.5,
    [],
  );
  const lowest = front.find(
    ({ holder }) =>
      holder?.kind === 'old-work' && holder.edge === 'lower' && Math.abs(holder.uMm - 14.5) < 1e-6,
  );
  expect(lowest?.atLeast).toBeCloseTo(-22, 9);
  // Each knot speaks for half its edge: 42 mm above and 42 below.
  expect(cover.widthsMm.reduce((sum, width) => sum + width, 0)).toBeCloseTo(84, 9);
});

test('[hand] limits as rows: raise, lower, thickness, growth, tail', () => {
  const spans = edgeSpans(handBrow);
  const rows = limitRows(
    handBrow,
    spans,
    'left',
    { ...limitsOf(1, 0.5), thicknessMostMm: 9, growthMostShare: 0.1, isTailWithinFront: true },
    250,
  );
  const slack = (brow: Brow) =>
    rows.map((row) => ({
      kind: row.holder?.kind,
      room: rowValue(row.coefficients, listOf(heightsOf(brow))) - row.atLeast,
    }));
  const room = (kind: string) =>
    slack(handBrow)
      .filter((row) => row.kind === kind)
      .map((row) => row.room);
  room('raise').forEach((mm) => expect(mm).toBeCloseTo(1, 9));
  room('lower').forEach((mm) => expect(mm).toBeCloseTo(0.5, 9));
  expect(room('raise').length).toBe(5);
  // 275 mm² are allowed, 287.625 are there.
  expect(room('growth')).toEqual([expect.closeTo(-12.625, 9)]);
  // Tail 20, front 17 to 25.
  expect(room('tail')).toEqual([expect.closeTo(3, 9), expect.closeTo(5, 9)]);
  const places = [15, 30.5, 46, 47];
  places.forEach((uMm, i) => {
    const span = spanAt(outline(handBrow), uMm);
    expect(room('thickness')[i]).toBeCloseTo(9 - ((span?.upperMm ?? NaN) - (span?.lowerMm ?? NaN)), 9);
  });
  expect(limitRows(handBrow, spans, 'left', limitsOf(1, 1), 250).length).toBe(10);
  expect(
    limitRows(handBrow, spans, 'left', { ...limitsOf(1, 1), growthMostShare: 0.1 }, undefined).length,
  ).toBe(10);
});

test('[hand] where two sides meet, and what stays', () => {
  const room = (right: number, left: number, up: number, down: number) => ({
    right: { vMm: right, raiseMostMm: up, lowerMostMm: down },
    left: { vMm: left, raiseMostMm: up, lowerMostMm: down },
  });
  expect(meetingHeightMm(room(20, 21, 2, 2), { right: 1, left: 1 })).toBe(20.5);
  expect(meetingHeightMm(room(20, 21, 2, 2), { right: 1, left: 3 })).toBe(20.75);
  // Half way would be 21, but the higher side comes down 0.5 at most.
  expect(meetingHeightMm(room(20, 22, 2, 0.5), { right: 1, left: 1 })).toBe(21.5);
  expect(meetingHeightMm(room(20, 22, 0.5, 2), { right: 1, left: 1 })).toBe(20.5);
  expect(meetingHeightMm(room(20, 22, 1, 1), { right: 1, left: 1 })).toBe(21);
  expect(meetingHeightMm(room(20, 22, 1, 0.9), { right: 1, left: 1 })).toBeUndefined();
  expect(leastDifferenceMm(room(20, 22, 1, 0.9))).toBeCloseTo(0.1, 12);
  expect(leastDifferenceMm(room(22, 20, 1, 0.9))).toBeCloseTo(-0.1, 12);
  expect(leastDifferenceMm(room(20, 22, 1, 1))).toBe(0);
});

test('[hand] nearest: a point on a corner of two rows, what holds it, and rows that contradict', () => {
  const holder = (side: 'right' | 'left') => ({ kind: 'growth', side }) as const;
  const rows = [
    { coefficients: [1, 0], atLeast: 2, holder: holder('right') },
    { coefficients: [1, 1], atLeast: 5, holder: holder('left') },
    { coefficients: [0, 1], atLeast: -9 },
  ];
  const found = nearest([0, 0], [1, 1], rows);
  if (!found.ok) throw new Error(found.reason);
  // On x + y = 5 the nearest point to the origin is (2.5, 2.5), which keeps x ≥ 2.
  expect(found.unknowns[0]).toBeCloseTo(2.5, 9);
  expect(found.unknowns[1]).toBeCloseTo(2.5, 9);
  expect(found.heldBy).toEqual([holder('left')]);
  // Three times the weight on x: least 3x² + y² on the line is x = 1.25, so x ≥ 2 holds it, too.
  const heavy = nearest([0, 0], [3, 1], rows);
  if (!heavy.ok) throw new Error(heavy.reason);
  expect(heavy.unknowns[0]).toBeCloseTo(2, 9);
  expect(heavy.unknowns[1]).toBeCloseTo(3, 9);
  expect(heavy.heldBy.length).toBe(2);
  expect(nearest([3, 3], [1, 1], rows)).toEqual({ ok: true, unknowns: [3, 3], heldBy: [], pulls: [0, 0, 0] });
  expect(nearest([0, 0], [1, 1], [...rows, { coefficients: [-1, -1], atLeast: -4 }])).toEqual({
    ok: false,
    reason: 'rows-contradict',
    atOdds: expect.arrayContaining([3]),
  });
});

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

test('[hand] growth: a strip 2 mm thick under a strip-like stretch of the outline', () => {
  const drawn = outline(handBrow);
  const grown = growthSince(
    shapeOf([
      [20, 22],
      [40, 26],
      [40, 28],
      [20, 24],
    ]),
    drawn,
  );
  if (!grown.ok) throw new Error(grown.reason);
  let sum = 0;
  for (let i = 0; i < 2000; i++) {
    const span = spanAt(drawn, 20 + (i + 0.5) / 100);
    sum += ((span?.upperMm ?? NaN) - (span?.lowerMm ?? NaN)) / 2000;
  }
  expect(grown.thicknessMm).toBeCloseTo(sum - 2, 3);
  expect(grown.areaMm2).toBeCloseTo(287.625 - 40, 9);
  expect(grown.share).toBeCloseTo(247.625 / 40, 9);
  expect(
    growthSince(
      shapeOf([
        [70, 20],
        [80, 20],
        [80, 22],
      ]),
      drawn,
    ),
  ).toEqual({ ok: false, reason: 'nothing-shared' });
});

test('[table] the margin alone adds 1.0 to 1.6 mm, 15 to 25 % of a brow 6.5 mm thick', () => {
  expect(growthFromMarginMm(1.64, 0.3)).toBeCloseTo(1, 1);
  expect(growthFromMarginMm(1.64, 0.5)).toBeCloseTo(1.6, 1);
  expect(Math.round((100 * growthFromMarginMm(1.64, 0.3)) / 6.5)).toBe(15);
  expect(Math.round((100 * growthFromMarginMm(1.64, 0.5)) / 6.5)).toBe(25);
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
