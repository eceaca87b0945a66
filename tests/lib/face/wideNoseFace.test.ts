import { expect, test } from 'vitest';
import { wideNoseFace } from '#lib/face/wideNoseFace.ts';
import { faceMarks } from '#lib/face/faceMarks.ts';

const { face, markSet, truth } = wideNoseFace;
const { pairs, brows } = markSet;

test('[hand] nose 40.4 wide, leaning 1.6 to the client’s left; corners 32 apart; arches alike', () => {
  expect(pairs.noseWing).toEqual({ right: { xMm: -18.6, yMm: -38 }, left: { xMm: 21.8, yMm: -38 } });
  expect(pairs.noseWing.left.xMm + pairs.noseWing.right.xMm).toBeCloseTo(2 * truth.leanMm, 9);
  expect(pairs.innerCorner.left.xMm - pairs.innerCorner.right.xMm).toBe(32);
  expect(brows.archTop.left).toEqual({ xMm: -brows.archTop.right.xMm, yMm: brows.archTop.right.yMm });
});

test('[hand] the right brow is 3.4 mm longer and its tip 1.2 mm below its own front; the left keeps its line', () => {
  const right = -brows.tail.right.xMm + brows.frontLower.right.xMm;
  const left = brows.tail.left.xMm - brows.frontLower.left.xMm;
  expect(right - left).toBeCloseTo(truth.longerMm, 9);
  expect(brows.frontLower.right.yMm - brows.tail.right.yMm).toBeCloseTo(truth.belowMm, 9);
  expect(brows.frontTop.right.xMm).toBeCloseTo(brows.frontLower.right.xMm - 0.7, 9);
  expect(brows.tail.left.yMm).toBeGreaterThan(brows.frontLower.left.yMm);
});

test('[property] the drawing stands on the marks', () => {
  expect(face.rollDeg).toBe(0);
  expect(faceMarks(face.landmarks, face.rollDeg)).toEqual(markSet);
});
