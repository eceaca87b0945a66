import { expect, test } from 'vitest';
import { faceFrame } from '#lib/mapping/marks/faceFrame.ts';
import { levelReferences, type LevelReference } from '#lib/mapping/marks/levelReference.ts';
import {
  addRow,
  browPlace,
  emptyRow,
  facePlace,
  pairPlace,
  rowUncertainty,
} from '#lib/mapping/uncertainty/markRow.ts';
import { browMarks, type MarkSet } from '#lib/mapping/marks/markSet.ts';
import { midlineInfluence } from '#lib/mapping/uncertainty/midlineInfluence.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import { browHeightMm, midlineAtBrowsMm, propagate } from '#lib/mapping/uncertainty/propagate.ts';
import { disagreementMm } from '#lib/mapping/midline/disagreement.ts';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import { readFace } from '#lib/mapping/compare/readFace.ts';
import { compareSides } from '#lib/mapping/compare/sides.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { choices, movePoints, noisy, noseOff, plainFace, symmetricFace, turned } from '../faces.ts';

const unit = { readingMm: 1, midlineMm: 1 };
const fitted = (set: MarkSet) => {
  const fit = fitRobustMidline(mirrorMarksOf(set));
  if (!fit.ok) throw new Error(fit.reason);
  return fit;
};
const rowsOf = (set: MarkSet, reference: LevelReference) => {
  const fit = fitted(set);
  const rows = propagate(set, faceFrame(set, fit.line, reference), fit.cutOffMm, reference, unit);
  if (!rows.ok) throw new Error(rows.reason);
  return rows;
};

test('[hand] places in a row: pairs two by two, singles, brows two by two', () => {
  expect([facePlace(0, 'right'), facePlace(0, 'left'), facePlace(3, 'left')]).toEqual([0, 1, 7]);
  expect([facePlace(4, 'right'), facePlace(4, 'left'), facePlace(7, 'left')]).toEqual([8, 8, 11]);
  expect([pairPlace('innerCorner', 'left'), pairPlace('noseWing', 'right')]).toEqual([1, 6]);
  expect([
    browPlace('frontLower', 'right'),
    browPlace('frontLower', 'left'),
    browPlace('tail', 'left'),
  ]).toEqual([12, 13, 21]);
  expect(emptyRow()).toEqual(Array(44).fill(0));
});

test('[hand] rows add, and their uncertainty is the root sum of squares', () => {
  const row = emptyRow();
  row[2] = 3;
  const other = emptyRow();
  other[2] = 1;
  other[43] = 2;
  addRow(row, other, 2);
  expect([row[2], row[43]]).toEqual([5, 4]);
  expect(rowUncertainty(row)).toBeCloseTo(Math.sqrt(41), 14);
});

test('[hand] one pair and one single mark, upright: slopes by hand', () => {
  // Pair at x = ±20, y = 0 and a mark at (0, 50). Middle of the marks (0, 25). a = 2(x̄ − c) for both.
  const mark = { xMm: 0, yMm: 50 };
  const marks = [
    { right: { xMm: -20, yMm: 0 }, left: { xMm: 20, yMm: 0 } },
    { right: mark, left: mark },
  ];
  const influence = midlineInfluence(marks, { normal: { x: 1, y: 0 }, offsetMm: 0 }, 1000, 'fixed');
  if (!influence.ok) throw new Error(influence.reason);
  expect(influence.pivot).toEqual({ xMm: 0, yMm: 25 });
  // Angle: H = 50² + 50² + 40² = 6600; the single mark adds 2 · 50 a mm across, the pair's left end −(−50)
  // and its height 40.
  expect((influence.angle[1]?.right.x ?? 0) + (influence.angle[1]?.left.x ?? 0)).toBeCloseTo(-100 / 6600, 12);
  expect(influence.angle[0]?.left.x).toBeCloseTo(50 / 6600, 12);
  expect(influence.angle[0]?.left.y).toBeCloseTo(40 / 6600, 12);
  expect(influence.angle[0]?.right.y).toBeCloseTo(-40 / 6600, 12);
  // Offset: each of the four ends carries a quarter.
  expect(influence.offset[0]?.left.x).toBeCloseTo(0.25, 12);
  expect(influence.offset[1]?.right.x).toBeCloseTo(0.25, 12);
  expect(influence.offset[0]?.left.y).toBeCloseTo(0, 12);
});

test('[hand] marks without a sharp line have no influence', () => {
  const p = { xMm: 3, yMm: 3 };
  const line = { normal: { x: 1, y: 0 }, offsetMm: 3 };
  expect(midlineInfluence([{ right: p, left: p }], line, 1)).toEqual({
    ok: false,
    reason: 'marks-do-not-fix-a-midline',
  });
  expect(midlineInfluence([], line, 1)).toEqual({ ok: false, reason: 'marks-do-not-fix-a-midline' });
});

test('[library] slopes agree with central differences through the whole robust fit, to 1e-7', () => {
  const uneven = noisy(symmetricFace(3), 0.15, drawFrom(3));
  const step = 1e-5;
  for (const reference of levelReferences) {
    for (const leanMm of [0, 0.8, 6]) {
      const set = turned(noseOff(uneven, leanMm), 4, 30, -20);
      const rows = rowsOf(set, reference);
      const heightMm = browHeightMm(set);
      const numbers = (moved: MarkSet) => {
        const { line } = fitted(moved);
        const sides = compareSides(moved, faceFrame(moved, line, reference));
        return [
          Math.atan2(line.normal.y, line.normal.x),
          (line.offsetMm - line.normal.y * heightMm) / line.normal.x,
          ...browMarks.flatMap((mark) => [
            sides[mark].right.uMm,
            sides[mark].left.uMm,
            sides[mark].right.vMm,
            sides[mark].left.vMm,
          ]),
        ];
      };
      const slopes = [
        rows.angle,
        rows.midlineAtBrows,
        ...browMarks.flatMap((mark) => [
          rows.brows[mark].right.u,
          rows.brows[mark].left.u,
          rows.brows[mark].right.v,
          rows.brows[mark].left.v,
        ]),
      ];
      let worst = 0;
      for (let i = 0; i < 44; i++) {
        const nudge = (by: number) => {
          let at = -1;
          return movePoints(set, (p) => {
            at += 1;
            if (at !== i >> 1) return p;
            return i % 2 === 0 ? { ...p, xMm: p.xMm + by } : { ...p, yMm: p.yMm + by };
          });
        };
        const [up, down] = [numbers(nudge(step)), numbers(nudge(-step))];
        slopes.forEach((row, n) => {
          worst = Math.max(
            worst,
            Math.abs(((up[n] ?? NaN) - (down[n] ?? NaN)) / (2 * step) - (row[i] ?? NaN)),
          );
        });
      }
      expect(worst).toBeLessThan(1e-7);
    }
  }
});

test('[library] weights held still: the slopes of the plain fit are those of central differences', () => {
  const set = turned(noisy(noseOff(symmetricFace(9), 3), 0.3, drawFrom(9)), 5, 10, 10);
  const marks = mirrorMarksOf(set);
  const plain = fitMidline(marks);
  if (!plain.ok) throw new Error(plain.reason);
  const influence = midlineInfluence(marks, plain.line, 1e9, 'fixed');
  if (!influence.ok) throw new Error(influence.reason);
  const step = 1e-5;
  marks.forEach((mark, i) => {
    for (const side of ['right', 'left'] as const) {
      const angleAt = (by: number) => {
        const moved = marks.map((m, j) =>
          j === i ? { ...mark, [side]: { ...mark[side], yMm: mark[side].yMm + by } } : m,
        );
        const fit = fitMidline(moved);
        return fit.ok ? Math.atan2(fit.line.normal.y, fit.line.normal.x) : NaN;
      };
      expect(influence.angle[i]?.[side].y).toBeCloseTo((angleAt(step) - angleAt(-step)) / (2 * step), 8);
    }
  });
});

test('[hand] reading and midline uncertainties enter where they belong', () => {
  const fit = fitted(plainFace);
  const frame = faceFrame(plainFace, fit.line, 'pupils');
  const only = (readingMm: number, midlineMm: number) => {
    const rows = propagate(plainFace, frame, fit.cutOffMm, 'pupils', { readingMm, midlineMm });
    if (!rows.ok) throw new Error(rows.reason);
    return rows;
  };
  // u without the midline: the mark itself. v by the pupils: 1 for the mark, half for each pupil, and the
  // level at arm 64 over 62.
  expect(rowUncertainty(only(2, 0).brows.tail.left.u)).toBeCloseTo(2, 12);
  expect(rowUncertainty(only(2, 0).brows.tail.left.v)).toBeCloseTo(
    2 * Math.sqrt(1 + 0.5 + 2 * (64 / 62) ** 2),
    12,
  );
  expect(rowUncertainty(only(0, 2).brows.tail.left.v)).toBeCloseTo(0, 12);
  expect(rowUncertainty(only(0, 2).angle)).toBeCloseTo(2 * rowUncertainty(only(1, 1).angle), 12);
  expect(rowUncertainty(only(2, 0).angle)).toBe(0);
});

test('[hand] eye corners as level: arm over the sum of both widths', () => {
  const rows = rowsOf(plainFace, 'eye-corners');
  // Four corner marks, each 1/122 of the angle per mm; the tail 64 mm out.
  expect(rowUncertainty(rows.brows.tail.left.v)).toBeCloseTo(Math.sqrt(1 + 0.5 + 4 * (64 / 122) ** 2), 10);
});

test('[hand] where the midline crosses the brows’ height', () => {
  expect(browHeightMm(plainFace)).toBeCloseTo((17 + 25 + 33 + 27 + 20) / 5, 12);
  // 0.8 x + 0.6 y = 20 at y = 24.4: x = (20 − 14.64) / 0.8.
  expect(midlineAtBrowsMm(plainFace, { normal: { x: 0.8, y: 0.6 }, offsetMm: 20 })).toBeCloseTo(6.7, 12);
});

test('[hand] disagreement: pairs count two parts, single marks one, the line takes two', () => {
  const p = { xMm: 0, yMm: 0 };
  const marks = [
    { right: { xMm: -1, yMm: 0 }, left: { xMm: 1, yMm: 0 } },
    { right: { xMm: -1, yMm: 0 }, left: { xMm: -1, yMm: 5 } },
    { right: p, left: p },
  ];
  const line = { normal: { x: 1, y: 0 }, offsetMm: 0 };
  const fit = {
    ok: true,
    line,
    weights: [1, 0.5, 1],
    residualsMm: [2, 4, 3],
    cutOffMm: 9,
    eigenGapShare: 1,
  } as const;
  // 2 · 4 + 0.5 · 2 · 16 + 9 = 33; freedom 2 + 1 + 1 − 2 = 2.
  expect(disagreementMm(marks, fit)).toBeCloseTo(Math.sqrt(16.5), 13);
  // Freedom is never taken below 1.
  expect(disagreementMm(marks.slice(0, 1), fit)).toBeCloseTo(Math.sqrt(8), 13);
});

test('[property] disagreement raises what rests on the midline, and never lowers it', () => {
  const set = movePoints(noisy(plainFace, 0.8, drawFrom(21)), (p) => p);
  const face = readFace(set, { ...choices, temMm: 0.1 });
  if (!face.ok) throw new Error(face.reason);
  expect(face.midlineMm).toBeCloseTo(disagreementMm(mirrorMarksOf(set), fitted(set)), 12);
  expect(face.midlineMm).toBeGreaterThan(2 * face.readingMm);
});
