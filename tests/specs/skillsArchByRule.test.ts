import { expect, test } from 'vitest';
import { archByRule } from '#skills/mapping/archByRule.ts';
import { archByRuleWords, askedArchRules } from '#words/skills/archByRule.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (const seed of seeds) checkSeed(archByRule, archByRuleWords, seed);
});

test('[property] the answer lies inside its line, and every rule is asked often', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const given = archByRule.given(seed);
    const answer = archByRule.answer(given);
    if (answer.kind !== 'number') throw new Error('not a number');
    expect(answer.exact, `seed ${seed}`).toBeGreaterThan(34);
    expect(answer.exact, `seed ${seed}`).toBeLessThan(50);
    counts.set(given.asked, (counts.get(given.asked) ?? 0) + 1);
  }
  for (const rule of askedArchRules) expect(counts.get(rule)).toBeGreaterThan(200);
});

test('[property] no side differs by more than hands can miss: 1.2 mm at most', () => {
  for (const seed of seeds) {
    const { brows, eyes } = archByRule.given(seed);
    for (const [right, left] of [
      [brows.right.frontMm, brows.left.frontMm],
      [brows.right.tailMm, brows.left.tailMm],
      [eyes.right.innerMm, eyes.left.innerMm],
      [eyes.right.outerMm, eyes.left.outerMm],
    ]) {
      expect(Math.abs((right ?? 0) - (left ?? 0)), `seed ${seed}`).toBeLessThanOrEqual(1.2 + 1e-9);
    }
  }
});

test('[hand] fronts 14.2 and 13.8, tails 57.5 and 57.0: 14 and 57.25; 43.25 × 0.618034 = 26.73; the arch at 40.73', () => {
  const given = {
    brows: { right: { frontMm: 14.2, tailMm: 57.5 }, left: { frontMm: 13.8, tailMm: 57 } },
    eyes: { right: { innerMm: 16, outerMm: 46 }, left: { innerMm: 16, outerMm: 46 } },
  };
  const exact = (asked: (typeof askedArchRules)[number]) => {
    const answer = archByRule.answer({ ...given, asked });
    return answer.kind === 'number' ? answer.exact : NaN;
  };
  expect(exact('golden-from-front')).toBeCloseTo(40.73, 2);
  expect(exact('two-thirds')).toBeCloseTo(14 + (2 * 43.25) / 3, 9);
  expect(exact('women')).toBeCloseTo(16 + 0.929 * 30, 9);
  const slip = (id: string) =>
    Number(archByRule.slips.find((one) => one.id === id)?.value({ ...given, asked: 'golden-from-front' }));
  expect(slip('from-the-far-end')).toBeCloseTo(30.52, 2);
  expect(slip('forgot-the-start')).toBeCloseTo(26.73, 2);
  expect(slip('right-alone')).toBeCloseTo(14.2 + 0.618034 * 43.3, 4);
  expect(slip('left-alone')).toBeCloseTo(13.8 + 0.618034 * 43.2, 4);
});
