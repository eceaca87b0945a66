import { expect, test } from 'vitest';
import type { Line } from '#lib/geometry/line.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import type { MirrorMarks } from '#lib/mapping/midline/midline.ts';
import { hasRivalMidline } from '#lib/mapping/midline/rivalMidline.ts';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { noisy, noseOff, plainFace, symmetricFace } from '../faces.ts';

/** Single marks one above the other, each so many mm from x = 0. */
const column = (places: readonly number[]): readonly MirrorMarks[] =>
  places.map((xMm, i) => {
    const point = { xMm, yMm: 12 * (i % 4) + (i >= 4 ? 5 : 0) };
    return { right: point, left: point };
  });

test('[hand] six marks on one line and two on another 6 mm beside it: one midline; so on a face without a flaw; no marks, none', () => {
  expect(hasRivalMidline(column([0, 0, 0, 0, 0, 0, 6, 6]))).toBe(false);
  expect(hasRivalMidline(mirrorMarksOf(plainFace))).toBe(false);
  expect(hasRivalMidline([])).toBe(false);
});

test('[property] where moving one mark by 0.1 mm moves the answer at the brows by more than half a mm, it is said; on faces read well it never is', () => {
  const lineOf = (marks: readonly MirrorMarks[]): Line => {
    const fit = fitRobustMidline(marks);
    if (!fit.ok) throw new Error('a face fixes a midline');
    return fit.line;
  };
  // Where the line passes 20 mm over the pupils, and the height of a tail 60 mm out.
  const at = ({ normal, offsetMm }: Line) => [
    (offsetMm - normal.y * 20) / normal.x,
    (60 * normal.y) / normal.x,
  ];
  let [jumps, said] = [0, 0];
  for (let seed = 0; seed < 250; seed++) {
    const face = noseOff(symmetricFace(seed), (seed % 13) - 6);
    for (const noise of [0.36, 1, 1.8]) {
      const marks = mirrorMarksOf(noisy(face, noise, drawFrom(seed + 1)));
      const before = at(lineOf(marks));
      const isJump = marks.some((_, i) =>
        [0.1, -0.1].some((by) => {
          const moved = marks.map((mark, k) =>
            k === i ? { ...mark, right: { ...mark.right, xMm: mark.right.xMm + by } } : mark,
          );
          return at(lineOf(moved)).some((mm, k) => Math.abs(mm - (before[k] ?? NaN)) > 0.5);
        }),
      );
      if (!isJump) continue;
      jumps++;
      if (hasRivalMidline(marks)) said++;
    }
    expect(hasRivalMidline(mirrorMarksOf(noisy(symmetricFace(seed), 0.3, drawFrom(seed))))).toBe(false);
  }
  expect(jumps).toBeGreaterThan(2);
  expect(said / jumps).toBeGreaterThan(0.7);
});
