import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { outlineOf, type NoOutline } from '#lib/mapping/outline/outline.ts';
import { outlineAreaMm2, outlinePerimeterMm } from '#lib/mapping/outline/outlineSize.ts';
import { spanAt } from '#lib/mapping/outline/span.ts';
import { real } from '../../../tools/real.ts';
import { at, bar, example } from './brows.ts';

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
