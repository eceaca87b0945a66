import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { rangesOf, withoutWarm } from '#lib/colour/layers/darkPart.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { asPutIn, mixOutlook } from '#lib/colour/healing/mixOutlook.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { leftOf, plainPrediction, type Plan } from '#lib/colour/healing/uncertainHealing.ts';

const skin = skinOptics({ l: 63, a: 10, b: 19 });
if (!skin.ok) throw new Error(skin.reason);
const shares = sharesOf([0, 0, 1, 0, 0, 3], bottles);
const plan: Plan = {
  shares,
  dose: 0.3,
  setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
  ageing: startAgeing,
  doubts: startDoubts,
};
const outlook = mixOutlook(skin, plan, [0, 1, 2], 400, 1);

test('[property] the plain prediction of each time lies inside its band, which runs from dark to light', () => {
  outlook.times.forEach(({ years, plain, band, lightness: [lo, hi] }) => {
    expect(plain).toEqual(plainPrediction(skin, plan, years));
    expect(band).toHaveLength(5);
    expect(band.map(({ l }) => l)).toEqual(band.map(({ l }) => l).toSorted((a, b) => a - b));
    expect(lo < plain.l && plain.l < hi).toBe(true);
    expect(Math.abs((band[0]?.l ?? NaN) - lo)).toBeLessThan(0.3);
    expect(Math.abs((band[4]?.l ?? NaN) - hi)).toBeLessThan(0.3);
  });
});

test('[property] one stroke is darker than the brow from arm’s length, and the brow darker than the skin', () => {
  for (const { covered, plain } of outlook.times) {
    expect(covered.l).toBeLessThan(plain.l);
    expect(plain.l).toBeLessThan(outlook.today.l);
  }
});

test('[property] without yellow and red what is left is lighter and less red at every date, less yellow in the end, each with its range', () => {
  for (const { plain, dark } of outlook.times) {
    expect(dark.plain.a).toBeLessThan(plain.a);
    expect(dark.plain.l).toBeGreaterThan(plain.l);
    for (const axis of ['l', 'a', 'b'] as const)
      expect(dark.ranges[axis][0] < dark.plain[axis] && dark.plain[axis] < dark.ranges[axis][1]).toBe(true);
  }
  const last = outlook.times.at(-1);
  expect(last?.dark.plain.b).toBeLessThan(last?.plain.b ?? NaN);
});

test('[hand] the dark part is what is left with yellow and red at nothing; a mix of black alone has no other part', () => {
  const left = leftOf(startAgeing, 1);
  expect(leftOf(withoutWarm(startAgeing), 1)).toEqual({ ...left, '77492': 0, '77491': 0 });
  expect(outlook.times[1]?.dark.plain).toEqual(
    healedColour(skin, mixLayer(shares, 0.3, { ...left, '77492': 0, '77491': 0 }), plan.setting),
  );
  const black = mixOutlook(
    skin,
    { ...plan, shares: { '77891': 0, '77492': 0, '77491': 0, '77499': 1, '77266': 0 } },
    [0],
    40,
    1,
  );
  expect(black.times[0]?.dark.plain).toEqual(black.times[0]?.plain);
});

test('[hand] nothing lost: the same as a layer of the whole dose; six weeks on, what is left', () => {
  expect(asPutIn(skin, shares, 0.3, plan.setting)).toEqual(
    healedColour(skin, mixLayer(shares, 0.3), plan.setting),
  );
  expect(outlook.times[0]?.plain).toEqual(
    healedColour(skin, mixLayer(shares, 0.3, leftOf(startAgeing, 0)), plan.setting),
  );
});

test('[property] leaning shares are shares, and no doubt means no lean', () => {
  const sure = mixOutlook(
    skin,
    { ...plan, doubts: { strength: 0, dose: 0, depth: 0, kept: 0, lost: 0, veilLo: 0.35, veilHi: 0.35 } },
    [0],
    20,
    2,
  );
  expect([sure.times[0]?.leanRed, sure.times[0]?.leanGreen]).toEqual([0, 0]);
  for (const { leanRed, leanGreen } of outlook.times)
    expect(leanRed >= 0 && leanGreen >= 0 && leanRed + leanGreen <= 1).toBe(true);
});

test('[property] under tungsten today is redder than under daylight', () => {
  const warm = mixOutlook(skin, plan, [0], 10, 1, 'A');
  expect(warm.today.a).toBeGreaterThan(outlook.today.a + 2);
  expect(warm.times[0]?.plain.a ?? NaN).toBeGreaterThan((outlook.times[0]?.plain.a ?? NaN) + 2);
});

test('[hand] ranges leave a twentieth out at both ends, each coordinate on its own', () => {
  const labs = Array.from({ length: 21 }, (_, i) => ({ l: i, a: 2 * i, b: -i }));
  expect(rangesOf(labs)).toEqual({ l: [1, 19], a: [2, 38], b: [-19, -1] });
});
