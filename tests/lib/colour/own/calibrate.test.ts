import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calibrateSpectra } from '#lib/colour/own/calibrateSpectra.ts';
import { scatterFromTint } from '#lib/colour/own/scatterFromTint.ts';
import { forBands } from '#lib/colour/spectrum/bands.ts';
import { mixedLayer, thickReflectance } from '#lib/colour/layers/kubelkaMunk.ts';
import { pigmentLayers } from '#lib/colour/pigment/pigments.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { real } from '#tests/tools/real.ts';

const white = pigmentLayers['77891'];

describe('one band', () => {
  test('[hand] masstone 0.1, tint 0.25 of one drop and nine drops white of K 0.02, S 1.6', () => {
    // p = 0.9²/0.2 = 4.05; q = 0.75²/0.5 = 1.125; S = 9 (1.125 × 1.6 − 0.02)/(4.05 − 1.125) = 9 × 1.78/2.925
    // = 5.476923
    const found = scatterFromTint({
      masstone: 0.1,
      tint: 0.25,
      white: { k: 0.02, s: 1.6 },
      drops: 1,
      whiteDrops: 9,
    });
    if (!found.ok) throw new Error(found.reason);
    expect(found.layer.s).toBeCloseTo(5.476923, 6);
    expect(found.layer.k).toBeCloseTo(4.05 * 5.476923, 5);
    // Two drops in the same tint: each throws back half.
    const two = scatterFromTint({
      masstone: 0.1,
      tint: 0.25,
      white: { k: 0.02, s: 1.6 },
      drops: 2,
      whiteDrops: 9,
    });
    expect(two.ok && two.layer.s).toBeCloseTo(5.476923 / 2, 6);
  });
  test('[hand] the edges: a masstone as white as the white, a tint exactly so, a perfect reflector', () => {
    const white = { k: 0.25, s: 1 };
    // K/S 0.25 is a reflectance of 0.5.
    const at = (masstone: number, tint: number) => {
      const found = scatterFromTint({ masstone, tint, white, drops: 1, whiteDrops: 1 });
      return found.ok ? 'ok' : found.reason;
    };
    expect([at(0.5, 0.4), at(0.4, 0.5), at(0.4, 0.45), at(0.4, 1), at(1, 0.5)]).toEqual([
      'masstone-not-darker-than-white',
      'tint-whiter-than-white',
      'ok',
      'tint-whiter-than-white',
      'masstone-not-darker-than-white',
    ]);
  });
  test.each([
    ['no-drops', { drops: 0 }],
    ['no-drops', { whiteDrops: 0 }],
    ['no-drops', { drops: NaN }],
    ['no-drops', { whiteDrops: -1 }],
    ['no-reflectance', { masstone: 0 }],
    ['no-reflectance', { tint: 1.01 }],
    ['no-reflectance', { tint: NaN }],
    ['masstone-not-darker-than-white', { masstone: 0.95 }],
    ['tint-not-lighter', { tint: 0.1 }],
    ['tint-not-lighter', { tint: 0.05 }],
    ['tint-whiter-than-white', { tint: 0.9 }],
  ] as const)('[hand] %s: %o', (reason, wrong) => {
    // The white reflects 0.8541: K/S 0.0125.
    expect(
      scatterFromTint({
        masstone: 0.1,
        tint: 0.25,
        white: { k: 0.02, s: 1.6 },
        drops: 1,
        whiteDrops: 9,
        ...wrong,
      }),
    ).toEqual({ ok: false, reason });
  });
});

test('[property] true K and S come back from the spectra of masstone and tint, whatever the ratio of drops', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), real(0.05, 20), (seed, ratio) => {
      const draw = drawFrom(seed);
      const truth = forBands(() => 0.02 + 3 * draw()).map((s) => ({ s, k: s * (0.2 + 20 * draw()) }));
      const paleWhite = white.map(({ s }) => ({ s, k: 0.01 * s }));
      const masstone = truth.map(({ k, s }) => thickReflectance(k / s));
      const tint = truth.map((layer, band) => {
        const { k, s } = mixedLayer([
          { layer, share: 1 },
          { layer: paleWhite[band] ?? { k: NaN, s: NaN }, share: ratio },
        ]);
        return thickReflectance(k / s);
      });
      const found = calibrateSpectra(masstone, tint, paleWhite, 1, ratio);
      return (
        found.ok === true &&
        found.layer.length === truth.length &&
        found.layer.every(
          ({ k, s }, band) =>
            Math.abs(k / (truth[band]?.k ?? 0) - 1) < 1e-7 && Math.abs(s / (truth[band]?.s ?? 0) - 1) < 1e-7,
        )
      );
    }),
    { numRuns: 200 },
  );
});

test('[hand] the band that cannot be is named: a tint darker than its masstone in the fourth band', () => {
  const masstone = forBands(() => 0.1);
  const tint = forBands((band) => (band === 3 ? 0.05 : 0.25));
  const pale = white.map(({ s }) => ({ s, k: 0.01 * s }));
  expect(calibrateSpectra(masstone, tint, pale, 1, 1)).toEqual({
    ok: false,
    reason: 'tint-not-lighter',
    band: 3,
  });
  expect(calibrateSpectra(masstone, tint.slice(0, 3), pale, 1, 1)).toMatchObject({
    reason: 'no-reflectance',
    band: 3,
  });
});
