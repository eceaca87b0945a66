import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { drawFace, type FacePicture } from '#components/pictures/face/drawFace.ts';
import { headOutline } from '#components/pictures/face/headOutline.ts';
import { axisX } from '#components/pictures/face/nose.ts';
import { leaningNoseFace } from '#lib/face/demonstration.ts';
import { defaultFace } from '#lib/face/face.ts';
import { faceMarks } from '#lib/face/faceMarks.ts';
import { people } from '#components/pictures/face/people.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import type { FaceView } from '#components/pictures/face/view.ts';
import { browMarks, facePairs, faceSingles } from '#lib/mapping/marks/markSet.ts';
import { faceSvgText } from '#components/pictures/faceSvgText.ts';

const views: readonly FaceView[] = ['whole', 'midline', 'band', 'right', 'left'];
const kilobytes = (picture: FacePicture): number =>
  gzipSync(faceSvgText(picture, 'light'), { level: 9 }).length / 1000;

describe('every drawing', () => {
  it('[property] 200 seeds at five levels: only numbers in the paths', () => {
    for (let seed = 1; seed <= 200; seed++) {
      for (const level of [0, 1, 2, 3, 4] as const) {
        const { face } = practiceFace(seed, level);
        const { shapes } = drawFace(face, views[(seed + level) % views.length] ?? 'whole', seed);
        for (const { d, clip = '' } of shapes) expect(`${d}${clip}`).toMatch(/^(?:[mlqcz\s.-]|\d)+$/);
      }
    }
  });

  it('[property] same face, view and seed: the same text; another seed changes no mark', () => {
    for (const { face } of people) expect(drawFace(face, 'whole', 5)).toEqual(drawFace(face, 'whole', 5));
    expect(drawFace(defaultFace, 'band', 1)).not.toEqual(drawFace(defaultFace, 'band', 2));
  });

  it('[property] leaving parts out changes no other part', () => {
    const partOf = (view: FaceView) =>
      drawFace(defaultFace, view, 3).shapes.filter(({ part }) => part === 'brow' || part === 'nose');
    expect(partOf('midline')).toEqual(partOf('whole'));
  });

  it('[property] the jaw runs inwards all the way from cheek to chin and passes its own width', () => {
    for (const { face } of people) {
      const { halfWidthAt } = headOutline(face);
      const chinV = face.landmarks.middle.chin[1];
      let before = halfWidthAt(-14);
      expect(before).toBeCloseTo(face.form.cheekMm, 9);
      for (let v = -15; v > chinV; v--) {
        expect(halfWidthAt(v)).toBeLessThan(before);
        before = halfWidthAt(v);
      }
      expect(halfWidthAt(face.form.jawV)).toBeCloseTo(face.form.jawMm, 6);
    }
  });
});

describe('sizes, compressed', () => {
  it('[hand] lesson figure at most 7 kB, brow band at most 8 kB, whole face at most 17 kB', () => {
    expect(kilobytes(drawFace(leaningNoseFace.face, 'midline'))).toBeLessThanOrEqual(7);
    expect(kilobytes(drawFace(leaningNoseFace.face, 'band'))).toBeLessThanOrEqual(8);
    expect(kilobytes(drawFace(defaultFace, 'band'))).toBeLessThanOrEqual(8);
    for (const [i, { face }] of people.entries())
      expect(kilobytes(drawFace(face, 'whole', i))).toBeLessThanOrEqual(17);
  });
});

describe('the demonstration face', () => {
  const { markSet, face } = leaningNoseFace;
  const upright = face.landmarks;

  it('[hand] marks are written to 0.1 mm and are exactly where the drawing stands', () => {
    const all = [
      ...facePairs.flatMap((pair) => Object.values(markSet.pairs[pair])),
      ...faceSingles.map((name) => markSet.singles[name]),
      ...browMarks.flatMap((mark) => Object.values(markSet.brows[mark])),
    ];
    for (const { xMm, yMm } of all) {
      expect(Math.abs(xMm * 10 - Math.round(xMm * 10))).toBeLessThan(1e-9);
      expect(Math.abs(yMm * 10 - Math.round(yMm * 10))).toBeLessThan(1e-9);
    }
    const drawn = faceMarks(face.landmarks, face.rollDeg);
    for (const mark of browMarks) {
      expect(drawn.brows[mark].right.xMm).toBeCloseTo(markSet.brows[mark].right.xMm, 9);
      expect(drawn.brows[mark].left.yMm).toBeCloseTo(markSet.brows[mark].left.yMm, 9);
    }
  });

  it('[hand] the nose base leans 5 mm to the client’s left, root and chin stay within 0.5 mm, the bridge runs between', () => {
    expect(upright.middle.subnasale[0]).toBeCloseTo(5, 0);
    expect((upright.left.noseWing[0] - upright.right.noseWing[0]) / 2).toBeCloseTo(5, 0);
    for (const name of ['glabella', 'nasion', 'chin'] as const)
      expect(Math.abs(upright.middle[name][0])).toBeLessThan(0.5);
    const half = axisX(face, -16);
    expect(half).toBeGreaterThan(1.5);
    expect(half).toBeLessThan(3.5);
  });

  it('[hand] the right brow is 1.8 mm lower at the arch, every other brow difference under 0.75 but the lower arch', () => {
    expect(upright.left.archTop[1] - upright.right.archTop[1]).toBeCloseTo(1.8, 0);
    for (const mark of ['frontLower', 'frontTop', 'tail'] as const) {
      expect(Math.abs(upright.left[mark][1] - upright.right[mark][1])).toBeLessThan(0.75);
    }
    for (const pair of ['innerCorner', 'outerCorner', 'pupil'] as const) {
      expect(Math.abs(upright.left[pair][0] - upright.right[pair][0])).toBeLessThan(0.7);
    }
  });
});
