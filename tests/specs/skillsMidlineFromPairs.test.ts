import { expect, test } from 'vitest';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { midlineFromPairs } from '#skills/mapping/midlineFromPairs.ts';
import { midlineFromPairsWords } from '#words/skills/midlineFromPairs.ts';
import { checkSeed } from './skillCheck.ts';

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (let seed = 0; seed < 1000; seed++) checkSeed(midlineFromPairs, midlineFromPairsWords, seed);
});

test('[property] the answer is the closed form of the midline, for every seed', () => {
  for (let seed = 0; seed < 1000; seed++) {
    const given = midlineFromPairs.given(seed);
    const marks = (['innerCorner', 'pupil', 'outerCorner'] as const).map((name) => ({
      right: { xMm: given.pairs[name].rightMm, yMm: 0 },
      left: { xMm: given.pairs[name].leftMm, yMm: 0 },
    }));
    const fit = fitMidline(marks);
    const answer = midlineFromPairs.answer(given);
    if (!fit.ok || answer.kind !== 'number') throw new Error(`Seed ${seed} has no midline.`);
    expect(fit.line.normal.x).toBeCloseTo(1, 10);
    expect(answer.exact).toBeCloseTo(fit.line.offsetMm, 9);
  }
});

test('[property] no degenerate picture: left beyond right, all on a 150 mm ruler, the nose plainly to one side', () => {
  for (let seed = 0; seed < 1000; seed++) {
    const { pairs, leans } = midlineFromPairs.given(seed);
    for (const { rightMm, leftMm } of Object.values(pairs)) {
      expect(leftMm - rightMm).toBeGreaterThan(18);
      expect(rightMm).toBeGreaterThan(5);
      expect(leftMm).toBeLessThan(120);
    }
    const eyes =
      (pairs.pupil.rightMm + pairs.pupil.leftMm + pairs.outerCorner.rightMm + pairs.outerCorner.leftMm) / 4;
    const nose = (pairs.noseWing.rightMm + pairs.noseWing.leftMm) / 2;
    expect(Math.sign(nose - eyes)).toBe(leans === 'left' ? 1 : -1);
  }
});
