import { describe, expect, it } from 'vitest';
import { defaultFace } from '#lib/face/face.ts';
import { faceMarks } from '#lib/face/faceMarks.ts';
import { mapMarks, readAgain, roundedMarks } from '#lib/face/readAgain.ts';
import { drawFrom, drawNormal, seedFrom } from '#lib/quantities/seed.ts';
import type { MarkSet } from '#lib/mapping/marks/markSet.ts';
import { meanOf, sdOf } from './draws.ts';

const truth = faceMarks(defaultFace.landmarks, 3.3, { pose: 'raised', posture: 'lying', skin: 'numb' });
/** All marks on whole millimetres, so that an error is what was read less what is. */
const whole = mapMarks(truth, ({ xMm, yMm }) => ({ xMm: Math.round(xMm), yMm: Math.round(yMm) }));

function numbersOf({ pairs, singles, brows }: MarkSet): readonly number[] {
  const points = [...Object.values(pairs), ...Object.values(brows)].flatMap(({ right, left }) => [
    right,
    left,
  ]);
  return [...points, ...Object.values(singles)].flatMap(({ xMm, yMm }) => [xMm, yMm]);
}

function errorsOf(seed: number, temMm: number): readonly number[] {
  const are = numbersOf(whole);
  return numbersOf(readAgain(whole, seed, temMm)).map((read, i) => read - (are[i] ?? Number.NaN));
}

describe('reading to 0.1 mm', () => {
  it('[hand] halves go up, and nought is never minus nought', () => {
    const read = (mm: number): number => {
      const one = mapMarks(truth, () => ({ xMm: mm, yMm: -mm }));
      return roundedMarks(one).singles.chin.xMm;
    };
    expect(read(12.34)).toBe(12.3);
    expect(read(12.36)).toBe(12.4);
    expect(read(-12.36)).toBe(-12.4);
    expect(read(0.25)).toBe(0.3);
    expect(read(-0.04)).toBe(0);
  });

  it('[property] every mark is read, each on its own; how the set was taken stays', () => {
    // 4 face pairs and 5 brow pairs, 4 marks down the middle: 22 points.
    expect(numbersOf(truth)).toHaveLength(44);
    const moved = mapMarks(truth, ({ xMm, yMm }) => ({ xMm: xMm + 1, yMm: yMm - 1 }));
    const before = numbersOf(truth);
    numbersOf(moved).forEach((value, i) =>
      expect(value).toBeCloseTo((before[i] ?? Number.NaN) + (i % 2 === 0 ? 1 : -1), 9),
    );
    expect(moved.taken).toEqual({ pose: 'raised', posture: 'lying', skin: 'numb' });
    expect(Object.keys(moved.pairs)).toEqual(Object.keys(truth.pairs));
    expect(Object.keys(moved.singles)).toEqual(Object.keys(truth.singles));
    expect(Object.keys(moved.brows)).toEqual(Object.keys(truth.brows));
  });
});

describe('reading again', () => {
  it('[property] without error, any seed gives the true marks to 0.1 mm', () => {
    for (const seed of [1, 2, 3]) expect(readAgain(truth, seed, 0)).toEqual(roundedMarks(truth));
  });

  it.each([0.3, 1])(
    '[property] 2000 readings with a technical error of %d mm scatter by it and stay inside three of it',
    (temMm) => {
      const errors = Array.from({ length: 2000 }, (_, seed) => errorsOf(seed, temMm)).flat();
      // 88 000 numbers: the mean within five standard errors; rounding adds 0.1²/12 to the variance, the cut
      // at three takes 1.3 % off the spread.
      expect(Math.abs(meanOf(errors))).toBeLessThan((5 * temMm) / Math.sqrt(88_000));
      const withRounding = Math.hypot(temMm, 0.1 / Math.sqrt(12));
      expect(sdOf(errors) / withRounding).toBeGreaterThan(0.975);
      expect(sdOf(errors) / withRounding).toBeLessThan(1.0);
      const largest = Math.max(...errors.map(Math.abs));
      expect(largest).toBeLessThanOrEqual(3 * temMm + 0.05 + 1e-9);
      expect(largest).toBeGreaterThan(2.8 * temMm);
    },
  );

  it('[property] both coordinates of a mark have their own error', () => {
    const errors = errorsOf(5, 1);
    expect(new Set(errors.map((error) => error.toFixed(1))).size).toBeGreaterThan(15);
  });

  it('[property] the errors come off the stream named "reading" in turn and are added', () => {
    for (const seed of [1, 2, 5, 8]) {
      const draw = drawFrom(seedFrom('reading', seed));
      const [x, y] = [drawNormal(draw), drawNormal(draw)];
      if (Math.max(Math.abs(x), Math.abs(y)) > 3) continue;
      const { innerCorner } = readAgain(whole, seed, 1).pairs;
      expect(Math.abs(innerCorner.right.xMm - whole.pairs.innerCorner.right.xMm - x)).toBeLessThanOrEqual(
        0.05 + 1e-9,
      );
      expect(Math.abs(innerCorner.right.yMm - whole.pairs.innerCorner.right.yMm - y)).toBeLessThanOrEqual(
        0.05 + 1e-9,
      );
    }
  });

  it('[property] without a named error it is 0.3 mm', () => {
    expect(readAgain(truth, 4)).toEqual(readAgain(truth, 4, 0.3));
    expect(readAgain(truth, 4)).not.toEqual(readAgain(truth, 4, 0.5));
  });
});
