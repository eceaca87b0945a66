import fc from 'fast-check';
import { expect, test } from 'vitest';
import { skinFromScores, skinSpectrum } from '#lib/colour/layers/skinSpectrum.ts';
import { solve3 } from '#lib/algebra/solve3.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { absorptionRatio } from '#lib/colour/layers/kubelkaMunk.ts';
import { skinComponents, skinMean } from '#lib/tables/skinComponents.ts';
import { skinSpectra } from '#lib/tables/skinSpectra.ts';
import { real } from '#tests/tools/real.ts';

const rms = (one: readonly number[], other: readonly number[]) =>
  Math.sqrt(one.reduce((sum, value, i) => sum + (value - (other[i] ?? NaN)) ** 2, 0) / one.length);

test('[table] the L*a*b* given with 50 measured skins comes from their spectra', () => {
  expect(skinSpectra).toHaveLength(50);
  for (const {
    id,
    lab: [l, a, b],
    reflectance,
  } of skinSpectra) {
    const ours = spectrumToLab(reflectance);
    expect(Math.hypot(ours.l - l, ours.a - a, ours.b - b), `subject ${id}`).toBeLessThan(0.005);
  }
});

test('[table] a measured spectrum comes back from its three numbers within RMS 0.02, and inside the measured skins', () => {
  let sum = 0;
  for (const {
    id,
    lab: [l, a, b],
    reflectance,
  } of skinSpectra) {
    const found = skinSpectrum({ l, a, b });
    if (!found.ok) throw new Error(`subject ${id}: ${found.reason}`);
    const miss = rms(found.reflectance, reflectance);
    sum += miss;
    expect(miss, `subject ${id}`).toBeLessThan(0.02);
    expect(found.isOutsideMeasured, `subject ${id}`).toBe(false);
  }
  expect(sum / skinSpectra.length).toBeLessThan(0.009);
});

test('[property] the spectrum has exactly the colour asked for, from fair to deep, and is a reflectance', () => {
  const skin = fc.record({ l: real(30, 75), a: real(6, 15), b: real(10, 22) });
  fc.assert(
    fc.property(skin, (lab) => {
      const found = skinSpectrum(lab);
      if (!found.ok) return false;
      const ours = spectrumToLab(found.reflectance);
      return (
        Math.hypot(ours.l - lab.l, ours.a - lab.a, ours.b - lab.b) < 1e-8 &&
        found.reflectance.every((value) => value > 0 && value < 1)
      );
    }),
    { numRuns: 300 },
  );
});

test('[property] the deeper skins are flagged as outside the measured ones, the usual ones are not', () => {
  const at = (l: number, a: number, b: number) => {
    const found = skinSpectrum({ l, a, b });
    return found.ok && found.isOutsideMeasured;
  };
  expect(at(64, 9, 18)).toBe(false);
  expect(at(36, 11, 15)).toBe(true);
});

test('[hand] colours no skin has are refused or flagged, never NaN', () => {
  expect(skinSpectrum({ l: 50, a: -60, b: 60 })).toEqual({ ok: false, reason: 'no-skin-like-spectrum' });
  expect(skinSpectrum({ l: NaN, a: 0, b: 0 })).toEqual({ ok: false, reason: 'no-skin-like-spectrum' });
});

test('[hand] all scores zero is the mean skin; the first score makes a skin lighter or darker throughout', () => {
  const [mean, more] = [skinFromScores([0, 0, 0]), skinFromScores([1, 0, 0])];
  expect(more.every((value, band) => value < (mean[band] ?? 0))).toBe(true);
});

test('[hand] each score adds its component to ln(K/S) of the mean, band by band', () => {
  const ratio = (scores: readonly [number, number, number]) =>
    skinFromScores(scores).map((value) => Math.log(absorptionRatio(value)));
  ratio([0, 0, 0]).forEach((value, band) => expect(value).toBeCloseTo(skinMean[band] ?? NaN, 9));
  ratio([0.5, -1, 2]).forEach((value, band) => {
    const [first = NaN, second = NaN, third = NaN] = skinComponents.map(
      (component) => component[band] ?? NaN,
    );
    expect(value).toBeCloseTo((skinMean[band] ?? NaN) + 0.5 * first - second + 2 * third, 9);
  });
});

test('[hand] 1, 2 and 3 times (1, 2, 3), (4, 5, 6) and (7, 8, 10) make (30, 36, 45); a column as small as rounding still counts', () => {
  const found = solve3(
    [
      [1, 2, 3],
      [4, 5, 6],
      [7, 8, 10],
    ],
    [30, 36, 45],
  );
  [1, 2, 3].forEach((value, i) => expect(found?.[i]).toBeCloseTo(value, 9));
  const tiny = 2 ** -44;
  for (let i = 0; i < 3; i++) {
    const size = (at: number) => (at === i ? tiny : 1);
    const small = solve3(
      [
        [size(0), 0, 0],
        [0, size(1), 0],
        [0, 0, size(2)],
      ],
      [1, 1, 1],
    );
    expect(small).toEqual([1 / size(0), 1 / size(1), 1 / size(2)]);
  }
});

test('[hand] three columns: 2x, 3y and z + x', () => {
  expect(
    solve3(
      [
        [2, 0, 1],
        [0, 3, 0],
        [0, 0, 1],
      ],
      [4, 6, 5],
    ),
  ).toEqual([2, 2, 3]);
  expect(
    solve3(
      [
        [1, 0, 0],
        [0, 1, 0],
        [1, 1, 0],
      ],
      [1, 1, 1],
    ),
  ).toBeUndefined();
});
