import { describe, expect, it } from 'vitest';
import type { PracticeLevel } from '#lib/face/disturbance.ts';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { rollDeg } from '#lib/mapping/marks/roll.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { practiceFace, type PracticeFace } from '#lib/face/practiceFace.ts';
import { readAgain } from '#lib/face/readAgain.ts';

const seeds = Array.from({ length: 250 }, (_, i) => i + 1);
const levels: readonly PracticeLevel[] = [0, 1, 2, 3];
const many: readonly PracticeFace[] = Array.from({ length: 2000 }, (_, i) => practiceFace(i + 1, 3));

function meanAndSd(of: (face: PracticeFace) => number): Readonly<{ mean: number; sd: number }> {
  const values = many.map(of);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
  return { mean, sd };
}

const right = ({ face }: PracticeFace) => face.landmarks.right;
const left = ({ face }: PracticeFace) => face.landmarks.left;

describe('spreads of practice faces', () => {
  // Tolerances: three standard errors of 2000 draws, plus what the limits cut off (under 4 % of a standard
  // deviation each).
  it.each([
    ['pupil distance', (f: PracticeFace) => 2 * right(f).pupil[0], 63, 3.5, 0.35, 0.45],
    ['gap between the lower front marks', (f: PracticeFace) => 2 * right(f).frontLower[0], 28, 3.4, 0.3, 0.3],
    ['arch thickness', (f: PracticeFace) => right(f).archTop[1] - right(f).archLower[1], 6.5, 1.2, 0.12, 0.1],
    [
      'front thickness',
      (f: PracticeFace) => right(f).frontTop[1] - right(f).frontLower[1],
      7.3,
      1.2,
      0.12,
      0.1,
    ],
    ['height difference', (f: PracticeFace) => f.truth.browHeightDifferenceMm, 0, 1.6, 0.11, 0.1],
    ['tilt', (f: PracticeFace) => f.truth.browTiltDeg, 0, 2.6, 0.18, 0.2],
    ['size', (f: PracticeFace) => f.truth.browSize, 1, 0.05, 0.004, 0.004],
    ['roll', (f: PracticeFace) => f.truth.rollDeg, 0, 3.2, 0.22, 0.2],
    ['nose lean', (f: PracticeFace) => f.truth.leanMm, 0, 3, 0.21, 0.25],
  ])('[table] %s keeps its mean and spread', (_, of, mean, sd, meanWithin, sdWithin) => {
    const found = meanAndSd(of);
    expect(Math.abs(found.mean - mean)).toBeLessThan(meanWithin);
    expect(Math.abs(found.sd - sd)).toBeLessThan(sdWithin);
  });

  it('[table] arch share 0.62 ± 0.05', () => {
    const found = meanAndSd(
      (f) => (right(f).archTop[0] - right(f).frontLower[0]) / (right(f).tail[0] - right(f).frontLower[0]),
    );
    expect(Math.abs(found.mean - 0.62)).toBeLessThan(0.004);
    expect(Math.abs(found.sd - 0.05)).toBeLessThan(0.005);
  });

  it('[table] inner-corner distance is the equal mixture of the six cohorts of Bouhadana 2022', () => {
    const cohorts = [
      [38.5, 3.2],
      [36.4, 1.6],
      [32.8, 2.0],
      [32.3, 2.0],
      [31.4, 2.5],
      [31.2, 1.5],
    ] as const;
    const mean = cohorts.reduce((sum, [m]) => sum + m, 0) / 6;
    const variance = cohorts.reduce((sum, [m, s]) => sum + s * s + (m - mean) ** 2, 0) / 6;
    const found = meanAndSd((f) => 2 * right(f).innerCorner[0]);
    expect(Math.abs(found.mean - mean)).toBeLessThan(0.35);
    expect(Math.abs(found.sd - Math.sqrt(variance))).toBeLessThan(0.3);
  });
});

describe('levels add only what they say', () => {
  it('[property] level 0 mirrors exactly: change nothing', () => {
    for (const seed of seeds) {
      const { face, truth, solvable } = practiceFace(seed, 0);
      expect(face.landmarks.left).toEqual(face.landmarks.right);
      expect(truth.changeNothing).toBe(true);
      expect(truth.rollDeg).toBe(0);
      expect(truth.leanMm).toBe(0);
      expect(solvable).toBe(true);
    }
  });

  it('[property] level 1 lifts the whole left brow by one height and nothing else', () => {
    for (const seed of seeds) {
      const [plain, lifted] = [practiceFace(seed, 0), practiceFace(seed, 1)];
      expect(lifted.face.landmarks.right).toEqual(plain.face.landmarks.right);
      expect(lifted.face.landmarks.middle).toEqual(plain.face.landmarks.middle);
      expect(lifted.face.form).toEqual(plain.face.form);
      expect(lifted.truth.rollDeg).toBe(0);
      for (const mark of browMarks) {
        expect(left(lifted)[mark][0]).toBeCloseTo(left(plain)[mark][0], 9);
        expect(left(lifted)[mark][1] - left(plain)[mark][1]).toBeCloseTo(
          lifted.truth.browHeightDifferenceMm,
          9,
        );
      }
    }
  });

  it('[property] level 2 adds roll, tilt and size; the mean height of the brow stays', () => {
    for (const seed of seeds) {
      const [one, two] = [practiceFace(seed, 1), practiceFace(seed, 2)];
      expect(two.truth.browHeightDifferenceMm).toBeCloseTo(one.truth.browHeightDifferenceMm, 9);
      expect(two.truth.leanMm).toBe(0);
      expect(two.truth.rollDeg).not.toBe(0);
      expect(left(two).noseWing).toEqual(right(two).noseWing);
    }
  });

  it('[property] level 3 moves the nose base only', () => {
    for (const seed of seeds) {
      const [two, three] = [practiceFace(seed, 2), practiceFace(seed, 3)];
      const lean = three.truth.leanMm;
      expect(left(three).noseWing[0] - left(two).noseWing[0]).toBeCloseTo(lean, 9);
      expect(right(three).noseWing[0] - right(two).noseWing[0]).toBeCloseTo(-lean, 9);
      expect(three.face.landmarks.middle.nasion).toEqual(two.face.landmarks.middle.nasion);
      expect(three.face.landmarks.middle.chin).toEqual(two.face.landmarks.middle.chin);
      expect({ ...left(three), noseWing: 0 }).toEqual({ ...left(two), noseWing: 0 });
    }
  });
});

describe('the marks of every practice face', () => {
  it('[property] the answer key agrees with the marks in the picture', () => {
    for (const { markSet, truth } of many.slice(0, 300)) {
      const slope = -Math.tan((truth.rollDeg * Math.PI) / 180);
      expect(truth.midlineXAtBrowMm).toBeCloseTo(truth.browHeightMm * slope, 9);
      // Nasion, glabella and chin lie on the true midline.
      for (const name of ['glabella', 'nasion', 'chin'] as const) {
        expect(markSet.singles[name].xMm).toBeCloseTo(markSet.singles[name].yMm * slope, 9);
      }
    }
  });

  it('[library] the midline fitted through the eye pairs, without the nose, is the true one', () => {
    for (const { markSet, truth } of many.slice(0, 100)) {
      const { innerCorner, outerCorner, pupil } = markSet.pairs;
      const fit = fitMidline([innerCorner, outerCorner, pupil]);
      if (!fit.ok) throw new Error('three symmetric pairs fix a midline');
      expect(rollDeg(fit.line)).toBeCloseTo(truth.rollDeg, 6);
      const { normal, offsetMm } = fit.line;
      expect((offsetMm - normal.y * truth.browHeightMm) / normal.x).toBeCloseTo(truth.midlineXAtBrowMm, 6);
    }
  });

  it('[property] stay in sane ranges and in order', () => {
    for (const seed of seeds) {
      for (const level of levels) {
        const { landmarks } = practiceFace(seed, level).face;
        for (const side of ['right', 'left'] as const) {
          const m = landmarks[side];
          expect(m.pupil[0] - m.innerCorner[0]).toBeGreaterThan(9);
          expect(m.outerCorner[0] - m.pupil[0]).toBeGreaterThan(9);
          expect(m.archTop[1] - m.archLower[1]).toBeGreaterThan(2.5);
          expect(m.archLower[1]).toBeGreaterThan(4);
          expect(m.frontLower[0]).toBeGreaterThan(5);
          expect(m.frontLower[0]).toBeLessThan(m.archTop[0]);
          expect(m.archTop[0]).toBeLessThan(m.tail[0]);
          expect(m.tail[0]).toBeLessThan(73);
          expect(m.tail[1]).toBeLessThan(m.archTop[1]);
          for (const [u, v] of Object.values(m)) expect(Number.isFinite(u) && Number.isFinite(v)).toBe(true);
        }
      }
    }
  });

  it('[property] same seed and level, same face', () => {
    for (const seed of seeds.slice(0, 20)) expect(practiceFace(seed, 3)).toEqual(practiceFace(seed, 3));
  });

  it('[hand] not solvable within one standard uncertainty of the smallest real difference', () => {
    // u = √(2(0.3² + (0.25² + 0.05² + 0.25²)/3)) = 0.515; 1.96 u = 1.009.
    const u = Math.sqrt(2 * (0.09 + 0.1275 / 3));
    for (const { truth, solvable } of many) {
      const size = Math.abs(truth.browHeightDifferenceMm);
      expect(solvable).toBe(size < 0.96 * u || size > 2.96 * u);
    }
  });

  it('[property] faces differ to the eye: most pairs in at least four of eight features, hardly any in fewer than two', () => {
    const differing = many.slice(0, 600).map((one, i) => {
      const other = many[i + 700] ?? one;
      const [a, b] = [one.face.form, other.face.form];
      const width = ({ face }: PracticeFace) =>
        face.landmarks.right.noseWing[0] + face.landmarks.left.noseWing[0];
      return [
        a.lid !== b.lid,
        Math.abs(a.browBone - b.browBone) > 0.2,
        Math.abs(width(one) - width(other)) > 1.5,
        Math.abs(a.upperLipMm + a.lowerLipMm - b.upperLipMm - b.lowerLipMm) > 1,
        Math.abs(a.jawMm - b.jawMm) > 1.5,
        Math.abs(a.age - b.age) > 0.15,
        (a.scar === undefined) !== (b.scar === undefined),
        (a.vitiligo === undefined) !== (b.vitiligo === undefined),
      ].filter(Boolean).length;
    });
    const shareWith = (least: number): number =>
      differing.filter((count) => count >= least).length / differing.length;
    expect(shareWith(4)).toBeGreaterThan(0.8);
    expect(shareWith(2)).toBeGreaterThan(0.975);
  });
});

describe('a second reading', () => {
  it('[property] scatters by the technical error asked for, both ways, and is repeatable by seed', () => {
    const { markSet } = practiceFace(7, 3);
    const errors = seeds.flatMap((seed) => {
      const again = readAgain(markSet, seed, 0.3);
      return browMarks.map((mark) => again.brows[mark].left.yMm - markSet.brows[mark].left.yMm);
    });
    const mean = errors.reduce((sum, e) => sum + e, 0) / errors.length;
    const sd = Math.sqrt(errors.reduce((sum, e) => sum + (e - mean) ** 2, 0) / (errors.length - 1));
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(Math.abs(sd - 0.3)).toBeLessThan(0.03);
    expect(readAgain(markSet, 3)).toEqual(readAgain(markSet, 3));
    expect(readAgain(markSet, 3)).not.toEqual(readAgain(markSet, 4));
  });

  it('[hand] without error it only rounds to 0.1 mm', () => {
    const again = readAgain(practiceFace(9, 3).markSet, 1, 0);
    expect(again.pairs.pupil.left.xMm * 10).toBeCloseTo(Math.round(again.pairs.pupil.left.xMm * 10), 9);
  });
});
