import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directionAt } from '#lib/geometry/direction.ts';
import { reflectInLine, type Line } from '#lib/geometry/line.ts';
import type { PointMm } from '#lib/geometry/point.ts';
import {
  fitMidline,
  leastEigenGapShare,
  mismatchMm,
  type MirrorMarks,
} from '#lib/mapping/midline/midline.ts';
import { symmetryAxis, type Pair, type Single } from '#tests/tools/oracles/procrustes.ts';
import { real } from '#tests/tools/real.ts';
import { turnPoint } from '../faces.ts';

const number = real(-60, 60);
const point = fc.record({ xMm: number, yMm: number });
const pair = fc.record({ right: point, left: point });
const single = point.map((p): MirrorMarks => ({ right: p, left: p }));
/** Random face-like lists: three pairs that stand well apart, two single marks. */
const lists = fc.record({
  pairs: fc.array(fc.record({ middle: point, apart: real(30, 90), lift: real(-8, 8) }), {
    minLength: 3,
    maxLength: 3,
  }),
  singles: fc.array(point, { minLength: 2, maxLength: 2 }),
});
const marksOf = ({
  pairs,
  singles,
}: {
  pairs: readonly { middle: PointMm; apart: number; lift: number }[];
  singles: readonly PointMm[];
}): MirrorMarks[] => [
  ...pairs.map(({ middle, apart, lift }) => ({
    right: { xMm: middle.xMm / 10 - apart / 2, yMm: middle.yMm - lift / 2 },
    left: { xMm: middle.xMm / 10 + apart / 2, yMm: middle.yMm + lift / 2 },
  })),
  ...singles.map(({ xMm, yMm }) => ({ right: { xMm: xMm / 10, yMm }, left: { xMm: xMm / 10, yMm } })),
];
const fitted = (marks: readonly MirrorMarks[], weights?: readonly number[]) => {
  const fit = fitMidline(marks, weights);
  if (!fit.ok) throw new Error('these marks fix a midline');
  return fit;
};
const cost = (marks: readonly MirrorMarks[], line: Line) =>
  marks.reduce((sum, { right, left }) => {
    const image = reflectInLine(right, line);
    return sum + (left.xMm - image.xMm) ** 2 + (left.yMm - image.yMm) ** 2;
  }, 0);

test('[hand] one pair alone: the line half way, at right angles', () => {
  const { line, costMm2 } = fitted([{ right: { xMm: -3, yMm: 0 }, left: { xMm: 5, yMm: 6 } }]);
  expect(line.normal.x).toBeCloseTo(0.8, 14);
  expect(line.normal.y).toBeCloseTo(0.6, 14);
  expect(line.offsetMm).toBeCloseTo(0.8 * 1 + 0.6 * 3, 13);
  expect(costMm2).toBeCloseTo(0, 10);
});

test('[hand] single marks alone: the total least squares line', () => {
  // On the line 3x + 4y = 10, and two marks 1 mm off it on either side at the same place.
  const at = (t: number, off: number): MirrorMarks => {
    const p = { xMm: 1.2 - 0.8 * t + 0.6 * off, yMm: 1.6 + 0.6 * t + 0.8 * off };
    return { right: p, left: p };
  };
  const { line, costMm2, eigenGapMm2 } = fitted([at(-30, 0), at(30, 0), at(0, 1), at(0, -1)]);
  expect(line.normal.x).toBeCloseTo(0.6, 13);
  expect(line.normal.y).toBeCloseTo(0.8, 13);
  expect(line.offsetMm).toBeCloseTo(2, 12);
  // |M − mirrored M|² is 4 for each mark that is 1 mm off; the other eigenvalue is 4 (900 + 900).
  expect(costMm2).toBeCloseTo(8, 9);
  expect(eigenGapMm2).toBeCloseTo(7200 - 8, 8);
});

test('[hand] weights: a pair at x̄ = 0 counted three times against a mark at x = 4', () => {
  const marks = [
    { right: { xMm: -20, yMm: 0 }, left: { xMm: 20, yMm: 0 } },
    { right: { xMm: 4, yMm: 0 }, left: { xMm: 4, yMm: 0 } },
  ];
  expect(fitted(marks).line.offsetMm).toBeCloseTo(2, 13);
  const weighted = fitted(marks, [3, 1]);
  expect(weighted.line.offsetMm).toBeCloseTo(1, 13);
  expect(weighted.line.normal.x).toBeCloseTo(1, 14);
  // 3 · 2² + 1 · 6²: a pair whose middle is 1 off misses by 2, the single mark is 3 off and misses by 6.
  expect(weighted.costMm2).toBeCloseTo(48, 9);
  // The spread: means 4(3 · 1 + 9) = 48, pair 3 · 1600; along x 48 − 4800, along y 0.
  expect(weighted.eigenGapMm2).toBeCloseTo(4752, 9);
  expect(weighted.eigenGapShare).toBeCloseTo(4752 / 4848, 12);
  expect(fitted(marks, [1, 0]).line.offsetMm).toBeCloseTo(0, 13);
  expect(fitted(marks, [1]).line.offsetMm).toBeCloseTo(0, 13);
});

test('[hand] mismatch: half of what a pair misses by, the distance of a single mark', () => {
  const line = { normal: { x: 1, y: 0 }, offsetMm: 2 };
  expect(mismatchMm({ right: { xMm: -1, yMm: 5 }, left: { xMm: 11, yMm: 5 } }, line)).toBe(3);
  expect(mismatchMm({ right: { xMm: -4, yMm: 0 }, left: { xMm: 8, yMm: 3 } }, line)).toBe(1.5);
  expect(mismatchMm({ right: { xMm: -1, yMm: 0 }, left: { xMm: 11, yMm: 8 } }, line)).toBe(5);
  expect(mismatchMm({ right: { xMm: 9, yMm: 1 }, left: { xMm: 9, yMm: 1 } }, line)).toBe(7);
  const slanted = { normal: { x: 0.6, y: 0.8 }, offsetMm: 0 };
  // Sum (10, 0) across 6; apart (0, 10): 0.6 · 10 along.
  expect(mismatchMm({ right: { xMm: 5, yMm: -5 }, left: { xMm: 5, yMm: 5 } }, slanted)).toBeCloseTo(
    Math.hypot(6, 6) / 2,
    13,
  );
});

test('[hand] marks that fix no midline are refused with a reason', () => {
  const refused = { ok: false, reason: 'marks-do-not-fix-a-midline' };
  const one = { xMm: 3, yMm: 4 };
  expect(fitMidline([])).toEqual(refused);
  expect(fitMidline([{ right: one, left: one }])).toEqual(refused);
  expect(fitMidline(Array.from({ length: 8 }, () => ({ right: one, left: one })))).toEqual(refused);
  // One pair across and one exactly as wide up and down: two lines at right angles fit equally well.
  expect(
    fitMidline([
      { right: { xMm: -10, yMm: 0 }, left: { xMm: 10, yMm: 0 } },
      { right: { xMm: 0, yMm: -10 }, left: { xMm: 0, yMm: 10 } },
    ]),
  ).toEqual(refused);
  expect(fitMidline([{ right: { xMm: NaN, yMm: 0 }, left: { xMm: 10, yMm: 0 } }])).toEqual(refused);
  expect(fitMidline([{ right: { xMm: -10, yMm: 0 }, left: { xMm: 10, yMm: 0 } }], [0])).toEqual(refused);
});

test('[hand] the refusal starts where the gap falls under its named share', () => {
  // Widths a across and b up: gap |a² − b²| over spread a² + b².
  const cross = (a: number, b: number) =>
    fitMidline([
      { right: { xMm: -a, yMm: 0 }, left: { xMm: a, yMm: 0 } },
      { right: { xMm: 0, yMm: -b }, left: { xMm: 0, yMm: b } },
    ]);
  const share = (a: number, b: number) => (a * a - b * b) / (a * a + b * b);
  expect(share(10, 9.91)).toBeLessThan(leastEigenGapShare);
  expect(cross(10, 9.91).ok).toBe(false);
  expect(share(10, 9.89)).toBeGreaterThan(leastEigenGapShare);
  expect(cross(10, 9.89).ok).toBe(true);
});

test('[hand] marks in one row across: the line stands half way between right and left', () => {
  const row = (right: number, left: number) => ({
    right: { xMm: right, yMm: 0 },
    left: { xMm: left, yMm: 0 },
  });
  const { line } = fitted([row(-30, 32), row(-15, 17), row(1, 1)]);
  expect(line.normal.x).toBeCloseTo(1, 14);
  expect(line.offsetMm).toBeCloseTo(1, 13);
});

test('[hand] the normal points to the left marks even when the picture is upside down', () => {
  expect(fitted([{ right: { xMm: 20, yMm: 1 }, left: { xMm: -20, yMm: 1 } }]).line.normal.x).toBe(-1);
  expect(fitted([{ right: { xMm: -20, yMm: 1 }, left: { xMm: 20, yMm: 1 } }]).line.normal.x).toBe(1);
});

test('[library] same line as reflect, relabel and Procrustes, to 1e-12', () => {
  let worst = 0;
  fc.assert(
    fc.property(lists, (raw) => {
      const marks = marksOf(raw);
      const fit = fitMidline(marks);
      fc.pre(fit.ok && fit.eigenGapShare > 0.1);
      if (!fit.ok) return;
      const pairs = marks
        .slice(0, 3)
        .map(({ right, left }): Pair => [right.xMm, right.yMm, left.xMm, left.yMm]);
      const singles = marks.slice(3).map(({ right }): Single => [right.xMm, right.yMm]);
      const { angle, offset } = symmetryAxis(pairs, singles);
      const other = directionAt(angle);
      const sign = Math.sign(other.x * fit.line.normal.x + other.y * fit.line.normal.y);
      const apart = Math.max(
        Math.abs(sign * other.x - fit.line.normal.x),
        Math.abs(sign * other.y - fit.line.normal.y),
        Math.abs(sign * offset - fit.line.offsetMm) / 100,
      );
      worst = Math.max(worst, apart);
    }),
    { seed: 1, numRuns: 1000 },
  );
  expect(worst).toBeLessThan(1e-12);
});

test('[property] no nearby line mirrors better, and the stated cost is the sum of squares', () => {
  const small = real(-0.2, 0.2);
  fc.assert(
    fc.property(lists, small, small, (raw, turn, shift) => {
      const marks = marksOf(raw);
      const fit = fitMidline(marks);
      fc.pre(fit.ok);
      if (!fit.ok) return;
      const least = cost(marks, fit.line);
      expect(fit.costMm2).toBeCloseTo(least, 6);
      const angle = Math.atan2(fit.line.normal.y, fit.line.normal.x) + turn;
      expect(
        cost(marks, { normal: directionAt(angle), offsetMm: fit.line.offsetMm + shift }),
      ).toBeGreaterThanOrEqual(least - 1e-7);
      const total = marks.reduce((sum, mark) => sum + 4 * mismatchMm(mark, fit.line) ** 2, 0);
      expect(total).toBeCloseTo(least, 6);
    }),
  );
});

test('[property] turning and moving the face turns and moves the line; order does not matter; size scales', () => {
  const angle = real(-180, 180);
  fc.assert(
    fc.property(lists, angle, number, number, real(0.1, 10), (raw, deg, dx, dy, scale) => {
      const marks = marksOf(raw);
      const fit = fitMidline(marks);
      fc.pre(fit.ok && fit.eigenGapShare > 0.1);
      if (!fit.ok) return;
      const after = fitted(
        marks.map(({ right, left }) => ({
          right: turnPoint(right, deg, dx, dy),
          left: turnPoint(left, deg, dx, dy),
        })),
      ).line;
      const n = turnPoint({ xMm: fit.line.normal.x, yMm: fit.line.normal.y }, deg);
      expect(after.normal.x).toBeCloseTo(n.xMm, 10);
      expect(after.normal.y).toBeCloseTo(n.yMm, 10);
      expect(after.offsetMm).toBeCloseTo(fit.line.offsetMm + n.xMm * dx + n.yMm * dy, 8);
      const reversed = fitted([...marks].reverse()).line;
      expect(reversed.normal.x).toBeCloseTo(fit.line.normal.x, 11);
      expect(reversed.offsetMm).toBeCloseTo(fit.line.offsetMm, 9);
      const times = ({ xMm, yMm }: PointMm) => ({ xMm: scale * xMm, yMm: scale * yMm });
      const scaled = fitted(marks.map(({ right, left }) => ({ right: times(right), left: times(left) })));
      expect(scaled.line.normal.x).toBeCloseTo(fit.line.normal.x, 10);
      expect(scaled.line.offsetMm).toBeCloseTo(scale * fit.line.offsetMm, 8);
      expect(scaled.eigenGapShare).toBeCloseTo(fit.eigenGapShare, 9);
    }),
  );
});

test('[property] whatever the marks, an answer has no NaN in it', () => {
  const wild = fc.double({ noDefaultInfinity: false });
  const wildPoint = fc.record({ xMm: wild, yMm: wild });
  fc.assert(
    fc.property(
      fc.array(fc.oneof(pair, single, fc.record({ right: wildPoint, left: wildPoint })), { maxLength: 8 }),
      (marks) => {
        const fit = fitMidline(marks);
        if (!fit.ok) return;
        const numbers = [
          fit.line.normal.x,
          fit.line.normal.y,
          fit.line.offsetMm,
          fit.costMm2,
          fit.eigenGapMm2,
          fit.eigenGapShare,
        ];
        expect(numbers.filter(Number.isNaN)).toEqual([]);
      },
    ),
  );
});
