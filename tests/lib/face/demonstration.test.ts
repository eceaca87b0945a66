import { describe, expect, it } from 'vitest';
import { leaningNoseFace } from '#lib/face/demonstration.ts';
import { faceMarks, landmarksOf } from '#lib/face/faceMarks.ts';
import { facePairs, browMarks, faceSingles } from '#lib/mapping/marks/markSet.ts';

const { face, markSet, truth } = leaningNoseFace;
/** The marks turned back upright by hand: the roll of -1.5° undone. */
const upright = landmarksOf(markSet, -1.5);
/** Marks are read to 0.1 mm: 0.05 either way, in each of two marks. */
const readingMm = 0.1;

describe('the face whose nose leans', () => {
  it('[hand] glabella and nasion stay within 0.3 mm of the true midline, the chin within half a millimetre', () => {
    expect(Math.abs(upright.middle.glabella[0])).toBeLessThanOrEqual(0.3 + readingMm);
    expect(Math.abs(upright.middle.nasion[0])).toBeLessThanOrEqual(0.3 + readingMm);
    expect(Math.abs(upright.middle.chin[0])).toBeLessThan(0.5 + readingMm);
  });

  it('[hand] nose base and wings carry 5 mm to the client’s left', () => {
    expect(truth.leanMm).toBe(5);
    expect(Math.abs(upright.middle.subnasale[0] - 5)).toBeLessThan(readingMm);
    expect(Math.abs((upright.left.noseWing[0] - upright.right.noseWing[0]) / 2 - 5)).toBeLessThan(readingMm);
  });

  it('[hand] the right arch is 1.8 mm lower upright, and looks level or higher in the picture', () => {
    expect(truth.archHeightDifferenceMm).toBe(1.8);
    expect(Math.abs(upright.left.archTop[1] - upright.right.archTop[1] - 1.8)).toBeLessThan(readingMm);
    // Two arches some 76 mm apart: 76 sin 1.5° = 2.0 mm.
    expect(markSet.brows.archTop.right.yMm).toBeGreaterThanOrEqual(markSet.brows.archTop.left.yMm);
    expect(truth.rollDeg).toBe(-1.5);
    expect(face.rollDeg).toBe(-1.5);
  });

  it('[property] eyes are within half a millimetre of mirroring, every brow mark of the right side is the lower one', () => {
    for (const mark of ['innerCorner', 'outerCorner', 'pupil'] as const) {
      for (const axis of [0, 1] as const) {
        expect(Math.abs(upright.left[mark][axis] - upright.right[mark][axis])).toBeLessThan(0.5 + readingMm);
      }
    }
    for (const mark of browMarks) expect(upright.right[mark][1]).toBeLessThan(upright.left[mark][1] - 0.25);
  });

  it('[property] every mark is written to 0.1 mm and the drawing stands on it', () => {
    const drawn = faceMarks(face.landmarks, face.rollDeg);
    const points = (set: typeof markSet) => [
      ...facePairs.flatMap((mark) => [set.pairs[mark].right, set.pairs[mark].left]),
      ...browMarks.flatMap((mark) => [set.brows[mark].right, set.brows[mark].left]),
      ...faceSingles.map((mark) => set.singles[mark]),
    ];
    points(markSet).forEach(({ xMm, yMm }, i) => {
      expect(xMm).toBe(Math.round(xMm * 10) / 10);
      expect(yMm).toBe(Math.round(yMm * 10) / 10);
      expect(points(drawn)[i]?.xMm).toBeCloseTo(xMm, 9);
      expect(points(drawn)[i]?.yMm).toBeCloseTo(yMm, 9);
    });
  });
});
