import { describe, expect, it } from 'vitest';
import type { Disturbance } from '#lib/face/disturbance.ts';
import { defaultFace, type Face } from '#lib/face/face.ts';
import { trueAnswers } from '#lib/face/trueAnswers.ts';

const nothing: Disturbance = {
  heightDifferenceMm: 0,
  browTiltDeg: 0,
  browSize: 1,
  rollDeg: 0,
  noseLeanMm: 0,
};
const { right, left, middle } = defaultFace.landmarks;

/** Right heights sum to 72, left to 78: mean 15. Left minus right: 2, 1, 4, 0, -1. */
const built: Face['landmarks'] = {
  right: {
    ...right,
    frontLower: [14, 10],
    frontTop: [15, 16],
    archTop: [38, 20],
    archLower: [37, 14],
    tail: [52, 12],
  },
  left: {
    ...left,
    frontLower: [14, 12],
    frontTop: [15, 17],
    archTop: [38, 24],
    archLower: [37, 14],
    tail: [52, 11],
  },
  middle: { ...middle, subnasale: [-3.5, -47] },
};
const faceAt = (rollDeg: number): Face => ({ ...defaultFace, landmarks: built, rollDeg });

describe('the answer key of a built face', () => {
  it('[hand] upright: the midline stands at 0 at the mean brow height', () => {
    const truth = trueAnswers(faceAt(0), nothing);
    expect(truth.midlineXAtBrowMm).toBe(0); // not minus nought
    expect(truth.browHeightMm).toBe(15);
    expect(truth.rollDeg).toBe(0);
    expect(truth.leanMm).toBe(-3.5);
  });

  it('[hand] rolled by 30°: half of 15 mm towards the client’s right, 15 √3/2 up', () => {
    const truth = trueAnswers(faceAt(30), nothing);
    expect(truth.midlineXAtBrowMm).toBeCloseTo(-7.5, 9);
    expect(truth.browHeightMm).toBeCloseTo(12.990381, 6);
    expect(truth.rollDeg).toBe(30);
  });

  it('[hand] rolled the other way, the midline leans the other way', () => {
    expect(trueAnswers(faceAt(-30), nothing).midlineXAtBrowMm).toBeCloseTo(7.5, 9);
  });

  it('[hand] left minus right at each mark, and their mean, whatever the roll', () => {
    for (const rollDeg of [0, 30]) {
      const truth = trueAnswers(faceAt(rollDeg), nothing);
      expect(truth.markHeightDifferencesMm).toEqual({
        frontLower: 2,
        frontTop: 1,
        archTop: 4,
        archLower: 0,
        tail: -1,
      });
      expect(truth.browHeightDifferenceMm).toBeCloseTo(1.2, 9);
    }
  });

  it.each([
    ['nothing done', {}, true],
    ['a roll', { rollDeg: 4 }, true],
    ['a leaning nose', { noseLeanMm: 4 }, true],
    ['a height', { heightDifferenceMm: 1 }, false],
    ['a tilt', { browTiltDeg: 1 }, false],
    ['a size', { browSize: 1.1 }, false],
    ['a height and a tilt', { heightDifferenceMm: 1, browTiltDeg: 1 }, false],
  ] satisfies readonly (readonly [string, Partial<Disturbance>, boolean])[])(
    '[hand] %s: change nothing?',
    (_, done, answer) => {
      const truth = trueAnswers(faceAt(0), { ...nothing, ...done });
      expect(truth.changeNothing).toBe(answer);
      expect(truth.browTiltDeg).toBe({ ...nothing, ...done }.browTiltDeg);
      expect(truth.browSize).toBe({ ...nothing, ...done }.browSize);
    },
  );
});
