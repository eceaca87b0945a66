import { expect, test } from 'vitest';
import { signedDistanceMm } from '#lib/geometry/line.ts';
import { levelReference } from '#skills/mapping/levelReference.ts';
import { levelReferenceWords } from '#words/skills/levelReference.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(levelReference, levelReferenceWords, seed);
});

test('[property] the answer is the difference of distances from the line, made straight up again', () => {
  for (let seed = 0; seed < 1000; seed++) {
    const given = levelReference.given(seed);
    const { corners, fronts, higher } = given;
    const angle = Math.atan2(
      corners.left.upMm - corners.right.upMm,
      corners.left.alongMm - corners.right.alongMm,
    );
    const normal = { x: -Math.sin(angle), y: Math.cos(angle) };
    const line = { normal, offsetMm: normal.x * corners.right.alongMm + normal.y * corners.right.upMm };
    const over = ({ alongMm, upMm }: { alongMm: number; upMm: number }) =>
      signedDistanceMm({ xMm: alongMm, yMm: upMm }, line) / Math.cos(angle);
    const difference = over(fronts.left) - over(fronts.right);
    const answer = levelReference.answer(given);
    if (answer.kind !== 'number') throw new Error('not a number');
    expect(answer.exact).toBeCloseTo(higher === 'left' ? difference : -difference, 9);
    expect(answer.exact).toBeGreaterThan(0.3);
  }
});

test('[property] no degenerate picture: the line plainly slopes, the fronts stand between the corners and over them', () => {
  for (let seed = 0; seed < 1000; seed++) {
    const { corners, fronts } = levelReference.given(seed);
    expect(Math.abs(corners.left.upMm - corners.right.upMm)).toBeGreaterThanOrEqual(2);
    expect(fronts.right.alongMm).toBeGreaterThan(20);
    expect(fronts.left.alongMm).toBeLessThan(corners.left.alongMm - 10);
    expect(
      Math.min(fronts.left.upMm, fronts.right.upMm) - Math.max(corners.left.upMm, corners.right.upMm),
    ).toBeGreaterThan(3);
  }
});
