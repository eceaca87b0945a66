import { difference } from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { areaBeyond, areaBeyondMm2 } from '#lib/mapping/plan/areaBeyond.ts';
import { edgeSpans } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsOf, listOf, withHeights } from '#lib/mapping/plan/heights.ts';
import { oldPieces } from '#lib/mapping/plan/oldPieces.ts';
import { signedAreaMm2, type OldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideAreaMm2 } from '#lib/mapping/plan/outsideArea.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import { planHeights } from '#lib/mapping/plan/planHeights.ts';
import { drawFrom, type Draw } from '#lib/quantities/seed.ts';
import { handBrow, limitsOf, seededTask, shapeOf } from './tasks.ts';

const outlineFrom = (brow: Brow) => {
  const outline = outlineOf(brow);
  if (!outline.ok) throw new Error(outline.reason);
  return outline;
};

/** What a polygon package finds outside, mm². */
function byPackage(old: OldShape, brow: Brow): number {
  const ring = (corners: readonly { uMm: number; vMm: number }[]) =>
    corners.map(({ uMm, vMm }): [number, number] => [uMm, vMm]);
  return difference([ring(old.corners)], [ring(outlinePolygon(outlineFrom(brow), 60))])
    .flatMap((polygon) =>
      polygon.map(
        (part, i) => (i === 0 ? 1 : -1) * Math.abs(signedAreaMm2(part.map(([uMm, vMm]) => ({ uMm, vMm })))),
      ),
    )
    .reduce((sum, mm2) => sum + mm2, 0);
}

/** A star of corners around a place in or beside the brow, some of it wholly outside. */
function drawnStar(draw: Draw): OldShape {
  const [u, v, count] = [12 + 56 * draw(), 17 + 16 * draw(), 5 + Math.floor(8 * draw())];
  return shapeOf(
    Array.from({ length: count }, (_, i): readonly [number, number] => {
      const [turn, far] = [(2 * Math.PI * (i + 0.6 * draw())) / count, 1 + 9 * draw()];
      return [u + 1.5 * far * Math.cos(turn), v + far * Math.sin(turn)];
    }),
  );
}

const leaning: readonly Brow[] = [
  handBrow,
  { ...handBrow, frontTop: { uMm: 19, vMm: 25 } },
  { ...handBrow, frontTop: { uMm: 15, vMm: 25 } },
];

describe('the area outside in closed form', () => {
  test('[library] for stars in, across and beside brows whose fronts lean either way it is what a polygon package finds', () => {
    const draw = drawFrom(41);
    for (let i = 0; i < 150; i++) {
      const [brow, old] = [leaning[i % 3] ?? handBrow, drawnStar(draw)];
      expect(Math.abs(outsideAreaMm2(old, outlineFrom(brow)) - byPackage(old, brow)), `${i}`).toBeLessThan(
        0.03,
      );
    }
  });

  test('[hand] a square of 2 mm × 4 mm, half of it over a level edge, in front of the front, beyond the tail', () => {
    // Arch top and tail as high: the upper edge is level from 47 to 64.
    const level = outlineFrom({ ...handBrow, tail: { uMm: 64, vMm: 33 } });
    const square = (u: number, v: number) =>
      shapeOf([
        [u, v],
        [u + 2, v],
        [u + 2, v + 4],
        [u, v + 4],
      ]);
    expect(outsideAreaMm2(square(50, 31), level)).toBeCloseTo(4, 9);
    expect(outsideAreaMm2(square(50, 40), level)).toBeCloseTo(8, 9);
    expect(outsideAreaMm2(square(10, 20), level)).toBeCloseTo(8, 9);
    expect(outsideAreaMm2(square(63, 40), level)).toBeCloseTo(8, 9);
  });

  test('[property] its slope and its bend are those that small steps find', () => {
    const draw = drawFrom(43);
    for (let i = 0; i < 60; i++) {
      const brow = leaning[i % 3] ?? handBrow;
      const { added, taken, margin } = oldPieces(drawnStar(draw), edgeSpans(brow), 64, 0.5);
      for (const pieces of [added, taken, margin]) {
        const heights = listOf(heightsOf(brow)).map((v) => v + draw() - 0.5);
        const { areaMm2, slope, bend } = areaBeyond(pieces, heights);
        expect(areaMm2).toBe(areaBeyondMm2(pieces, heights));
        const at = (mark: number, by: number) => heights.map((v, k) => (k === mark ? v + by : v));
        browMarks.forEach((_, mark) => {
          const step = 1e-5;
          const [up, down] = [areaBeyond(pieces, at(mark, step)), areaBeyond(pieces, at(mark, -step))];
          expect((up.areaMm2 - down.areaMm2) / (2 * step)).toBeCloseTo(slope[mark] ?? NaN, 3);
          browMarks.forEach((_other, other) => {
            const change = ((up.slope[other] ?? NaN) - (down.slope[other] ?? NaN)) / (2 * step);
            const ours = bend[mark]?.[other] ?? NaN;
            expect(Math.abs(change - ours)).toBeLessThan(1e-3 * (1 + Math.abs(ours)));
          });
        });
      }
    }
  });
});

describe('the least area outside', () => {
  const corners = [
    [15, 18.5],
    [28, 21.5],
    [45, 25.2],
    [60, 22],
    [46, 30.5],
    [15, 24.5],
  ] as const;
  const brow = (frontTopMm: number): Brow => ({
    frontLower: { uMm: 16, vMm: 18 },
    frontTop: { uMm: frontTopMm, vMm: 25 },
    archTop: { uMm: 46, vMm: 31 },
    archLower: { uMm: 45, vMm: 25 },
    tail: { uMm: 63, vMm: 22 },
  });
  const planned = (frontTopMm: number, old: OldShape) => {
    const right = brow(frontTopMm);
    const plan = planHeights({
      brows: { right, left: { ...right, frontLower: { uMm: 16, vMm: 20 } } },
      free: 'right',
      old: { right: old },
      limits: { right: limitsOf(2, 2), left: limitsOf(2, 2) },
      marginMm: 0,
      weights: { right: 1, left: 1 },
    });
    if (!plan.ok) throw new Error(plan.reason);
    return { heights: plan.heights.right, mm2: byPackage(old, withHeights(right, plan.heights.right)) };
  };
  /** Each of the lower edges in so many pieces. */
  const pieced = (count: number) =>
    shapeOf(
      corners.flatMap(([u, v], i): readonly (readonly [number, number])[] => {
        const [nextU, nextV] = corners[(i + 1) % corners.length] ?? [u, v];
        return Array.from({ length: i < 3 ? count : 1 }, (_, k) => [
          u + ((nextU - u) * k) / count,
          v + ((nextV - v) * k) / count,
        ]);
      }),
    );

  test('[hand] a leaning front: lowering the lower front mark to 16 mm leaves less outside than any height above', () => {
    const [old, right] = [shapeOf(corners), brow(15)];
    const with16 = byPackage(old, { ...right, frontLower: { uMm: 16, vMm: 16 } });
    const alone = byPackage(old, right);
    expect(alone).toBeGreaterThan(with16 + 0.5);
    const { mm2, heights } = planned(15, old);
    expect(mm2).toBeLessThan(with16 + 0.02);
    expect(heights.frontLower).toBeLessThan(16.1);
    // A front that leans the other way: raising the lower mark to 20 left 16.9 mm² outside, leaving it 7.6.
    expect(planned(16.5, old).mm2).toBeLessThan(byPackage(old, brow(16.5)));
  });

  test('[hand] the same old edge in 2, 4 or 13 pieces changes nothing', () => {
    const whole = planned(15, shapeOf(corners));
    for (const count of [2, 4, 13]) {
      const { heights, mm2 } = planned(15, pieced(count));
      expect(mm2).toBeCloseTo(whole.mm2, 5);
      for (const mark of browMarks) expect(heights[mark]).toBeCloseTo(whole.heights[mark], 5);
    }
  });

  test('[property] five plans of one task are the same to the last digit, whichever corner its old work begins with', () => {
    for (let seed = 0; seed < 20; seed++) {
      const task = seededTask(seed);
      const turned = (old: OldShape | undefined) =>
        old &&
        shapeOf([...old.corners.slice(3), ...old.corners.slice(0, 3)].map(({ uMm, vMm }) => [uMm, vMm]));
      const [first, again, other] = [
        planHeights(task),
        planHeights(task),
        planHeights({
          ...task,
          old: {
            ...(task.old.right && { right: turned(task.old.right) ?? task.old.right }),
            ...(task.old.left && { left: turned(task.old.left) ?? task.old.left }),
          },
        }),
      ];
      expect(again).toEqual(first);
      if (!first.ok || !other.ok) continue;
      for (const side of ['right', 'left'] as const)
        for (const mark of browMarks)
          expect(other.heights[side][mark]).toBeCloseTo(first.heights[side][mark], 4);
    }
  });

  test('[property] the area a plan says is the one outside between front and tail, and the polygons’', () => {
    for (let seed = 0; seed < 60; seed++) {
      const task = seededTask(seed);
      const plan = planHeights(task);
      if (!plan.ok) continue;
      for (const side of ['right', 'left'] as const) {
        const [old, cover] = [task.old[side], plan.cover[side]];
        if (!old || !cover) continue;
        const outline = outlineFrom(withHeights(task.brows[side], plan.heights[side]));
        const { areaMm2, beforeFrontMm, beyondTailMm } = outsideOf(old, outline);
        expect(areaMm2).toBeCloseTo(outsideAreaMm2(old, outline), 1);
        if (beforeFrontMm + beyondTailMm === 0) expect(Math.abs(areaMm2 - cover.outMm2)).toBeLessThan(0.02);
      }
    }
  });
});
