import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { halfEdgeCurve } from '#lib/mapping/outline/halfEdge.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlineAreaMm2 } from '#lib/mapping/outline/outlineSize.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { coverRows, withMargin } from '#lib/mapping/plan/coverRows.ts';
import { areaRow, edgeSpans, heightRow, spanRow } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsOf, listOf } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { leastDifferenceMm, meetingHeightMm } from '#lib/mapping/plan/meetingHeight.ts';
import { nearest } from '#lib/mapping/plan/nearest.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
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

test('[hand] cover rows ask for corner ± margin under the curves, less towards the tail, none of it on a leaning front', () => {
  const old = shapeOf([
    [16, 18],
    [58, 21.5],
    [58, 22.5],
    [16, 24],
  ]);
  const cover = coverRows(old, edgeSpans(handBrow), 'right', 64);
  const wanted = withMargin(cover, 0.6).map(({ atLeast, holder }) => ({ atLeast, holder }));
  const asked = (edge: 'upper' | 'lower', uMm: number) =>
    wanted.find(
      ({ holder }) =>
        holder?.kind === 'old-work' && holder.edge === edge && Math.abs(holder.uMm - uMm) < 1e-6,
    )?.atLeast;
  expect(asked('upper', 16)).toBeCloseTo(24.6, 9);
  expect(asked('lower', 16)).toBeCloseTo(-18 + 0.6, 9);
  expect(asked('upper', 58)).toBeCloseTo(23.1, 9);
  // 4 mm from the tail end four fifths of the margin are asked.
  const nearTail = withMargin(
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
  );
  const last = nearTail.find(
    ({ holder }) =>
      holder?.kind === 'old-work' && holder.edge === 'upper' && Math.abs(holder.uMm - 60) < 1e-6,
  );
  expect(last?.atLeast).toBeCloseTo(22.9, 9);
  // The top of this front stands in front of its foot: under 15 mm the front line is the lower border, and no
  // margin is asked.
  const front = withMargin(
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
  );
  const lowest = front.find(
    ({ holder }) =>
      holder?.kind === 'old-work' && holder.edge === 'lower' && Math.abs(holder.uMm - 14.5) < 1e-6,
  );
  expect(lowest?.atLeast).toBeCloseTo(-22, 9);
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
  });
});
