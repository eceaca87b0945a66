import { describe, expect, it } from 'vitest';
import { defaultBones, landmarksFrom } from '#lib/face/bones.ts';
import { defaultFace } from '#lib/face/face.ts';
import { faceMarks, landmarksOf } from '#lib/face/faceMarks.ts';
import { browOf } from '#lib/face/landmarks.ts';

const brow = browOf(defaultFace.landmarks.left);
const bones = {
  ...defaultBones,
  pupilDistanceMm: 60,
  intercanthalMm: 30,
  eyeWidthMm: 29,
  outerCornerMm: 2,
  noseWidthMm: 34,
  noseDropMm: 40,
  noseLeanMm: 3,
  chinDropMm: 110,
  chinShiftMm: -2,
};

describe('landmarks from bones', () => {
  it('[hand] eyes: half the distances out, the outer corner one eye width further', () => {
    const { right, left } = landmarksFrom(bones, brow, brow);
    for (const side of [right, left]) {
      expect(side.pupil).toEqual([30, 0]);
      expect(side.innerCorner[0]).toBe(15);
      expect(side.outerCorner).toEqual([44, 2]);
      expect(browOf(side)).toEqual(brow);
    }
  });

  it('[hand] a lean of 3 mm carries both wings and the nose base to the client’s left', () => {
    const { right, left, middle } = landmarksFrom(bones, brow, brow);
    expect(left.noseWing).toEqual([20, -40]);
    expect(right.noseWing).toEqual([14, -40]);
    expect(middle.subnasale[0]).toBe(3);
  });

  it('[property] down the middle of the face: glabella, nasion, pupils, wings, subnasale, chin', () => {
    const found = landmarksFrom(bones, brow, brow);
    expect(found.middle.glabella[0]).toBe(0);
    expect(found.middle.nasion[0]).toBe(0);
    expect(found.middle.glabella[1]).toBeGreaterThan(found.middle.nasion[1]);
    expect(found.middle.nasion[1]).toBeGreaterThan(0);
    expect(found.left.noseWing[1]).toBeGreaterThan(found.middle.subnasale[1]);
    expect(found.middle.subnasale[1]).toBeGreaterThan(found.middle.chin[1]);
    expect(found.middle.chin).toEqual([-2, -110]);
  });

  it('[property] marked in a rolled picture and read back: the marks of the middle return too', () => {
    const there = landmarksFrom(bones, brow, brow);
    const back = landmarksOf(faceMarks(there, 6), 6).middle;
    for (const mark of ['glabella', 'nasion', 'subnasale', 'chin'] as const) {
      expect(back[mark][0]).toBeCloseTo(there.middle[mark][0], 9);
      expect(back[mark][1]).toBeCloseTo(there.middle[mark][1], 9);
    }
  });
});
