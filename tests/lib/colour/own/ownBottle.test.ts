import { expect, test } from 'vitest';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { masstone } from '#lib/colour/layers/masstone.ts';
import { mixOutlook } from '#lib/colour/healing/mixOutlook.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { calibrateSwatches } from '#lib/colour/own/calibrateSwatches.ts';
import { readyBottles } from '#lib/colour/own/readyBottles.ts';
import { assumedScatter, type OwnContent, readyBottle } from '#lib/colour/own/ownBottle.ts';
import { mixLayer, pigmentLayers, type Shares } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { leftOf, simulatedHealings } from '#lib/colour/healing/uncertainHealing.ts';
import { pigmentPowders } from '#lib/tables/pigmentPowders.ts';

const skin = skinOptics({ l: 54, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const ready = (content: OwnContent) => {
  const made = readyBottle({ slot: 'own1', content });
  if (!made.ok) throw new Error(`${made.at}: ${made.reason}`);
  return made;
};
const setting = { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 };
const plan = (shares: Shares) => ({ shares, dose: 0.3, setting, ageing: startAgeing, doubts: startDoubts });

test('[hand] parts and per cent are the same bottle; one of the palette typed in again is that bottle', () => {
  const parts = ready({ from: 'shares', parts: { '77492': 5, '77491': 2, '77499': 3 } }).bottle.shares;
  const perCent = ready({ from: 'shares', parts: { '77492': 50, '77491': 20, '77499': 30 } }).bottle.shares;
  expect(parts).toEqual(perCent);
  expect(parts).toEqual(bottles.find(({ id }) => id === 'brown-yellow-heavy')?.shares);
});

test('[hand] two swatches: K and S of the calibrated bottle, its strength and its miss are handed on; a bad tint is refused at its field', () => {
  const two = {
    from: 'two-swatches',
    masstone: { l: 34, a: 10, b: 28 },
    tint: { l: 62, a: 6, b: 26 },
    drops: 1,
    whiteDrops: 4,
    finish: 'matt',
  } as const;
  const found = calibrateSwatches(two);
  const made = ready(two);
  if (!found.ok) throw new Error(found.reason);
  expect(made).toEqual({
    ok: true,
    bottle: {
      id: 'own1',
      shares: { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0, own: found.layer },
    },
    isTested: true,
    calibrated: { scatter: found.scatter, tintMiss: found.tintMiss },
  });
  expect(readyBottle({ slot: 'own1', content: { ...two, tint: { l: 20, a: 6, b: 10 } } })).toEqual({
    ok: false,
    at: 'tint',
    reason: 'tint-not-lighter',
  });
  expect(ready({ from: 'shares', parts: { '77492': 1 } }).isTested).toBe(true);
});

test('[hand] bottles that can be mixed, in their order; one that cannot is left out', () => {
  const parts = { from: 'shares', parts: { '77492': 1 } } as const;
  const violet = { from: 'swatch', lab: { l: 20, a: 40, b: -60 }, finish: 'matt' } as const;
  expect(
    readyBottles([
      { slot: 'own7', name: 'a', content: parts },
      { slot: 'own2', name: 'b', content: violet },
      { slot: 'own1', name: 'c', content: parts },
    ]).map(({ id }) => id),
  ).toEqual(['own7', 'own1']);
});

test('[hand] shares of nothing, below zero or beyond numbers are refused', () => {
  const at = (parts: Readonly<Record<string, number>>) =>
    readyBottle({ slot: 'own1', content: { from: 'shares', parts } });
  expect(at({})).toEqual({ ok: false, at: 'shares', reason: 'no-shares' });
  expect(at({ '77492': -1, '77491': 5 })).toEqual({ ok: false, at: 'shares', reason: 'below-zero' });
  expect(at({ '77492': NaN })).toEqual({ ok: false, at: 'shares', reason: 'below-zero' });
  expect(at({ '77492': 1e308, '77491': 1e308 })).toEqual({ ok: false, at: 'shares', reason: 'no-shares' });
});

test('[hand] a matt swatch keeps its own colour in the bottle', () => {
  const lab = { l: 46.8, a: 11.5, b: 37.8 };
  const { bottle, isTested } = ready({ from: 'swatch', lab, finish: 'matt' });
  const back = masstone(bottle.shares);
  expect(Math.hypot(back.l - lab.l, back.a - lab.a, back.b - lab.b)).toBeLessThan(1e-9);
  expect(bottle.shares.own?.[0]?.s).toBe(assumedScatter);
  expect(isTested).toBe(true);
  expect(
    readyBottle({ slot: 'own1', content: { from: 'swatch', lab: { l: 20, a: 40, b: -60 }, finish: 'matt' } }),
  ).toEqual({ ok: false, at: 'swatch', reason: 'blue-or-violet' });
  expect(ready({ from: 'swatch', lab: { l: 40, a: -20, b: 15 }, finish: 'matt' }).isTested).toBe(false);
});

test('[table] measured yellow ochre by its swatch alone heals within 0.8 ΔE00 of its spectrum in skin', () => {
  const measured = pigmentPowders.yellowOchre;
  const own = measured.map((value) => ({
    k: (assumedScatter * (1 - value) ** 2) / (2 * value),
    s: assumedScatter,
  }));
  const truth: Shares = { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0, own };
  const guess = ready({ from: 'swatch', lab: spectrumToLab(measured), finish: 'matt' }).bottle.shares;
  const [one, other] = [truth, guess].map(
    (shares) => mixOutlook(skin, plan(shares), [0], 1, 1).times[0]?.plain,
  );
  if (!one || !other) throw new Error('No prediction.');
  expect(ciede2000(one, other)).toBeLessThan(0.8);
});

test('[hand] three drops of a swatch with one of white: K and S by drops, K 1 and S 2 at unit dose', () => {
  const layer = pigmentLayers['77891'].map(() => ({ k: 1, s: 2 }));
  const own = {
    id: 'own1',
    shares: { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0, own: layer },
  };
  const white = { id: 'white', shares: { '77891': 1, '77492': 0, '77491': 0, '77499': 0, '77266': 0 } };
  const shares = sharesOf([3, 1, 0], [own, white, { ...own, id: 'own2' }]);
  expect(shares['77891']).toBe(0.25);
  expect(shares.own?.[7]).toEqual({ k: 0.75, s: 1.5 });
  // S of the white at unit dose is 1.2; a dose of 0.5, of which all of the white and half of the swatch is
  // left.
  const mixed = mixLayer(shares, 0.5, { '77891': 1, ownLeft: 0.5 })[7];
  expect(mixed?.s).toBeCloseTo(0.5 * (0.25 * 1.2 + 0.5 * 1.5), 12);
  expect(mixLayer(shares, 0.5)[7]?.s).toBeCloseTo(0.5 * (0.25 * 1.2 + 1.5), 12);
  expect(sharesOf([0, 1, 0], [own, white, own]).own).toBeUndefined();
});

test('[property] a swatch fades as assumed, and a mix without one draws the healings it always drew', () => {
  expect(leftOf(startAgeing, 0).ownLeft).toBe(0.68);
  expect(leftOf(startAgeing, 2).ownLeft).toBeCloseTo(0.68 * 0.84 ** 2, 12);
  const brown = sharesOf([0, 0, 1, 0, 0, 3], bottles);
  const swatch = ready({ from: 'swatch', lab: { l: 40, a: 10, b: 25 }, finish: 'matt' }).bottle.shares;
  const [first] = simulatedHealings(skin, plan(swatch), [0, 2], 50, 1);
  expect(first?.[1]?.l).toBeGreaterThan(first?.[0]?.l ?? Infinity);
  const spread = (shares: Shares) =>
    new Set(simulatedHealings(skin, plan(shares), [0], 50, 1).map((one) => one[0]?.l)).size;
  expect([spread(brown), spread(swatch)]).toEqual([50, 50]);
  const doubtless = { ...startDoubts, dose: 0, depth: 0, kept: 0, lost: 0, veilLo: 0.35, veilHi: 0.35 };
  const strengths = new Set(
    simulatedHealings(skin, { ...plan(swatch), doubts: doubtless }, [0], 20, 1).map((one) => one[0]?.l),
  );
  expect(strengths.size).toBe(20);
});
