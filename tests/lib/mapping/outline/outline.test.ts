import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeHeightMm } from '#lib/mapping/outline/edge.ts';
import { type Cubic } from '#lib/mapping/outline/halfEdge.ts';
import { outlineCurves, outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { edgeLengthMm, outlineAreaMm2, outlinePerimeterMm } from '#lib/mapping/outline/outlineSize.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { at, bar, brows, example, outlined } from './brows.ts';

const bezierOf = (curve: Cubic) => new Bezier(...curve.flatMap(({ uMm, vMm }) => [uMm, vMm]));

describe('area and perimeter', () => {
  it('[table] the printed example: 287.625 mm²', () => {
    expect(outlineAreaMm2(outlined(example))).toBeCloseTo(287.625, 10);
  });
  it('[hand] the same, piece by piece: 33·30 + 17·28.125 − 31·23.25 − 18·24.375 − 21', () => {
    expect(33 * 30 + 17 * 28.125 - 31 * 23.25 - 18 * 24.375 - 21).toBe(287.625);
    // Its front turned the other way, top 1 mm further out than the foot: one half edge 31 wide, the other
    // 32, trapezoid added.
    const out = { ...example, frontLower: at(14, 17), frontTop: at(15, 25) };
    expect(outlineAreaMm2(outlined(out))).toBeCloseTo(
      32 * 30 + 17 * 28.125 - 32 * 23.25 - 18 * 24.375 + 21,
      10,
    );
  });
  it('[hand] a bar 24 mm long and 8 high with a tail of 16: 192 + 16 · 8 · 0.625', () => {
    expect(outlineAreaMm2(outlined(bar))).toBeCloseTo(192 + 80, 12);
  });
  it('[hand] the bar’s lower edge is straight, 40 mm; its front 8', () => {
    const outline = outlined(bar);
    expect(edgeLengthMm(outline.lower)).toBeCloseTo(40, 10);
    expect(outlinePerimeterMm(outline)).toBeCloseTo(48 + edgeLengthMm(outline.upper), 10);
    // A front that leans 6 out over 8 up is 10 long.
    const lean = outlined({ ...bar, frontTop: at(22, 18) });
    expect(outlinePerimeterMm(lean) - edgeLengthMm(lean.upper) - edgeLengthMm(lean.lower)).toBeCloseTo(
      10,
      12,
    );
  });
  it('[library] perimeter by the lengths of bezier-js, area by its polygon’s shoelace', () => {
    fc.assert(
      fc.property(brows, (brow) => {
        const outline = outlined(brow);
        const curves = outlineCurves(outline).map(bezierOf);
        const front = Math.hypot(
          brow.frontTop.uMm - brow.frontLower.uMm,
          brow.frontTop.vMm - brow.frontLower.vMm,
        );
        expect(outlinePerimeterMm(outline)).toBeCloseTo(
          curves.reduce((sum, curve) => sum + curve.length(), front),
          4,
        );
        const points = curves.flatMap((curve) => Array.from({ length: 400 }, (_, i) => curve.get(i / 400)));
        points.push({ x: brow.frontTop.uMm, y: brow.frontTop.vMm });
        const twice = points.reduce((sum, p, i) => {
          const q = points[(i + 1) % points.length] ?? p;
          return sum + p.x * q.y - q.x * p.y;
        }, 0);
        expect(Math.abs(outlineAreaMm2(outline) - twice / 2)).toBeLessThan(2e-3);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });
  it('[property] area is the sum of thin strips of the span, a leaning front included', () => {
    fc.assert(
      fc.property(brows, (brow) => {
        const outline = outlined(brow);
        const from = Math.min(brow.frontLower.uMm, brow.frontTop.uMm);
        const width = (brow.tail.uMm - from) / 4000;
        let sum = 0;
        for (let i = 0; i < 4000; i++) {
          const span = spanAt(outline, from + (i + 0.5) * width);
          sum += width * ((span?.upperMm ?? NaN) - (span?.lowerMm ?? NaN));
        }
        expect(Math.abs(outlineAreaMm2(outline) - sum)).toBeLessThan(0.05);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });
});

describe('the outline as data', () => {
  it('[hand] the front half of the example’s upper edge: (14, 25) (25, 29) (36, 33) (47, 33)', () => {
    const [, , , last] = outlineCurves(outlined(example));
    expect(last.map(({ uMm, vMm }) => [uMm, vMm].map((mm) => Number(mm.toFixed(9))))).toEqual([
      [47, 33],
      [36, 33],
      [25, 29],
      [14, 25],
    ]);
  });
  it('[property] four curves run round through all five marks', () => {
    fc.assert(
      fc.property(brows, (brow) => {
        const curves = outlineCurves(outlined(brow));
        const { frontLower, archLower, tail, archTop, frontTop } = brow;
        expect(curves.map(([start]) => start)).toEqual([frontLower, archLower, tail, archTop]);
        expect(curves.map((curve) => curve[3])).toEqual([archLower, tail, archTop, frontTop]);
      }),
      { endOnFailure: true },
    );
  });
  it('[property] the polygon is the curve’s points: four times the steps and the start, none twice in a row', () => {
    fc.assert(
      fc.property(brows, fc.integer({ min: 1, max: 12 }), (brow, steps) => {
        const outline = outlined(brow);
        const polygon = outlinePolygon(outline, steps);
        expect(polygon).toHaveLength(4 * steps + 1);
        expect([0, 1, 2, 3, 4].map((i) => polygon[i * steps])).toEqual([
          brow.frontLower,
          brow.archLower,
          brow.tail,
          brow.archTop,
          brow.frontTop,
        ]);
        for (const [i, { uMm, vMm }] of polygon.entries())
          expect(edgeHeightMm(i <= 2 * steps ? outline.lower : outline.upper, uMm)).toBeCloseTo(vMm, 9);
      }),
      { endOnFailure: true },
    );
  });
  it('[hand] steps are of equal width: the bar in four', () => {
    expect(
      outlinePolygon(outlined(bar), 4)
        .slice(0, 9)
        .map(({ uMm }) => uMm),
    ).toEqual([16, 22, 28, 34, 40, 44, 48, 52, 56]);
  });
  it('[hand] the span of a leaning front: half way in, half way up the straight line', () => {
    // Front (15, 17) to (14, 25): at 14.5 the line stands at 21.
    expect(spanAt(outlined(example), 14.5)?.lowerMm).toBeCloseTo(21, 12);
    expect(spanAt(outlined({ ...example, frontTop: at(17, 25) }), 16)?.upperMm).toBeCloseTo(21, 12);
    expect(spanAt(outlined(example), 13.99)).toBeUndefined();
    expect(spanAt(outlined(example), 64.01)).toBeUndefined();
    expect(spanAt(outlined(bar), 15.99)).toBeUndefined();
    expect(spanAt(outlined(bar), 16)).toEqual({ lowerMm: 10, upperMm: 18 });
    expect(spanAt(outlined(example), 64)).toEqual({ lowerMm: 20, upperMm: 20 });
    // At the very tip of a leaning front both borders stand on its mark.
    expect(spanAt(outlined(example), 14)).toEqual({ lowerMm: 25, upperMm: 25 });
    expect(spanAt(outlined({ ...example, frontTop: at(17, 25) }), 15)).toEqual({ lowerMm: 17, upperMm: 17 });
  });
});
