import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongMm, angleDeg, directionAt, quarterTurn } from '#lib/geometry/direction.ts';
import { distanceMm, midpoint } from '#lib/geometry/distance.ts';
import { eigen2 } from '#lib/geometry/eigen2.ts';
import { footOnLine, reflectInLine, signedDistanceMm } from '#lib/geometry/line.ts';
import { fitSimilarity } from '#lib/geometry/similarity.ts';
import { real } from '#tests/tools/real.ts';

const number = real(-100, 100);
const point = fc.record({ xMm: number, yMm: number });
const angle = real(-Math.PI, Math.PI);

test('[hand] directions: 30°, quarter turn, along', () => {
  const d = directionAt(Math.PI / 6);
  expect(d.x).toBeCloseTo(Math.sqrt(3) / 2, 14);
  expect(d.y).toBeCloseTo(0.5, 14);
  expect(quarterTurn({ x: 0.6, y: 0.8 })).toEqual({ x: -0.8, y: 0.6 });
  expect(alongMm({ xMm: 10, yMm: 5 }, { x: 0.6, y: 0.8 })).toBeCloseTo(10, 14);
  expect(angleDeg({ x: 0, y: 1 })).toBe(90);
  expect(angleDeg(directionAt(-0.2))).toBeCloseTo((-0.2 * 180) / Math.PI, 12);
});

test('[hand] distance 3-4-5 and middle', () => {
  expect(distanceMm({ xMm: 1, yMm: 2 }, { xMm: 4, yMm: -2 })).toBe(5);
  expect(midpoint({ xMm: 1, yMm: 2 }, { xMm: 4, yMm: -2 })).toEqual({ xMm: 2.5, yMm: 0 });
});

test('[hand] reflection in 0.6x + 0.8y = 5', () => {
  const line = { normal: { x: 0.6, y: 0.8 }, offsetMm: 5 };
  expect(signedDistanceMm({ xMm: 10, yMm: 5 }, line)).toBeCloseTo(5, 13);
  expect(signedDistanceMm({ xMm: 0, yMm: 0 }, line)).toBe(-5);
  const mirrored = reflectInLine({ xMm: 10, yMm: 5 }, line);
  expect(mirrored.xMm).toBeCloseTo(4, 13);
  expect(mirrored.yMm).toBeCloseTo(-3, 13);
  const foot = footOnLine({ xMm: 10, yMm: 5 }, line);
  expect(foot.xMm).toBeCloseTo(7, 13);
  expect(foot.yMm).toBeCloseTo(1, 13);
});

test('[property] a reflection undoes itself, keeps distances, and the foot is half way', () => {
  fc.assert(
    fc.property(point, point, angle, number, (p, q, a, offsetMm) => {
      const line = { normal: directionAt(a), offsetMm };
      const back = reflectInLine(reflectInLine(p, line), line);
      expect(distanceMm(back, p)).toBeLessThan(1e-10);
      expect(distanceMm(reflectInLine(p, line), reflectInLine(q, line))).toBeCloseTo(distanceMm(p, q), 9);
      expect(distanceMm(footOnLine(p, line), midpoint(p, reflectInLine(p, line)))).toBeLessThan(1e-10);
    }),
  );
});

test('[hand] eigenvalues of [[2, 1], [1, 2]] are 1 and 3, along the diagonals', () => {
  const { least, most, leastDirection, mostDirection } = eigen2({ xx: 2, xy: 1, yy: 2 });
  expect([least, most]).toEqual([1, 3]);
  expect(Math.abs(mostDirection.x - mostDirection.y)).toBeLessThan(1e-15);
  expect(Math.abs(leastDirection.x + leastDirection.y)).toBeLessThan(1e-15);
  expect(eigen2({ xx: 4, xy: 0, yy: 4 })).toEqual({
    least: 4,
    most: 4,
    leastDirection: { x: -0, y: 1 },
    mostDirection: { x: 1, y: 0 },
  });
});

test('[property] M v = λ v, directions at right angles and of length 1, trace and determinant kept', () => {
  fc.assert(
    fc.property(number, number, number, (xx, xy, yy) => {
      const { least, most, leastDirection: l, mostDirection: m } = eigen2({ xx, xy, yy });
      for (const [value, v] of [
        [least, l],
        [most, m],
      ] as const) {
        expect(Math.abs(xx * v.x + xy * v.y - value * v.x)).toBeLessThan(1e-11);
        expect(Math.abs(xy * v.x + yy * v.y - value * v.y)).toBeLessThan(1e-11);
        expect(Math.hypot(v.x, v.y)).toBeCloseTo(1, 13);
      }
      expect(Math.abs(l.x * m.x + l.y * m.y)).toBeLessThan(1e-14);
      expect(least).toBeLessThanOrEqual(most);
      expect(least + most).toBeCloseTo(xx + yy, 10);
      expect(least * most).toBeCloseTo(xx * yy - xy * xy, 7);
    }),
  );
});

test('[hand] a similarity by hand: quarter turn, twice the size, middle moved by (5, 1)', () => {
  const from = [
    { xMm: 0, yMm: 0 },
    { xMm: 2, yMm: 0 },
    { xMm: 1, yMm: 3 },
  ];
  // Middle (1, 1). Each centred point (x, y) goes to (−2y, 2x), then to (6, 2).
  const to = [
    { xMm: 8, yMm: 0 },
    { xMm: 8, yMm: 4 },
    { xMm: 2, yMm: 2 },
  ];
  const fit = fitSimilarity(from, to);
  expect(fit.ok).toBe(true);
  if (!fit.ok) return;
  expect(fit.turnDeg).toBeCloseTo(90, 12);
  expect(fit.scale).toBeCloseTo(2, 12);
  expect(fit.shift.xMm).toBeCloseTo(5, 12);
  expect(fit.shift.yMm).toBeCloseTo(1, 12);
  expect(fit.residualMm).toBeLessThan(1e-12);
});

test('[hand] what no similarity explains is left over: a square pulled to a rectangle', () => {
  const square = [
    { xMm: 1, yMm: 1 },
    { xMm: -1, yMm: 1 },
    { xMm: -1, yMm: -1 },
    { xMm: 1, yMm: -1 },
  ];
  const wide = square.map(({ xMm, yMm }) => ({ xMm: 2 * xMm, yMm }));
  const fit = fitSimilarity(square, wide);
  if (!fit.ok) throw new Error('a square fixes a similarity');
  // Best size 1.5; each corner is left 0.5 out in x and −0.5 in y.
  expect(fit.scale).toBeCloseTo(1.5, 13);
  expect(fit.turnDeg).toBeCloseTo(0, 13);
  expect(fit.residuals[0]).toEqual({ xMm: 0.5, yMm: -0.5 });
  expect(fit.residuals[1]).toEqual({ xMm: -0.5, yMm: -0.5 });
  expect(fit.residualMm).toBeCloseTo(Math.SQRT1_2, 13);
});

test('[hand] a similarity needs two different points and lists of one length', () => {
  const refused = { ok: false, reason: 'points-do-not-fix-a-similarity' };
  expect(fitSimilarity([], [])).toEqual(refused);
  expect(
    fitSimilarity(
      [
        { xMm: 3, yMm: 3 },
        { xMm: 3, yMm: 3 },
      ],
      [
        { xMm: 0, yMm: 0 },
        { xMm: 1, yMm: 0 },
      ],
    ),
  ).toEqual(refused);
  expect(
    fitSimilarity(
      [
        { xMm: 3, yMm: 3 },
        { xMm: 4, yMm: 3 },
      ],
      [{ xMm: 0, yMm: 0 }],
    ),
  ).toEqual(refused);
});

test('[property] no other similarity near the fit leaves less', () => {
  const list = fc.array(point, { minLength: 5, maxLength: 5 });
  const small = real(-0.1, 0.1);
  fc.assert(
    fc.property(list, list, small, small, (from, to, da, db) => {
      const fit = fitSimilarity(from, to);
      fc.pre(fit.ok);
      if (!fit.ok) return;
      const [a, b] = [
        fit.scale * Math.cos((fit.turnDeg * Math.PI) / 180) + da,
        fit.scale * Math.sin((fit.turnDeg * Math.PI) / 180) + db,
      ];
      const mean = (points: readonly { xMm: number; yMm: number }[], key: 'xMm' | 'yMm') =>
        points.reduce((s, p) => s + p[key], 0) / points.length;
      const [fx, fy, tx, ty] = [mean(from, 'xMm'), mean(from, 'yMm'), mean(to, 'xMm'), mean(to, 'yMm')];
      const other = from.reduce((sum, f, i) => {
        const t = to[i] ?? f;
        const [x, y] = [f.xMm - fx, f.yMm - fy];
        return sum + (t.xMm - tx - a * x + b * y) ** 2 + (t.yMm - ty - b * x - a * y) ** 2;
      }, 0);
      expect(Math.sqrt(other / from.length)).toBeGreaterThanOrEqual(fit.residualMm - 1e-9);
    }),
  );
});
