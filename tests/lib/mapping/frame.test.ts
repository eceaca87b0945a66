import fc from 'fast-check';
import { expect, test } from 'vitest';
import { directionAt } from '#lib/geometry/direction.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { faceFrame, toFace, toPicture } from '#lib/mapping/marks/faceFrame.ts';
import { levelDirection, levelReferences } from '#lib/mapping/marks/levelReference.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { everyMarkIsInReach, midlineMarks, mirrorMarksOf, reachMm } from '#lib/mapping/marks/mirrorMarks.ts';
import { rollDeg } from '#lib/mapping/marks/roll.ts';
import { decomposeBrows } from '#lib/mapping/compare/decomposeBrows.ts';
import { compareSides } from '#lib/mapping/compare/sides.ts';
import { real } from '#tests/tools/real.ts';
import { movePoints, plainFace, turned } from './faces.ts';

const upright = { normal: { x: 1, y: 0 }, offsetMm: 0 };

test('[hand] roll: positive when the client’s left side is higher', () => {
  expect(rollDeg(upright)).toBe(0);
  expect(rollDeg({ normal: directionAt(Math.PI / 60), offsetMm: 5 })).toBeCloseTo(3, 12);
  expect(rollDeg({ normal: directionAt(-Math.PI / 60), offsetMm: 5 })).toBeCloseTo(-3, 12);
});

test('[hand] level references: across the midline, through the corners, through the pupils', () => {
  const set = movePoints(plainFace, (p, name, side) => {
    if (name === 'pupil' && side === 'left') return { xMm: 31, yMm: 31 };
    if (name === 'outerCorner' && side === 'left') return { ...p, yMm: p.yMm + 61 };
    return p;
  });
  expect(levelDirection('midline', set, upright)).toBe(upright.normal);
  // Pupils: 62 across, 31 up.
  expect(levelDirection('pupils', set, upright).y).toBeCloseTo(1 / Math.sqrt(5), 13);
  expect(levelDirection('pupils', set, upright).x).toBeCloseTo(2 / Math.sqrt(5), 13);
  // Corners: 2 · 16 + 2 · 45 = 122 across, 61 up.
  expect(levelDirection('eye-corners', set, upright).y).toBeCloseTo(1 / Math.sqrt(5), 13);
  const onePoint = movePoints(plainFace, () => ({ xMm: 2, yMm: 3 }));
  for (const reference of levelReferences)
    expect(levelDirection(reference, onePoint, upright)).toEqual(upright.normal);
});

test('[hand] face frame of the plain face: u outward on both sides, v from the pupils', () => {
  const shifted = movePoints(plainFace, ({ xMm, yMm }) => ({ xMm: xMm + 3, yMm: yMm + 50 }));
  const frame = faceFrame(shifted, { normal: { x: 1, y: 0 }, offsetMm: 3 }, 'midline');
  expect(frame.pupilLevelMm).toBe(50);
  expect(toFace(shifted.brows.tail.right, 'right', frame)).toEqual({ uMm: 64, vMm: 20 });
  expect(toFace(shifted.brows.tail.left, 'left', frame)).toEqual({ uMm: 64, vMm: 20 });
  expect(toFace({ xMm: 1, yMm: 50 }, 'left', frame).uMm).toBe(-2);
  expect(toPicture({ uMm: 64, vMm: 20 }, 'right', frame)).toEqual({ xMm: -61, yMm: 70 });
  expect(toPicture({ uMm: 64, vMm: 20 }, 'left', frame)).toEqual({ xMm: 67, yMm: 70 });
});

test('[property] to the face and back is where it was, also in an oblique frame', () => {
  const number = real(-100, 100);
  const angle = real(-0.5, 0.5);
  fc.assert(
    fc.property(
      number,
      number,
      angle,
      angle,
      number,
      fc.constantFrom('right' as const, 'left' as const),
      (xMm, yMm, a, b, offsetMm, side) => {
        const frame = {
          midline: { normal: directionAt(a), offsetMm },
          level: directionAt(b),
          pupilLevelMm: 4,
        };
        const back = toPicture(toFace({ xMm, yMm }, side, frame), side, frame);
        expect(back.xMm).toBeCloseTo(xMm, 9);
        expect(back.yMm).toBeCloseTo(yMm, 9);
      },
    ),
  );
});

test('[hand] the order of the midline’s marks, and no brow among them', () => {
  expect(midlineMarks).toEqual([
    'innerCorner',
    'outerCorner',
    'pupil',
    'noseWing',
    'glabella',
    'nasion',
    'subnasale',
    'chin',
  ]);
  const marks = mirrorMarksOf(plainFace);
  expect(marks).toHaveLength(8);
  expect(marks[3]).toBe(plainFace.pairs.noseWing);
  expect(marks[7]).toEqual({ right: { xMm: 0, yMm: -92 }, left: { xMm: 0, yMm: -92 } });
});

test('[hand] a missing coordinate is noticed wherever it is', () => {
  expect(everyMarkIsInReach(plainFace)).toBe(true);
  expect(
    everyMarkIsInReach(movePoints(plainFace, (p, name) => (name === 'chin' ? { xMm: 0, yMm: -reachMm } : p))),
  ).toBe(true);
  expect(
    everyMarkIsInReach(
      movePoints(plainFace, (p, name) => (name === 'chin' ? { xMm: 0, yMm: -reachMm - 1 } : p)),
    ),
  ).toBe(false);
  expect(
    everyMarkIsInReach(
      movePoints(plainFace, (p, name) => (name === 'tail' ? { xMm: reachMm + 1, yMm: 0 } : p)),
    ),
  ).toBe(false);
  for (const at of ['innerCorner', 'chin', 'tail']) {
    expect(
      everyMarkIsInReach(movePoints(plainFace, (p, name) => (name === at ? { ...p, xMm: NaN } : p))),
    ).toBe(false);
    expect(
      everyMarkIsInReach(
        movePoints(plainFace, (p, name, side) =>
          name === at && side !== 'right' ? { ...p, yMm: Infinity } : p,
        ),
      ),
    ).toBe(false);
    expect(
      everyMarkIsInReach(
        movePoints(plainFace, (p, name, side) =>
          name === at && side !== 'left' ? { ...p, yMm: -Infinity } : p,
        ),
      ),
    ).toBe(false);
  }
});

test('[hand] one thing for each brow mark', () => {
  expect(forBrowMarks((mark) => mark.length)).toEqual({
    frontLower: 10,
    frontTop: 8,
    archTop: 7,
    archLower: 9,
    tail: 4,
  });
  expect(Object.keys(forBrowMarks(() => 0))).toEqual([...browMarks]);
});

test('[hand] left minus right: outward and up, each mark its own', () => {
  const set = movePoints(plainFace, (p, name, side) =>
    name === 'archTop' && side === 'left' ? { xMm: p.xMm + 2, yMm: p.yMm - 1.5 } : p,
  );
  const sides = compareSides(set, faceFrame(set, upright, 'midline'));
  expect(sides.archTop).toEqual({
    right: { uMm: 47, vMm: 33 },
    left: { uMm: 49, vMm: 31.5 },
    outwardMm: 2,
    upMm: -1.5,
  });
  expect(sides.tail.outwardMm).toBe(0);
});

test('[hand] shift, tilt and size of the left brow against the mirrored right one', () => {
  // Left brow: size 1.1 and 4° tail up about its own middle, then 1.5 mm out and 0.7 mm down.
  const middle = { xMm: (15 + 14 + 47 + 46 + 64) / 5, yMm: (17 + 25 + 33 + 27 + 20) / 5 };
  const [c, s] = [1.1 * Math.cos((4 * Math.PI) / 180), 1.1 * Math.sin((4 * Math.PI) / 180)];
  const set = movePoints(plainFace, (p, name, side) => {
    if (side !== 'left' || !browMarks.some((mark) => mark === name)) return p;
    const [x, y] = [p.xMm - middle.xMm, p.yMm - middle.yMm];
    return { xMm: middle.xMm + c * x - s * y + 1.5, yMm: middle.yMm + s * x + c * y - 0.7 };
  });
  const fit = decomposeBrows(compareSides(set, faceFrame(set, upright, 'midline')));
  if (!fit.ok) throw new Error('brows have length');
  expect(fit.shiftOutMm).toBeCloseTo(1.5, 12);
  expect(fit.shiftUpMm).toBeCloseTo(-0.7, 12);
  expect(fit.tiltDeg).toBeCloseTo(4, 12);
  expect(fit.size).toBeCloseTo(1.1, 12);
  expect(fit.residualMm).toBeLessThan(1e-12);
});

test('[hand] what is left over belongs to its mark', () => {
  const set = movePoints(plainFace, (p, name, side) =>
    name === 'tail' && side === 'left' ? { ...p, yMm: p.yMm + 1 } : p,
  );
  const fit = decomposeBrows(compareSides(set, faceFrame(set, upright, 'midline')));
  if (!fit.ok) throw new Error('brows have length');
  expect(fit.shiftUpMm).toBeCloseTo(0.2, 12);
  expect(fit.residuals.tail.vMm).toBeGreaterThan(0.2);
  const squares = browMarks.reduce(
    (sum, mark) => sum + fit.residuals[mark].uMm ** 2 + fit.residuals[mark].vMm ** 2,
    0,
  );
  expect(fit.residualMm).toBeCloseTo(Math.sqrt(squares / 5), 12);
  expect(browMarks.reduce((sum, mark) => sum + fit.residuals[mark].vMm, 0)).toBeCloseTo(0, 12);
});

test('[hand] brows on one point have no tilt or size', () => {
  const set = movePoints(plainFace, (p, name) =>
    browMarks.some((mark) => mark === name) ? { xMm: 5, yMm: 20 } : p,
  );
  expect(decomposeBrows(compareSides(set, faceFrame(set, upright, 'midline')))).toEqual({
    ok: false,
    reason: 'brow-marks-on-one-point',
  });
});

test('[property] the frame turns with the face: no coordinate changes', () => {
  for (const reference of levelReferences) {
    const before = compareSides(plainFace, faceFrame(plainFace, upright, reference));
    const set = turned(plainFace, 7, 20, -30);
    const normal = directionAt((7 * Math.PI) / 180);
    const after = compareSides(
      set,
      faceFrame(set, { normal, offsetMm: 20 * normal.x - 30 * normal.y }, reference),
    );
    for (const mark of browMarks) {
      expect(after[mark].left.uMm).toBeCloseTo(before[mark].left.uMm, 11);
      expect(after[mark].right.vMm).toBeCloseTo(before[mark].right.vMm, 11);
    }
  }
});
