import { expect, test } from 'vitest';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import {
  leftOf,
  ninetyOf,
  outcomesAround,
  plainPrediction,
  simulatedHealings,
  type Plan,
} from '#lib/colour/healing/uncertainHealing.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';

const skin = skinOptics({ l: 63, a: 10, b: 19 });
if (!skin.ok) throw new Error(skin.reason);
const plan: Plan = {
  shares: { '77891': 0.05, '77492': 0.45, '77491': 0.25, '77499': 0.25, '77266': 0 },
  dose: 0.2,
  setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
  ageing: startAgeing,
  doubts: startDoubts,
};

test('[hand] what is left after two years: kept × (1 − lost)²', () => {
  const left = leftOf({ ...startAgeing, '77492': { keptAtSixWeeks: 0.6, lostPerYear: 0.3 } }, 2);
  expect(left['77492']).toBeCloseTo(0.294, 12);
  expect(leftOf(startAgeing, 0)['77266']).toBe(startAgeing['77266'].keptAtSixWeeks);
});

test('[property] with no doubt every healing is the plain prediction', () => {
  const sure: Plan = {
    ...plan,
    doubts: { strength: 0, dose: 0, depth: 0, kept: 0, lost: 0, veilLo: 0.35, veilHi: 0.35 },
  };
  const [healing] = simulatedHealings(skin, sure, [0, 2], 1, 7);
  [0, 2].forEach((years, i) => {
    const plain = plainPrediction(skin, sure, years);
    expect(healing?.[i]?.l).toBeCloseTo(plain.l, 10);
    expect(healing?.[i]?.b).toBeCloseTo(plain.b, 10);
  });
  expect(plainPrediction(skin, sure, 0).l).toBeCloseTo(
    healedColour(skin, mixLayer(sure.shares, sure.dose, leftOf(sure.ageing, 0)), sure.setting).l,
    12,
  );
});

test('[property] the same seed gives the same healings, another seed others; years make every healing lighter', () => {
  const first = simulatedHealings(skin, plan, [0, 1, 2], 40, 3);
  expect(simulatedHealings(skin, plan, [0, 1, 2], 40, 3)).toEqual(first);
  expect(simulatedHealings(skin, plan, [0, 1, 2], 40, 4)).not.toEqual(first);
  for (const [weeks, one, two] of first) {
    expect((weeks?.l ?? NaN) <= (one?.l ?? NaN) + 1e-9 && (one?.l ?? NaN) <= (two?.l ?? NaN) + 1e-9).toBe(
      true,
    );
  }
});

test('[property] the band of 400 healings holds 88 to 92 of 100 fresh ones', () => {
  const lights = (seed: number, draws: number) =>
    simulatedHealings(skin, plan, [0], draws, seed).map(([lab]) => lab?.l ?? NaN);
  let held = 0;
  let all = 0;
  for (let seed = 0; seed < 8; seed++) {
    const [lo, hi] = ninetyOf(lights(seed, 400));
    const fresh = lights(seed + 100, 250);
    held += fresh.filter((value) => value >= lo && value <= hi).length;
    all += fresh.length;
  }
  expect(held / all).toBeGreaterThan(0.88);
  expect(held / all).toBeLessThan(0.92);
});

test('[hand] twentieths of 1 to 21; counts around a target', () => {
  expect(ninetyOf(Array.from({ length: 21 }, (_, i) => i + 1))).toEqual([2, 20]);
  const target = { l: 40, a: 10, b: 10 };
  const outcomes = outcomesAround(
    [target, { l: 37, a: 10, b: 10 }, { l: 40, a: 10, b: 4 }, { l: 40, a: 4, b: 10 }],
    target,
    1,
  );
  expect(outcomes).toEqual({ near: 0.25, darker: 0.25, leanRed: 0.25, leanGreen: 0.25 });
});
