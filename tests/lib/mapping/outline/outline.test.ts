import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { edgeAt, edgeHeightMm, edgeShares, type Edge } from '#lib/mapping/outline/edge.ts';
import { halfEdgeCurve, type Cubic, type HalfEdge } from '#lib/mapping/outline/halfEdge.ts';
import { outlineOf, type NoOutline } from '#lib/mapping/outline/outline.ts';
import { outlineCurves, outlinePolygon } from '#lib/mapping/outline/outlineCurves.ts';
import { edgeLengthMm, outlineAreaMm2, outlinePerimeterMm } from '#lib/mapping/outline/outlineSize.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { real } from '../../../tools/real.ts';
import { at, bar, brows, example, outlined } from './brows.ts';

const bezierOf = (curve: Cubic) => new Bezier(...curve.flatMap(({ uMm, vMm }) => [uMm, vMm]));
const halvesOf = ({ front, tail }: Edge): readonly HalfEdge[] => [front, tail];

describe('an edge', () => {
  const { upper, lower } = outlined(example);
  it('[hand] half way from the front (25 at 14) to the arch (33 at 47): B(½) = 0.3125, so 30.5; slope 12/33 · 0.75', () => {
    expect(edgeHeightMm(upper, 30.5)).toBeCloseTo(33 - 8 * 0.3125, 12);
    expect(edgeAt(upper, 30.5)?.slope).toBeCloseTo((12 / 33) * 0.75, 12);
    expect(edgeAt(upper, 14)?.slope).toBeCloseTo(12 / 33, 12);
  });
  it('[hand] half way from the tail (20 at 64) to the lower arch (27 at 46): 24.8125; slope −10.5/18 · 0.75', () => {
    expect(edgeHeightMm(lower, 55)).toBeCloseTo(27 - 7 * 0.3125, 12);
    expect(edgeAt(lower, 55)?.slope).toBeCloseTo((-10.5 / 18) * 0.75, 12);
  });
  it('[hand] passes its marks, level at the arch; nothing beyond its ends', () => {
    expect([14, 47, 64].map((u) => edgeHeightMm(upper, u))).toEqual([25, 33, 20]);
    expect([15, 46, 64].map((u) => edgeHeightMm(lower, u))).toEqual([17, 27, 20]);
    expect(edgeAt(upper, 47)?.slope).toBeCloseTo(0, 12);
    for (const u of [13.999, 64.001, Number.NaN])
      expect([edgeHeightMm(upper, u), edgeAt(upper, u), edgeShares(upper, u)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
  });
  it('[hand] shares of the three marks half way: 0.3125 of the end, 0.6875 of the arch, none of the other end', () => {
    expect(edgeShares(upper, 30.5)).toEqual({ front: 0.3125, arch: 0.6875, tail: 0 });
    expect(edgeShares(lower, 55)).toEqual({ front: 0, arch: 0.6875, tail: 0.3125 });
    expect(edgeShares(upper, 47)).toEqual({ front: 0, arch: 1, tail: 0 });
  });
  it('[library] each half is its own Bézier curve: heights and slopes by bezier-js', () => {
    fc.assert(
      fc.property(brows, real(0.01, 0.99), (brow, t) => {
        const { upper: over, lower: under } = outlined(brow);
        for (const edge of [over, under]) {
          for (const half of halvesOf(edge)) {
            const curve = bezierOf(halfEdgeCurve(half));
            const { x, y } = curve.get(t);
            const along = curve.derivative(t);
            expect(edgeHeightMm(edge, x)).toBeCloseTo(y, 9);
            expect(edgeAt(edge, x)?.slope).toBeCloseTo(along.y / along.x, 9);
          }
        }
      }),
      { endOnFailure: true },
    );
  });
  it('[property] no overshoot: between end and arch in height, rising or falling all the way', () => {
    fc.assert(
      fc.property(brows, real(0, 1), real(0, 1), (brow, a, b) => {
        const outline = outlined(brow);
        for (const edge of [outline.upper, outline.lower]) {
          for (const { end, arch } of halvesOf(edge)) {
            const heightAt = (t: number) =>
              edgeHeightMm(edge, end.uMm + t * (arch.uMm - end.uMm)) ?? Number.NaN;
            const heights = [end.vMm, heightAt(Math.min(a, b)), heightAt(Math.max(a, b)), arch.vMm];
            const sign = Math.sign(arch.vMm - end.vMm);
            for (let i = 1; i < heights.length; i++)
              expect(
                sign * ((heights[i] ?? Number.NaN) - (heights[i - 1] ?? Number.NaN)),
              ).toBeGreaterThanOrEqual(-1e-9);
          }
        }
      }),
      { endOnFailure: true },
    );
  });
  it('[property] linear in the heights: the shares times the marks’ heights, and they add to 1', () => {
    fc.assert(
      fc.property(brows, real(0, 1), (brow, t) => {
        const { frontLower, archLower, tail } = brow;
        const { lower: edge } = outlined(brow);
        const u = frontLower.uMm + t * (tail.uMm - frontLower.uMm);
        const shares = edgeShares(edge, u);
        if (!shares) return false;
        expect(shares.front + shares.arch + shares.tail).toBeCloseTo(1, 12);
        expect(edgeHeightMm(edge, u)).toBeCloseTo(
          shares.front * frontLower.vMm + shares.arch * archLower.vMm + shares.tail * tail.vMm,
          9,
        );
        return Math.min(shares.front, shares.arch, shares.tail) >= 0;
      }),
      { endOnFailure: true },
    );
  });
});

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

const refused = (change: Partial<Brow>): NoOutline['reason'] | 'ok' => {
  const outline = outlineOf({ ...example, ...change });
  return outline.ok ? 'ok' : outline.reason;
};

describe('marks that make no outline', () => {
  it.each([
    ['mark-not-a-number', { frontLower: at(Number.NaN, 17) }],
    ['mark-not-a-number', { frontTop: at(14, Number.POSITIVE_INFINITY) }],
    ['mark-not-a-number', { archLower: at(46, -1000.1) }],
    ['mark-not-a-number', { tail: at(1001, 20) }],
    ['tail-inside-front', { tail: at(15, 20) }],
    ['tail-inside-front', { frontTop: at(64, 25) }],
    ['arch-not-between-front-and-tail', { archTop: at(14.9, 33) }],
    ['arch-not-between-front-and-tail', { archTop: at(63.1, 33) }],
    ['arch-not-between-front-and-tail', { archLower: at(15.9, 27) }],
    ['arch-not-between-front-and-tail', { archLower: at(63.1, 27) }],
    ['arch-not-between-front-and-tail', { archLower: at(70, 27) }],
    ['front-top-not-above-lower', { frontTop: at(14, 17) }],
    ['front-top-not-above-lower', { frontTop: at(14, 12) }],
    ['upper-edge-under-lower-edge', { archTop: at(47, 26) }],
    ['upper-edge-under-lower-edge', { archLower: at(47, 33) }],
  ] as const)('[hand] %s', (reason, change) => {
    expect(refused(change)).toBe(reason);
  });
  it('[hand] at the limits there is an outline', () => {
    expect(refused({ archTop: at(63, 34) })).toBe('ok');
    expect(refused({ archTop: at(15, 41) })).toBe('ok');
    expect(refused({ frontTop: at(14, 17.01) })).toBe('ok');
    expect(refused({ archTop: at(16, 41) })).toBe('ok');
    expect(outlineOf({ ...bar, archLower: at(17, 10) }).ok).toBe(true);
    expect(outlineOf({ ...bar, archLower: at(55, 10) }).ok).toBe(true);
    expect(outlineOf({ ...bar, archTop: at(17, 18) }).ok).toBe(true);
    expect(outlineOf({ ...bar, tail: at(1000, 10) }).ok).toBe(true);
  });
  it('[hand] a tail steeper below than above: the lower edge passes over the upper one just before the tip', () => {
    // Upper half falls 2 over 17, lower half falls 7 over 4: at the tip its slope is the steeper one.
    expect(refused({ archTop: at(47, 22), archLower: at(60, 21.8) })).toBe('upper-edge-under-lower-edge');
  });
  it('[hand] a lower edge that climbs through a front which leans far out', () => {
    expect(refused({ frontTop: at(30, 25), archLower: at(22, 27) })).toBe('upper-edge-under-lower-edge');
    expect(refused({ frontTop: at(30, 25), archLower: at(46, 18) })).toBe('ok');
  });
  it('[property] refused exactly where the span closes somewhere between front and tail', () => {
    const wild = fc
      .tuple(
        real(10, 20),
        real(-8, 12),
        real(4, 10),
        real(22, 50),
        real(22, 50),
        real(10, 34),
        real(6, 30),
        real(2, 30),
      )
      .map(([front, lean, thickness, archTop, archLower, topV, lowerV, tailV]): Brow => ({
        frontLower: at(front, 12),
        frontTop: at(front + lean, 12 + thickness),
        archTop: at(archTop, topV),
        archLower: at(archLower, lowerV),
        tail: at(56, tailV),
      }));
    let open = 0;
    let closed = 0;
    fc.assert(
      fc.property(wild, (brow) => {
        const outline = outlineOf(brow);
        const edgesOf = ({ frontLower, frontTop, archTop, archLower, tail }: Brow) => {
          const half = (end: FacePoint, arch: FacePoint) => ({ end, arch });
          return {
            upper: { front: half(frontTop, archTop), tail: half(tail, archTop) },
            lower: { front: half(frontLower, archLower), tail: half(tail, archLower) },
          };
        };
        if (!outline.ok && outline.reason !== 'upper-edge-under-lower-edge') return true;
        const from = Math.min(brow.frontLower.uMm, brow.frontTop.uMm);
        let least = Number.POSITIVE_INFINITY;
        for (let i = 1; i < 3000; i++) {
          const span = spanAt(edgesOf(brow), from + ((56 - from) * i) / 3000);
          least = Math.min(least, (span?.upperMm ?? NaN) - (span?.lowerMm ?? NaN));
        }
        if (outline.ok) open++;
        else closed++;
        // The grid may step over a touch that is shallower than this.
        if (Math.abs(least) < 1e-3) return true;
        return outline.ok === least > 0;
      }),
      { numRuns: 600, endOnFailure: true },
    );
    expect(Math.min(open, closed)).toBeGreaterThan(40);
  });
  it('[property] never NaN: any five points give an outline with finite numbers, or a reason', () => {
    const point = fc.tuple(fc.double(), fc.double()).map(([u, v]) => at(u, v));
    const near = fc.tuple(real(-20, 80), real(-30, 60)).map(([u, v]) => at(u, v));
    fc.assert(
      fc.property(
        fc
          .constantFrom(point, near)
          .chain((mark) =>
            fc.record({ frontLower: mark, frontTop: mark, archTop: mark, archLower: mark, tail: mark }),
          ),
        (brow) => {
          const outline = outlineOf(brow);
          if (!outline.ok) return true;
          return outlineAreaMm2(outline) > 0 && Number.isFinite(outlinePerimeterMm(outline));
        },
      ),
      { numRuns: 2000, endOnFailure: true },
    );
  });
});
