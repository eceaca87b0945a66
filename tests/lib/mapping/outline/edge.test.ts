import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeAt, edgeHeightMm, edgeShares, type Edge } from '#lib/mapping/outline/edge.ts';
import { halfEdgeCurve, type Cubic, type HalfEdge } from '#lib/mapping/outline/halfEdge.ts';
import { real } from '../../../tools/real.ts';
import { brows, example, outlined } from './brows.ts';

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
