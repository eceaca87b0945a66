import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directionAt } from '#lib/geometry/direction.ts';
import { reflectInLine, type Line } from '#lib/geometry/line.ts';
import type { PointMm } from '#lib/geometry/point.ts';
import { fitMidline, mismatchMm, type MirrorMarks } from '#lib/mapping/midline/midline.ts';
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
