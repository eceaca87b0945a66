import { differenceCiede2000 } from 'culori';
import { expect, test } from 'vitest';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import { spectrumToLab, spectrumToXyz, whiteOf } from '#lib/colour/spectrum/observe.ts';
import { mixLayer, type Shares } from '#lib/colour/pigment/pigments.ts';
import { bandOrder, mixWidth, orderedMix } from '#lib/colour/recipe/bandRows.ts';
import { firstBands, mixScorer, mostScreenError, screenError } from '#lib/colour/recipe/mixScorer.ts';
import { quickDifference } from '#lib/colour/recipe/quickDifference.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const setting = { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 };
const shares: Shares = { '77891': 0.1, '77492': 0.4, '77491': 0.3, '77499': 0.2, '77266': 0 };
const unit = orderedMix(mixLayer(shares, 1));
const empty = new Float64Array(mixWidth);
const spectrumAt = (amount: number) => pigmentedReflectance(skin, mixLayer(shares, amount), setting);
const labAt = (amount: number) => spectrumToLab(spectrumAt(amount));
const culori = differenceCiede2000();

test('[hand] the error from its slopes: 0.0231 at L* 50, a* 10, b* 13; 0.0596 at L* 30, a* 0, b* 20', () => {
  // f(Y) = (50 − 6 + 16)/116 = 0.517241, f(X) the same, f(Z) = 0.517241 − 23/200 = 0.402241. Slopes
  // 7.8e-6/3f²: 9.7182e-6 and 16.0695e-6.
  // 116·9.7182e-6 + 2·√((500·19.4364e-6)² + (200·25.7877e-6)²) = 0.0011273 + 2·0.0110020.
  expect(screenError({ l: 50, a: 10, b: 13 })).toBeCloseTo(0.0231314, 6);
  // f(Y) = 40/116 = 0.344828, f(X) = 0.324828, f(Z) = 0.194828 and below 6/29, where 841/108 is steepest:
  // 21.8660e-6, 24.6415e-6, 60.7389e-6.
  // 116·21.8660e-6 + 2·√((500·46.5075e-6)² + (200·82.6049e-6)²) = 0.0025365 + 2·0.0285251.
  expect(screenError({ l: 30, a: 0, b: 20 })).toBeCloseTo(0.0595866, 6);
  // Steepest everywhere, also where f would lie below 0.
  expect(screenError({ l: 0, a: 0, b: 0 })).toBeCloseTo(
    116 * 6.07389e-5 + 2 * Math.hypot(1000 * 6.07389e-5, 400 * 6.07389e-5),
    6,
  );
  expect(screenError({ l: 0, a: -200, b: 200 })).toBe(screenError({ l: 0, a: 0, b: 0 }));
  // 116·6.1e-5 + 2·√(0.061² + 0.0244²) = 0.007076 + 2·0.0656991.
  expect(mostScreenError).toBeCloseTo(0.1384742, 6);
});

test('[library] the colour of a mix is that of the layer in skin; the fine score its difference by culori', () => {
  const target = { l: 45, a: 12, b: 9 };
  const { fine, labOf } = mixScorer({ skin, setting, target });
  const twice = new Float64Array(3 * mixWidth);
  twice.set(unit, 2 * mixWidth);
  for (const amount of [0.01, 0.1, 0.4]) {
    const [ours, theirs] = [labOf(twice, 2 * mixWidth, amount), labAt(amount)];
    for (const axis of ['l', 'a', 'b'] as const) expect(ours[axis]).toBeCloseTo(theirs[axis], 9);
    expect(fine(twice, 2 * mixWidth, amount)).toBeCloseTo(
      culori({ mode: 'lab65', ...theirs }, { mode: 'lab65', ...target }),
      9,
    );
  }
});

test.each([
  ['next to it', { l: 1, a: 1, b: -1 }, false],
  ['lighter by less than 6, redder and bluer by less than 10', { l: 5.9, a: 9.9, b: -9.9 }, false],
  ['lighter by more than 6', { l: 6.1, a: 0, b: 0 }, true],
  ['redder by more than 10', { l: 0, a: 10.1, b: 0 }, true],
  ['bluer by more than 10', { l: 0, a: 0, b: -10.1 }, true],
  ['much darker, greener and yellower', { l: -20, a: -15, b: 15 }, false],
] as const)(
  '[hand] the quick score of a colour is quick, or fine where no bound of its error holds: target %s',
  (_, away, isFine) => {
    const lab = labAt(0.1);
    const target = { l: lab.l + away.l, a: lab.a + away.a, b: lab.b + away.b };
    const { fine, quick } = mixScorer({ skin, setting, target });
    const [quickly, finely] = [
      quick(empty, 0, unit, 0, 1, 0.1, Infinity, -Infinity, Infinity, 0, 0),
      fine(unit, 0, 0.1),
    ];
    // The fraction moves the score by some 1e-6 to 1e-3; the same sum in the same way not at all.
    if (isFine) expect(quickly).toBe(finely);
    else expect(Math.abs(quickly - finely)).toBeGreaterThan(1e-9);
    expect(Math.abs(quickly - finely)).toBeLessThan(mostScreenError);
    // Beyond the limit and its room a quick score is enough; within the room it is not.
    if (isFine) {
      expect(
        quick(empty, 0, unit, 0, 1, 0.1, finely - mostScreenError - 0.001, -Infinity, Infinity, 0, 0),
      ).not.toBe(finely);
      expect(
        quick(empty, 0, unit, 0, 1, 0.1, finely - mostScreenError + 0.001, -Infinity, Infinity, 0, 0),
      ).toBe(finely);
    }
  },
);

test('[library] where the target has no yellow the quick score is of the whole formula, which turns behind blue: by culori', () => {
  const lab = labAt(0.1);
  const target = { l: lab.l, a: -2, b: -40 };
  const exact = culori({ mode: 'lab65', ...lab }, { mode: 'lab65', ...target });
  const score = mixScorer({ skin, setting, target }).quick(
    empty,
    0,
    unit,
    0,
    1,
    0.1,
    Infinity,
    -Infinity,
    Infinity,
    0,
    0,
  );
  expect(Math.abs(quickDifference(target)(lab.l, lab.a, lab.b) - exact)).toBeGreaterThan(0.005);
  expect(Math.abs(score - exact)).toBeLessThan(0.001);
});

test('[hand] Y decides after the first bands with what the rest may add, and at the end, up to the very edges of its window', () => {
  const { quick } = mixScorer({ skin, setting, target: labAt(0.1) });
  const spectrum = spectrumAt(0.1);
  const y = spectrumToXyz(spectrum).y;
  const first = bandOrder
    .slice(0, firstBands)
    .reduce((sum, band) => sum + (foldedWeights.D65.y[band] ?? NaN) * (spectrum[band] ?? NaN), 0);
  const rest = y - first;
  expect(rest).toBeLessThan(first / 5);
  // The quick sum may be off by 7.8e-6 of the white, 0.00078.
  const e = 0.001;
  const isScored = (yLo: number, yHi: number, restLo: number, restHi: number) =>
    quick(empty, 0, unit, 0, 1, 0.1, Infinity, yLo, yHi, restLo, restHi) < 1;
  expect([
    isScored(y - e, Infinity, 0, 100),
    isScored(y + e, Infinity, 0, 100),
    isScored(-Infinity, y + e, 0, 100),
    isScored(-Infinity, y - e, 0, 100),
  ]).toEqual([true, false, true, false]);
  // Said before the end: with 1 less or more than the rest adds, a window that the whole Y keeps is missed.
  expect([
    isScored(y - 0.5, Infinity, 0, rest - 0.5 + e),
    isScored(y - 0.5, Infinity, 0, rest - 0.5 - e),
  ]).toEqual([true, false]);
  expect([
    isScored(-Infinity, y + 0.5, rest + 0.5 - e, 100),
    isScored(-Infinity, y + 0.5, rest + 0.5 + e, 100),
  ]).toEqual([true, false]);
  expect(y / whiteOf('D65').y).toBeLessThan(0.5);
});

test('[property] base and drops add up, wherever they stand; a layer too thick for the fraction is summed with roots', () => {
  // K and S that differ from band to band: those of a pigment hardly do in S.
  const wavy = (mix: Float64Array) => mix.map((value, i) => value * (1 + 0.5 * Math.sin(i)));
  const [base, other] = [
    wavy(unit),
    wavy(orderedMix(mixLayer({ '77891': 0.5, '77492': 0, '77491': 0, '77499': 0, '77266': 0.5 }, 1))),
  ];
  const [bases, units] = [new Float64Array(3 * mixWidth), new Float64Array(4 * mixWidth)];
  bases.set(base, mixWidth);
  units.set(other, 3 * mixWidth);
  for (const [count, amount] of [
    [2, 0.05],
    [3, 0.1],
    [3, 90],
    [1, 400],
  ] as const) {
    const sum = base.map((value, i) => value + count * (other[i] ?? NaN));
    const isThick = sum.some(
      (k, i) => i % 2 === 0 && amount * amount * k * (k + 2 * (sum[i + 1] ?? NaN)) > 200,
    );
    expect(isThick).toBe(amount > 1);
    // Next to the target, where quick scores are given.
    const own = mixScorer({ skin, setting, target: { l: 20, a: 3, b: 4 } }).labOf(sum, 0, amount);
    const { fine, quick } = mixScorer({ skin, setting, target: { ...own, l: own.l + 1 } });
    const apart = Math.abs(
      quick(bases, mixWidth, units, 3 * mixWidth, count, amount, Infinity, -Infinity, Infinity, 0, 100) -
        fine(sum, 0, amount),
    );
    if (isThick) expect(apart).toBeLessThan(1e-12);
    else expect(apart).toBeLessThan(screenError(own));
  }
});
