import { describe, expect, it } from 'vitest';
import { defaultBones } from '#lib/face/bones.ts';
import { tailLimitMm } from '#lib/face/browPlan.ts';
import { irisRadiusMm } from '#components/pictures/face/eye.ts';
import { defaultFace } from '#lib/face/face.ts';
import { faceMarks, landmarksOf } from '#lib/face/faceMarks.ts';
import { people } from '#components/pictures/face/people.ts';

const { right, left } = defaultFace.landmarks;

describe('the default face passes the trade checks it is used to teach', () => {
  it('[hand] fronts, arches, tails and lower edges are level and equal from the midline', () => {
    expect(right).toEqual(left);
  });

  it('[hand] the front stands on the inner-corner vertical, the nose wing within 0.5 mm of it', () => {
    expect(left.frontLower[0]).toBeCloseTo(left.innerCorner[0], 9);
    expect(Math.abs(left.frontLower[0] - left.noseWing[0])).toBeLessThanOrEqual(0.5);
  });

  it('[hand] the tail ends on or just inside the line nose wing – outer corner', () => {
    const insideMm = tailLimitMm(defaultBones, left.tail[1]) - left.tail[0];
    expect(insideMm).toBeGreaterThanOrEqual(0);
    expect(insideMm).toBeLessThanOrEqual(1);
    // The same line, worked another way: cross product of the two directions has the inside sign.
    const [wing, corner, tail] = [left.noseWing, left.outerCorner, left.tail];
    const cross = (corner[0] - wing[0]) * (tail[1] - wing[1]) - (corner[1] - wing[1]) * (tail[0] - wing[0]);
    expect(cross).toBeGreaterThanOrEqual(0);
  });

  it('[hand] the tail lies between the levels of the lower and upper front mark', () => {
    expect(left.tail[1]).toBeGreaterThanOrEqual(left.frontLower[1]);
    expect(left.tail[1]).toBeLessThanOrEqual(left.frontTop[1]);
  });

  it('[hand] one arch share on both sides, the arch between limbus and outer corner', () => {
    const share = (left.archTop[0] - left.frontLower[0]) / (left.tail[0] - left.frontLower[0]);
    const rightShare = (right.archTop[0] - right.frontLower[0]) / (right.tail[0] - right.frontLower[0]);
    expect(share).toBe(rightShare);
    expect(share).toBeCloseTo(0.65, 9);
    expect(left.archTop[0]).toBeGreaterThan(left.pupil[0] + irisRadiusMm);
    expect(left.archTop[0]).toBeLessThan(left.outerCorner[0]);
  });
});

describe('marks and landmarks', () => {
  it('[property] rolling a face and reading it back upright gives the same landmarks', () => {
    for (const { face } of people) {
      const there = faceMarks(face.landmarks, 4.3);
      const back = landmarksOf(there, 4.3);
      for (const side of ['right', 'left'] as const) {
        for (const [mark, [u, v]] of Object.entries(face.landmarks[side])) {
          const again = Object.entries(back[side]).find(([name]) => name === mark)?.[1] ?? [
            Number.NaN,
            Number.NaN,
          ];
          expect(again[0]).toBeCloseTo(u, 9);
          expect(again[1]).toBeCloseTo(v, 9);
        }
      }
    }
  });

  it('[hand] a roll of -90° sends "up" to the picture’s right', () => {
    const { singles } = faceMarks(defaultFace.landmarks, -90);
    expect(singles.glabella.xMm).toBeCloseTo(14, 9);
    expect(singles.glabella.yMm).toBeCloseTo(0, 9);
  });

  it('[hand] the client’s right is the picture’s left', () => {
    const { pairs } = faceMarks(defaultFace.landmarks, 0);
    expect(pairs.pupil).toEqual({ right: { xMm: -31.5, yMm: 0 }, left: { xMm: 31.5, yMm: 0 } });
  });
});
