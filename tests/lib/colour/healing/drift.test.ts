import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { drift } from '#lib/colour/healing/drift.ts';
import { asPutIn, mixOutlook } from '#lib/colour/healing/mixOutlook.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { plainPrediction, type Plan } from '#lib/colour/healing/uncertainHealing.ts';

const skin = skinOptics({ l: 63, a: 10, b: 19 });
if (!skin.ok) throw new Error(skin.reason);
const plan: Plan = {
  shares: sharesOf([1, 0, 1, 0, 0, 3, 0, 0, 0, 1, 0, 1], bottles),
  dose: 0.3,
  setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
  ageing: startAgeing,
  doubts: startDoubts,
};
const times = [0, 1, 2];
const sure = { strength: 0, dose: 0, depth: 0, kept: 0, lost: 0, veilLo: 0.35, veilHi: 0.35 };

test('[hand] fresh, six weeks, then 52 weeks to the year', () => {
  expect(drift(skin, plan, times, 5, 1).map(({ weeks }) => weeks)).toEqual([0, 6, 58, 110]);
});

test('[property] it begins with all pigment there and goes on as the plain prediction, under either lamp', () => {
  const [fresh, ...later] = drift(skin, plan, times, 5, 1);
  expect(fresh?.plain).toEqual(asPutIn(skin, plan.shares, plan.dose, plan.setting));
  later.forEach(({ plain }, i) => expect(plain).toEqual(plainPrediction(skin, plan, times[i] ?? NaN)));
  const [warm] = drift(skin, plan, times, 5, 1, 'A');
  expect(warm?.plain).toEqual(asPutIn(skin, plan.shares, plan.dose, plan.setting, 'A'));
  expect(warm?.plain.a ?? NaN).toBeGreaterThan((fresh?.plain.a ?? NaN) + 2);
});

test('[property] the intervals are those of the same seeded healings: L* as in the outlook, under the lamp', () => {
  for (const lamp of ['D65', 'A'] as const) {
    const outlook = mixOutlook(skin, plan, times, 60, 3, lamp);
    drift(skin, plan, times, 60, 3, lamp)
      .slice(1)
      .forEach(({ l }, i) => expect(l).toEqual(outlook.times[i]?.lightness));
  }
});

test('[property] with no doubt every interval is its own middle, L*, a* and b* each', () => {
  for (const { plain, l, a, b } of drift(skin, { ...plan, doubts: sure }, times, 3, 1)) {
    for (const [middle, [lo, hi]] of [
      [plain.l, l],
      [plain.a, a],
      [plain.b, b],
    ] as const) {
      expect(lo).toBeCloseTo(middle, 9);
      expect(hi).toBeCloseTo(middle, 9);
    }
  }
});

test('[property] fresh is as sure of what is kept as can be: only dose, depth, strength and veil are in doubt', () => {
  const onlyKept = { ...plan, doubts: { ...sure, kept: 0.5, lost: 0.5 } };
  const [fresh, healed] = drift(skin, onlyKept, times, 60, 1);
  expect((fresh?.l[1] ?? NaN) - (fresh?.l[0] ?? NaN)).toBeLessThan(1e-9);
  expect((healed?.l[1] ?? NaN) - (healed?.l[0] ?? NaN)).toBeGreaterThan(1);
  const [doubtful] = drift(skin, plan, times, 60, 1);
  expect((doubtful?.l[1] ?? NaN) - (doubtful?.l[0] ?? NaN)).toBeGreaterThan(1);
});
