import { expect, test } from 'vitest';
import {
  fitMidline,
  leastEigenGapShare,
  mismatchMm,
  type MirrorMarks,
} from '#lib/mapping/midline/midline.ts';

const fitted = (marks: readonly MirrorMarks[], weights?: readonly number[]) => {
  const fit = fitMidline(marks, weights);
  if (!fit.ok) throw new Error('these marks fix a midline');
  return fit;
};

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
