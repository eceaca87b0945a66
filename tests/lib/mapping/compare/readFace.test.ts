import { expect, test } from 'vitest';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import {
  greatestRollDeg,
  readFace,
  type FaceReading,
  type ReadingChoices,
} from '#lib/mapping/compare/readFace.ts';
import type { MarkSet } from '#lib/mapping/marks/markSet.ts';
import { midlineMarks } from '#lib/mapping/marks/mirrorMarks.ts';
import { choices, movePoints, noseOff, plainFace, turned } from '../faces.ts';

const read = (set: MarkSet, how: ReadingChoices = choices): FaceReading => {
  const reading = readFace(set, how);
  if (!reading.ok) throw new Error(reading.reason);
  return reading;
};

const isBrow = (name: string) => browMarks.some((mark) => mark === name);

test('[hand] a symmetric face: nothing leans, nothing differs, everything is trusted', () => {
  const face = read(plainFace);
  expect(face.rollDeg.value).toBeCloseTo(0, 12);
  expect(face.midlineAtBrowsMm.value).toBeCloseTo(0, 12);
  expect(face.notTrusted).toEqual([]);
  for (const mark of browMarks) {
    expect(face.brows[mark].outward.value).toBeCloseTo(0, 12);
    expect(face.brows[mark].up.value).toBeCloseTo(0, 12);
    expect(face.brows[mark].outward.band).toBe('not-shown');
  }
  expect(face.brows.tail.left).toEqual({ uMm: expect.closeTo(64, 12), vMm: expect.closeTo(20, 12) });
  expect(face.readingMm).toBeCloseTo(Math.sqrt(0.09 + 0.0425), 12);
  expect(face.midlineMm).toBe(face.readingMm);
  expect(face.marks.chin).toEqual({ weight: 1, residualMm: expect.closeTo(0, 12) });
});

test('[hand] the number of comparisons sets k of the differences; roll and midline stand alone', () => {
  const ten = read(plainFace);
  expect(ten.k).toBeCloseTo(2.8, 2);
  expect(ten.brows.tail.up.k).toBe(ten.k);
  expect(ten.rollDeg.k).toBeCloseTo(1.96, 3);
  expect(ten.midlineAtBrowsMm.k).toBe(ten.rollDeg.k);
  const one = read(plainFace, { ...choices, comparisons: 'one' });
  expect(one.k).toBeCloseTo(1.96, 3);
  expect(one.brows.tail.up.hi).toBeCloseTo(one.k * ten.brows.tail.up.standardUncertainty, 12);
});

test('[hand] a nose base 6 mm off is not trusted, and says by how much', () => {
  const face = read(noseOff(plainFace, 6));
  expect(face.notTrusted).toEqual(['noseWing', 'subnasale']);
  expect(face.marks.noseWing).toEqual({ weight: 0, residualMm: expect.closeTo(6, 9) });
  expect(face.marks.glabella.weight).toBeCloseTo(1, 9);
  expect(face.brows.tail.outward.value).toBeCloseTo(0, 9);
});

test('[hand] each mark answers for itself: the one that is 5 mm off, and no other, is left out', () => {
  for (const name of midlineMarks) {
    const face = read(movePoints(plainFace, (p, at) => (at === name ? { ...p, xMm: p.xMm + 5 } : p)));
    expect(face.notTrusted).toEqual([name]);
    for (const other of midlineMarks) {
      expect(face.marks[other].weight).toBeCloseTo(other === name ? 0 : 1, 9);
      expect(face.marks[other].residualMm).toBeCloseTo(other === name ? 5 : 0, 9);
    }
  }
});

test('[hand] uncertainties of the plain face from the sums of its own marks', () => {
  // All weights 1, nothing off: with h the height of a mark over the mean of all eight and d the width of a
  // pair, H = Σ (4h² + d²); roll follows a pair's end by 2h/H across and d/H up, a single mark by 4h/H
  // across.
  const { pairs, singles } = plainFace;
  const pairList = Object.values(pairs).map(({ left }) => ({ y: left.yMm, d: 2 * left.xMm }));
  const singleList = Object.values(singles).map(({ yMm }) => yMm);
  const mean = [...pairList.map(({ y }) => y), ...singleList].reduce((sum, y) => sum + y, 0) / 8;
  const h =
    pairList.reduce((sum, { y, d }) => sum + 4 * (y - mean) ** 2 + d * d, 0) +
    singleList.reduce((sum, y) => sum + 4 * (y - mean) ** 2, 0);
  const rollVariance =
    (pairList.reduce((sum, { y, d }) => sum + 8 * (y - mean) ** 2 + 2 * d * d, 0) +
      singleList.reduce((sum, y) => sum + 16 * (y - mean) ** 2, 0)) /
    (h * h);
  const face = read(plainFace);
  const u = face.readingMm;
  expect(face.rollDeg.standardUncertainty).toBeCloseTo((u * Math.sqrt(rollVariance) * 180) / Math.PI, 10);
  // Up: two marks, and twice the arm of 64 mm times the roll.
  expect(face.brows.tail.up.standardUncertainty).toBeCloseTo(u * Math.sqrt(2 + 128 ** 2 * rollVariance), 10);
  // The offset follows a pair's end by 1/16, a single mark by 1/8: variance 8/256 + 4/64. With roll it
  // shares, through the same marks, −Σ pairs 4h/16H − Σ singles 4h/8H (moving a low mark left leans the top
  // right).
  const shared =
    -(
      pairList.reduce((sum, { y }) => sum + (y - mean) / 4, 0) +
      singleList.reduce((sum, y) => sum + (y - mean) / 2, 0)
    ) / h;
  const arm = 20 - mean;
  expect(face.brows.tail.outward.standardUncertainty).toBeCloseTo(
    u * Math.sqrt(2 + 4 * (arm * arm * rollVariance + 3 / 32 - 2 * arm * shared)),
    10,
  );
});

test('[hand] brows never feed the midline: moving them all leaves it where it was', () => {
  const before = read(noseOff(plainFace, 1));
  const after = read(
    movePoints(noseOff(plainFace, 1), (p, name) => (isBrow(name) ? { xMm: p.xMm + 9, yMm: p.yMm - 4 } : p)),
  );
  expect(after.frame.midline).toEqual(before.frame.midline);
  expect(after.rollDeg).toEqual(before.rollDeg);
});

test('[hand] a band goes with its difference', () => {
  const set = movePoints(plainFace, (p, name, side) => {
    if (side !== 'left') return p;
    if (name === 'archTop') return { xMm: p.xMm + 2.5, yMm: p.yMm + 4 };
    return name === 'tail' ? { xMm: p.xMm - 3.5, yMm: p.yMm + 0.5 } : p;
  });
  const { brows } = read(set, { ...choices, temMm: 0.2 });
  expect(brows.archTop.outward.value).toBeCloseTo(2.5, 11);
  expect(brows.archTop.outward.band).toBe('some-see');
  expect(brows.archTop.up.value).toBeCloseTo(4, 11);
  expect(brows.archTop.up.band).toBe('most-see');
  expect(brows.tail.outward.value).toBeCloseTo(-3.5, 11);
  expect(brows.tail.outward.band).toBe('most-see');
  expect(brows.tail.up.band).toBe('not-shown');
});

test('[hand] refusals: a lost coordinate, marks that fix nothing, a face on its side, right and left exchanged', () => {
  expect(
    readFace(
      movePoints(plainFace, (p, name) => (name === 'tail' ? { ...p, xMm: NaN } : p)),
      choices,
    ),
  ).toEqual({ ok: false, reason: 'mark-not-a-number' });
  expect(
    readFace(
      movePoints(plainFace, () => ({ xMm: 1, yMm: 2 })),
      choices,
    ),
  ).toEqual({ ok: false, reason: 'marks-do-not-fix-a-midline' });
  expect(readFace(turned(plainFace, 61), choices)).toEqual({ ok: false, reason: 'face-not-upright' });
  expect(readFace(turned(plainFace, -61), choices)).toEqual({ ok: false, reason: 'face-not-upright' });
  expect(readFace(turned(plainFace, 59), choices).ok).toBe(true);
  expect(greatestRollDeg).toBe(60);
  expect(
    readFace(
      movePoints(plainFace, ({ xMm, yMm }) => ({ xMm: -xMm, yMm })),
      choices,
    ),
  ).toEqual({ ok: false, reason: 'face-not-upright' });
});
