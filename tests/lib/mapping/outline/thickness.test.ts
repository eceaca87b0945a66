import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { toFace, toPicture } from '#lib/mapping/marks/faceFrame.ts';
import { acrossAt } from '#lib/mapping/outline/acrossAt.ts';
import { centreAt } from '#lib/mapping/outline/centreline.ts';
import { edgeHeightMm } from '#lib/mapping/outline/edge.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { outlineCurves } from '#lib/mapping/outline/outlineCurves.ts';
import { outlineAreaMm2 } from '#lib/mapping/outline/outlineSize.ts';
import { stationMm, thicknessAtStation } from '#lib/mapping/outline/station.ts';
import { thicknessAt, type Thickness } from '#lib/mapping/outline/thickness.ts';
import { real } from '../../../tools/real.ts';
import { at, bar, brows, example, outlined } from './brows.ts';

function thick(brow: Brow, uMm: number): Thickness {
  const thickness = thicknessAt(outlined(brow), uMm);
  if (!thickness.ok) throw new Error(thickness.reason);
  return thickness;
}

describe('the centreline', () => {
  it('[hand] half way between the edges, with the mean of their slopes', () => {
    // Upper edge at 30.5: 30.5, slope 12/33·¾. Lower edge: t = 15.5/31 = ½, 27 − 10·0.3125 = 23.875, slope
    // 15/31·¾.
    const centre = centreAt(outlined(example), 30.5);
    expect(centre?.point.vMm).toBeCloseTo((30.5 + 23.875) / 2, 12);
    expect(centre?.slope).toBeCloseTo(0.375 * (12 / 33 + 15 / 31), 12);
  });
  it('[hand] begins where both edges have begun and ends at the tip', () => {
    expect(centreAt(outlined(example), 14.9)).toBeUndefined();
    expect(centreAt(outlined(example), 15)).toBeDefined();
    expect(centreAt(outlined(example), 64)?.point).toEqual(at(64, 20));
    expect(centreAt(outlined(example), 64.1)).toBeUndefined();
  });
});

describe('thickness along the normal', () => {
  it('[hand] on a level brow it is the thickness straight up', () => {
    expect(thick(bar, 30)).toMatchObject({
      thicknessMm: 8,
      straightUpMm: 8,
      centre: at(30, 14),
      slope: 0,
      upper: at(30, 18),
      lower: at(30, 10),
    });
    expect(thick(bar, 30).normal.u).toBeCloseTo(0, 12);
    expect(thick(bar, 30).normal.v).toBe(1);
  });
  it('[hand] on a long slope of 3 in 4 near the front it is 0.8 of the thickness straight up', () => {
    // 400 mm of edge rising 200: 1.5 · 200/400 = ¾ at the front, and still nearly ¾ 25 mm on.
    const slope: Brow = {
      frontLower: at(0, 0),
      frontTop: at(0, 10),
      archTop: at(400, 210),
      archLower: at(400, 200),
      tail: at(420, 150),
    };
    const { thicknessMm, straightUpMm, normal } = thick(slope, 20);
    expect(straightUpMm).toBeCloseTo(10, 9);
    expect(thicknessMm).toBeCloseTo(8, 1);
    expect(normal.u).toBeCloseTo(-0.6, 2);
    expect(normal.v).toBeCloseTo(0.8, 2);
  });
  it('[property] both hits lie on their edges and on the normal, one above and one below the centre', () => {
    fc.assert(
      fc.property(brows, real(0.15, 0.98), (brow, share) => {
        const outline = outlined(brow);
        const thickness = thicknessAt(outline, stationMm(brow, 'frontLower', share));
        if (!thickness.ok) return share < 0.25;
        const { upper, lower, centre, normal, thicknessMm, slope } = thickness;
        expect(edgeHeightMm(outline.upper, upper.uMm)).toBeCloseTo(upper.vMm, 12);
        expect(edgeHeightMm(outline.lower, lower.uMm)).toBeCloseTo(lower.vMm, 12);
        const alongMm = (hit: { uMm: number; vMm: number }) =>
          (hit.uMm - centre.uMm) * normal.u + (hit.vMm - centre.vMm) * normal.v;
        const acrossMm = (hit: { uMm: number; vMm: number }) =>
          (hit.uMm - centre.uMm) * normal.v - (hit.vMm - centre.vMm) * normal.u;
        expect(acrossMm(upper)).toBeCloseTo(0, 9);
        expect(acrossMm(lower)).toBeCloseTo(0, 9);
        expect(alongMm(upper)).toBeGreaterThan(0);
        expect(alongMm(lower)).toBeLessThan(0);
        expect(alongMm(upper) - alongMm(lower)).toBeCloseTo(thicknessMm, 9);
        expect(Math.hypot(normal.u, normal.v)).toBeCloseTo(1, 12);
        expect(normal.u + slope * normal.v).toBeCloseTo(0, 12);
        return true;
      }),
      { endOnFailure: true },
    );
  });
  it('[library] the hits are those of bezier-js with a long line along the normal', () => {
    fc.assert(
      fc.property(brows, real(0.2, 0.95), (brow, share) => {
        const outline = outlined(brow);
        const thickness = thicknessAt(outline, stationMm(brow, 'frontLower', share));
        if (!thickness.ok) return true;
        const { centre, normal, upper, lower } = thickness;
        const end = (mm: number) => ({ x: centre.uMm + mm * normal.u, y: centre.vMm + mm * normal.v });
        const hits = outlineCurves(outline).flatMap((points) => {
          const curve = new Bezier(...points.flatMap(({ uMm, vMm }) => [uMm, vMm]));
          return curve.intersects({ p1: end(-60), p2: end(60) }).map((t) => curve.get(t));
        });
        const nearest = (hit: { uMm: number; vMm: number }) =>
          Math.min(...hits.map(({ x, y }) => Math.hypot(x - hit.uMm, y - hit.vMm)));
        expect(nearest(upper)).toBeLessThan(1e-6);
        expect(nearest(lower)).toBeLessThan(1e-6);
        return true;
      }),
      { endOnFailure: true },
    );
  });
  it.each([
    // Outward: the normal leaves the lower edge near the arch and meets it again where it falls steeply to a
    // low tail.
    [
      'outward',
      {
        frontLower: at(0, 0),
        frontTop: at(0, 8),
        archTop: at(11, 15),
        archLower: at(10, 6),
        tail: at(18, -20),
      },
      8,
    ],
    // Inward: the same towards a front that stands far below.
    [
      'inward',
      {
        frontLower: at(0, -20),
        frontTop: at(0, -10),
        archTop: at(7, 15),
        archLower: at(8, 9),
        tail: at(18, -6),
      },
      10,
    ],
  ] as const)(
    '[library] %s an edge that the normal meets twice is met first where bezier-js meets it nearest',
    (_, brow, uMm) => {
      const { centre, normal, lower } = thick(brow, uMm);
      const line = {
        p1: { x: centre.uMm, y: centre.vMm },
        p2: { x: centre.uMm - 60 * normal.u, y: centre.vMm - 60 * normal.v },
      };
      const far = outlineCurves(outlined(brow))
        .slice(0, 2)
        .flatMap((points) => {
          const curve = new Bezier(...points.flatMap((point) => [point.uMm, point.vMm]));
          return curve
            .intersects(line)
            .map((t) => Math.hypot(curve.get(t).x - centre.uMm, curve.get(t).y - centre.vMm));
        });
      expect(far).toHaveLength(2);
      expect(Math.hypot(lower.uMm - centre.uMm, lower.vMm - centre.vMm)).toBeCloseTo(Math.min(...far), 6);
    },
  );
  it('[property] mirrored brows give equal numbers: marks to the picture, over the midline, and back', () => {
    const frame = {
      midline: { normal: { x: 1, y: 0 }, offsetMm: 0 },
      level: { x: 1, y: 0 },
      pupilLevelMm: 0,
    };
    fc.assert(
      fc.property(brows, real(0.2, 0.9), (brow, share) => {
        const other = (point: Brow['tail']) => {
          const { xMm, yMm } = toPicture(point, 'left', frame);
          return toFace({ xMm: -xMm, yMm }, 'right', frame);
        };
        const right: Brow = {
          frontLower: other(brow.frontLower),
          frontTop: other(brow.frontTop),
          archTop: other(brow.archTop),
          archLower: other(brow.archLower),
          tail: other(brow.tail),
        };
        expect(thicknessAtStation(outlineOf(right), 'frontLower', share)).toEqual(
          thicknessAtStation(outlineOf(brow), 'frontLower', share),
        );
        expect(outlineAreaMm2(outlined(right))).toBe(outlineAreaMm2(outlined(brow)));
      }),
      { endOnFailure: true },
    );
  });
  it('[hand] refused beyond the edges, and where the straight front cuts the normal', () => {
    const outline = outlined(example);
    expect(thicknessAt(outline, 14.5)).toEqual({ ok: false, reason: 'off-the-outline' });
    expect(thicknessAt(outline, 64.5)).toEqual({ ok: false, reason: 'off-the-outline' });
    expect(thicknessAt(outline, Number.NaN)).toEqual({ ok: false, reason: 'off-the-outline' });
    // At 15 the normal leans in over the upper front mark, which stands 1 mm nearer the midline and 4 mm up:
    // slope 0.42.
    expect(thicknessAt(outline, 15)).toEqual({ ok: false, reason: 'too-near-the-front' });
    expect(thicknessAt(outline, 17).ok).toBe(true);
  });
  it('[hand] a line through a place where only one edge stands meets nothing there, whichever way it leans', () => {
    for (const slope of [-0.4, 0, 0.4]) {
      expect(acrossAt(outlined(example), at(14.5, 20), slope)).toBeUndefined();
      expect(acrossAt(outlined(example), at(66, 20), slope)).toBeUndefined();
    }
  });
  it('[hand] at the tip the thickness is 0', () => {
    expect(thick(example, 64).thicknessMm).toBe(0);
  });
});

describe('stations', () => {
  it('[hand] a quarter, a half of the length, from the lower or the upper front mark', () => {
    expect(stationMm(example, 'frontLower', 0.25)).toBe(27.25);
    expect(stationMm(example, 'frontTop', 0.5)).toBe(39);
    expect(stationMm(example, 'frontTop', 0)).toBe(14);
    expect(stationMm(example, 'frontTop', 1)).toBe(64);
  });
  it('[hand] thickness at a station is thickness there; no outline says why', () => {
    const outline = outlined(example);
    expect(thicknessAtStation(outline, 'frontTop', 0.5)).toEqual(thicknessAt(outline, 39));
    expect(thicknessAtStation({ ok: false, reason: 'tail-inside-front' }, 'frontTop', 0.5)).toEqual({
      ok: false,
      reason: 'tail-inside-front',
    });
  });
});
