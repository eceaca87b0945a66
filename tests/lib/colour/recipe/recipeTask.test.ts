import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { colourerOf, keepsLook, scorerOf, sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

test('[hand] a colour keeps its limits up to and on them: darker by 3 of 3, a hue 15° away on either side, also across red', () => {
  const target = { l: 50, a: 10, b: 0 };
  const at = (l: number, hDeg: number) => ({
    l,
    a: 10 * Math.cos((hDeg * Math.PI) / 180),
    b: 10 * Math.sin((hDeg * Math.PI) / 180),
  });
  const keeps = (l: number, hDeg: number) =>
    keepsLook(at(l, hDeg), { target, mostDarker: 3, mostLeanDeg: 15 });
  expect([keeps(47, 0), keeps(46.99, 0), keeps(80, 0)]).toEqual([true, false, true]);
  expect([keeps(50, 15), keeps(50, 345), keeps(50, 15.01), keeps(50, 344.99), keeps(50, 180)]).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
  expect([
    keepsLook(at(10, 180), { target }),
    keepsLook(at(10, 0), { target, mostLeanDeg: 1 }),
    keepsLook(at(60, 180), { target, mostDarker: 0 }),
  ]).toEqual([true, true, true]);
});

test('[hand] drops become shares; the score is the worse of the dates', () => {
  const shares = sharesOf(
    [1, 0, 3],
    [
      { id: 'a', shares: { '77891': 1, '77492': 0, '77491': 0, '77499': 0, '77266': 0 } },
      { id: 'b', shares: { '77891': 0, '77492': 1, '77491': 0, '77499': 0, '77266': 0 } },
      { id: 'c', shares: { '77891': 0, '77492': 0.5, '77491': 0.5, '77499': 0, '77266': 0 } },
    ],
  );
  expect(shares).toEqual({ '77891': 0.25, '77492': 0.375, '77491': 0.375, '77499': 0, '77266': 0 });
  const skin = skinOptics({ l: 63, a: 10, b: 19 });
  if (!skin.ok) throw new Error(skin.reason);
  const base = {
    skin,
    setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
    bottles,
    ageing: startAgeing,
    doses: [0.2],
    mostBottles: 2,
    mostDrops: 2,
    mostWhiteShare: 1,
    times: [0, 2],
  };
  const [, later] = colourerOf({ ...base, target: { l: 40, a: 10, b: 12 } })([0, 0, 0, 0, 0, 0, 1], 0.2);
  if (!later) throw new Error('no colour');
  expect(scorerOf({ ...base, times: [2], target: later })([0, 0, 0, 0, 0, 0, 1], 0.2)).toBe(0);
  expect(scorerOf({ ...base, target: later })([0, 0, 0, 0, 0, 0, 1], 0.2)).toBeGreaterThan(1);
});
