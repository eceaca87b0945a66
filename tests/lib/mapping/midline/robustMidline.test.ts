import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitMidline, type MirrorMarks } from '#lib/mapping/midline/midline.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import {
  biweight,
  fitRobustMidline,
  medianToSpread,
  spreadFloorMm,
  trustedFromWeight,
  tukeyConstant,
} from '#lib/mapping/midline/robustMidline.ts';
import { rollDeg } from '#lib/mapping/marks/roll.ts';
import { movePoints, noisy, noseOff, plainFace, symmetricFace, turnPoint, turned } from '../faces.ts';
import type { Line } from '#lib/geometry/line.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { real } from '#tests/tools/real.ts';

const plain = (marks: readonly MirrorMarks[]) => {
  const fit = fitMidline(marks);
  if (!fit.ok) throw new Error('a face fixes a midline');
  return fit.line;
};
const robust = (marks: readonly MirrorMarks[], floorMm?: number) => {
  const fit = fitRobustMidline(marks, floorMm);
  if (!fit.ok) throw new Error('a face fixes a midline');
  return fit;
};
/** Where a line passes a height, mm to the client's left of x = 0. */
const atHeight = ({ normal, offsetMm }: Line, yMm: number) => (offsetMm - normal.y * yMm) / normal.x;
const browHeight = 25;

test('[hand] biweight: full at 0, (3/4)² half way, nothing from the cut-off on', () => {
  expect(biweight(0, 2)).toBe(1);
  expect(biweight(1, 2)).toBe(0.5625);
  expect(biweight(-1, 2)).toBe(0.5625);
  expect(biweight(2, 2)).toBe(0);
  expect(biweight(5, 2)).toBe(0);
});

test('[hand] a face without a flaw: every weight 1, the floor sets the cut-off', () => {
  const fit = robust(mirrorMarksOf(plainFace));
  expect(fit.weights).toEqual(Array(8).fill(1));
  expect(fit.residualsMm.every((r) => r < 1e-12)).toBe(true);
  expect(fit.cutOffMm).toBeCloseTo(4.685 * 0.3, 12);
  expect(fit.cutOffMm).toBeCloseTo(tukeyConstant * spreadFloorMm, 12);
  expect(fit.eigenGapShare).toBeGreaterThan(0.5);
  expect(robust(mirrorMarksOf(plainFace), 2).cutOffMm).toBeCloseTo(9.37, 12);
});

test('[hand] the spread is 1.4826 times the median mismatch', () => {
  // Apart (60, 4) and (40, −6): 60 · 4 = 40 · 6, so the line is upright; the pairs miss by half their lift, 2
  // and 3 mm.
  const marks = [
    { right: { xMm: -30, yMm: -2 }, left: { xMm: 30, yMm: 2 } },
    { right: { xMm: -20, yMm: 3 }, left: { xMm: 20, yMm: -3 } },
  ];
  expect(medianToSpread).toBe(1.4826);
  expect(robust(marks).cutOffMm).toBeCloseTo(4.685 * 1.4826 * 2.5, 9);
});

test('[hand] nose base 6 mm off: plain line pulled aside at the brows, robust line not', () => {
  const marks = mirrorMarksOf(noseOff(plainFace, 6));
  expect(atHeight(plain(marks), browHeight)).toBeGreaterThan(0.3);
  expect(Math.abs(rollDeg(plain(marks)))).toBeGreaterThan(0.8);
  const fit = robust(marks);
  expect(Math.abs(atHeight(fit.line, browHeight))).toBeLessThan(0.01);
  expect(Math.abs(rollDeg(fit.line))).toBeLessThan(0.01);
  expect(fit.weights[3]).toBe(0);
  expect(fit.weights[6]).toBe(0);
  expect(fit.residualsMm[3]).toBeCloseTo(6, 9);
  expect(fit.residualsMm[6]).toBeCloseTo(6, 9);
});

test('[property] a lean of any size moves the robust line by less than 0.13 mm and 0.21° on a face read without error', () => {
  let worstMm = 0;
  let worstDeg = 0;
  for (let lean = 0; lean <= 12; lean += 0.05) {
    const { line } = robust(mirrorMarksOf(noseOff(plainFace, lean)));
    worstMm = Math.max(worstMm, Math.abs(atHeight(line, browHeight)));
    worstDeg = Math.max(worstDeg, Math.abs(rollDeg(line)));
  }
  expect(worstMm).toBeLessThan(0.13);
  expect(worstDeg).toBeLessThan(0.21);
});

test('[property] three of eight marks that move together are left out together', () => {
  for (const groups of [
    ['noseWing', 'subnasale', 'chin'],
    ['nasion', 'noseWing', 'subnasale'],
    ['glabella', 'nasion', 'chin'],
  ]) {
    for (const off of [-8, 4, 6, 15]) {
      const set = movePoints(plainFace, (p, name) =>
        groups.includes(name) ? { ...p, xMm: p.xMm + off } : p,
      );
      const { line, weights } = robust(mirrorMarksOf(set));
      expect(Math.abs(atHeight(line, browHeight))).toBeLessThan(1e-9);
      expect(weights.filter((w) => w < trustedFromWeight)).toHaveLength(3);
    }
  }
});

test('[property] one pupil read 5 mm too high is left out, not averaged in', () => {
  const set = movePoints(plainFace, (p, name, side) =>
    name === 'pupil' && side === 'left' ? { ...p, yMm: p.yMm + 5 } : p,
  );
  const { line, weights } = robust(mirrorMarksOf(set));
  expect(Math.abs(rollDeg(line))).toBeLessThan(1e-9);
  expect(weights[2]).toBe(0);
});

test('[property] at the answer the weights are those of the answer: fitting again with them changes nothing', () => {
  for (let seed = 0; seed < 200; seed++) {
    const marks = mirrorMarksOf(noisy(noseOff(symmetricFace(seed), (seed % 13) - 6), 0.4, drawFrom(seed)));
    const { line, weights } = robust(marks);
    const again = fitMidline(marks, weights);
    if (!again.ok) throw new Error('a face fixes a midline');
    expect(Math.abs(again.line.offsetMm - line.offsetMm)).toBeLessThan(1e-9);
    expect(Math.abs(again.line.normal.y - line.normal.y)).toBeLessThan(1e-11);
  }
});

test('[property] turning the picture turns the line; right and left exchanged mirror it; order of marks does not matter', () => {
  fc.assert(
    fc.property(fc.nat(5000), real(-40, 40), real(-8, 8), (seed, deg, lean) => {
      const set = noisy(noseOff(symmetricFace(seed), lean), 0.3, drawFrom(seed));
      const marks = mirrorMarksOf(set);
      const before = robust(marks);
      const after = robust(mirrorMarksOf(turned(set, deg, 7, -3)));
      expect(rollDeg(after.line)).toBeCloseTo(rollDeg(before.line) + deg, 7);
      before.weights.forEach((w, i) => expect(after.weights[i]).toBeCloseTo(w, 7));
      const mirror = ({ xMm, yMm }: { xMm: number; yMm: number }) => ({ xMm: -xMm, yMm });
      const mirrored = robust(marks.map(({ right, left }) => ({ right: mirror(left), left: mirror(right) })));
      expect(rollDeg(mirrored.line)).toBeCloseTo(-rollDeg(before.line), 7);
      expect(mirrored.line.offsetMm).toBeCloseTo(-before.line.offsetMm, 7);
      const reversed = robust([...marks].reverse());
      expect(reversed.line.offsetMm).toBeCloseTo(before.line.offsetMm, 7);
      expect(reversed.weights[0]).toBeCloseTo(before.weights[7] ?? -1, 7);
    }),
    { seed: 3, numRuns: 200 },
  );
});

test('[property] the whole thing scales when the floor scales with it', () => {
  const set = noisy(noseOff(symmetricFace(5), 3), 0.4, drawFrom(5));
  const one = robust(mirrorMarksOf(set));
  const ten = robust(
    mirrorMarksOf(movePoints(set, ({ xMm, yMm }) => ({ xMm: 10 * xMm, yMm: 10 * yMm }))),
    10 * spreadFloorMm,
  );
  expect(ten.line.offsetMm).toBeCloseTo(10 * one.line.offsetMm, 9);
  expect(ten.cutOffMm).toBeCloseTo(10 * one.cutOffMm, 9);
  one.weights.forEach((w, i) => expect(ten.weights[i]).toBeCloseTo(w, 9));
});

test('[hand] few or useless marks are refused; two pairs are enough', () => {
  const refused = { ok: false, reason: 'marks-do-not-fix-a-midline' };
  const p = { xMm: 1, yMm: 1 };
  expect(fitRobustMidline([])).toEqual(refused);
  expect(fitRobustMidline(Array.from({ length: 8 }, () => ({ right: p, left: p })))).toEqual(refused);
  const two = robust([
    { right: turnPoint({ xMm: -20, yMm: 0 }, 10), left: turnPoint({ xMm: 20, yMm: 0 }, 10) },
    { right: turnPoint({ xMm: -30, yMm: 9 }, 10), left: turnPoint({ xMm: 30, yMm: 9 }, 10) },
  ]);
  expect(rollDeg(two.line)).toBeCloseTo(10, 10);
});
