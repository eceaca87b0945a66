import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calibrateSpectra } from '#lib/colour/own/calibrateSpectra.ts';
import {
  calibrateSwatches,
  filmSurface,
  finishes,
  swatchReflectance,
  whiteScatter,
} from '#lib/colour/own/calibrateSwatches.ts';
import { scatterFromTint } from '#lib/colour/own/scatterFromTint.ts';
import { forBands, type Spectrum } from '#lib/colour/spectrum/bands.ts';
import { mixedLayer, thickReflectance } from '#lib/colour/layers/kubelkaMunk.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { pigmentLayers, type PigmentId } from '#lib/colour/pigment/pigments.ts';
import { seenThroughSurface } from '#lib/colour/layers/saunderson.ts';
import { smoothSpectrum } from '#lib/colour/spectrum/smoothSpectrum.ts';
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

/** Two swatches of a measured powder whose S is known to the test and not to the sum. */
function swatches(
  id: PigmentId,
  times: number,
  whiteDrops: number,
  finish: (typeof finishes)[number] = 'matt',
) {
  const see = (spectrum: Spectrum) =>
    spectrumToLab(
      finish === 'matt'
        ? spectrum
        : spectrum.map((value) =>
            seenThroughSurface(value, filmSurface, finish === 'shine-in' ? 'included' : 'excluded'),
          ),
    );
  const layer = pigmentLayers[id].map(({ k, s }) => ({ k: k * times, s: s * times }));
  const tint = layer.map((one, band) =>
    mixedLayer([
      { layer: one, share: 1 },
      { layer: white[band] ?? { k: NaN, s: NaN }, share: whiteDrops },
    ]),
  );
  const thick = (of: typeof tint) => see(of.map(({ k, s }) => thickReflectance(k / s)));
  return {
    masstone: thick(layer),
    tint: thick(tint),
    drops: 1,
    whiteDrops,
    finish,
    truth: layer[0]?.s ?? NaN,
  };
}

describe('two swatches', () => {
  test('[table] the backscatter of measured powders comes back from six numbers: within 3 % matt, 15 % through a shiny film', () => {
    for (const id of ['77492', '77491', '77499', '77266'] as const) {
      for (const [times, whiteDrops] of [
        [1, 4],
        [0.4, 2],
        [2.5, 9],
      ] as const) {
        for (const finish of finishes) {
          const { truth, ...given } = swatches(id, times, whiteDrops, finish);
          const found = calibrateSwatches(given);
          if (!found.ok) throw new Error(`${id} ${finish}: ${found.reason}`);
          expect(Math.abs(found.scatter / truth - 1), `${id} ${times} ${finish}`).toBeLessThan(
            finish === 'matt' ? 0.03 : 0.15,
          );
          expect(found.tintMiss, id).toBeLessThan(2);
          expect(found.isTested).toBe(true);
        }
      }
    }
  });
  test('[property] the masstone comes back from K and S exactly', () => {
    const { truth: _, ...given } = swatches('77492', 1, 4);
    const found = calibrateSwatches(given);
    if (!found.ok) throw new Error(found.reason);
    const back = spectrumToLab(found.layer.map(({ k, s }) => thickReflectance(k / s)));
    expect(
      Math.hypot(back.l - given.masstone.l, back.a - given.masstone.a, back.b - given.masstone.b),
    ).toBeLessThan(1e-8);
  });
  test('[hand] half the drops of white for the same tint means half the backscatter', () => {
    const { truth: _, ...given } = swatches('77491', 1, 4);
    const [four, two, doubled] = [
      calibrateSwatches(given),
      calibrateSwatches({ ...given, whiteDrops: 2 }),
      calibrateSwatches({ ...given, drops: 2, whiteDrops: 8 }),
    ];
    if (!four.ok || !two.ok || !doubled.ok) throw new Error('refused');
    expect(doubled.scatter).toBeCloseTo(four.scatter, 12);
    expect(two.scatter / four.scatter).toBeCloseTo(0.5, 12);
    expect(whiteScatter).toBe(1.2);
  });

  const brown = {
    masstone: { l: 34, a: 10, b: 28 },
    tint: { l: 62, a: 6, b: 26 },
    drops: 1,
    whiteDrops: 4,
    finish: 'matt',
  } as const;
  /** A tint that is the palette's white itself. */
  const asWhite = spectrumToLab(white.map(({ k, s }) => thickReflectance(k / s)));
  test.each([
    ['drops', 'no-drops', { drops: 0 }],
    ['drops', 'no-drops', { whiteDrops: NaN }],
    ['drops', 'no-drops', { whiteDrops: 0 }],
    ['tint', 'tint-not-lighter', { tint: { l: 30, a: 10, b: 26 } }],
    ['tint', 'tint-not-lighter', { tint: brown.masstone }],
    ['tint', 'tint-whiter-than-white', { tint: { l: 98.5, a: 0, b: 1 } }],
    ['tint', 'tint-whiter-than-white', { tint: asWhite }],
    ['tint', 'tint-of-another-pigment', { tint: { l: 62, a: 30, b: 5 } }],
    ['masstone', 'blue-or-violet', { masstone: { l: 25, a: 20, b: -40 } }],
    ['tint', 'blue-or-violet', { tint: { l: 60, a: 5, b: -30 } }],
    ['masstone', 'no-smooth-spectrum', { masstone: { l: 98, a: 30, b: 30 } }],
    ['tint', 'no-smooth-spectrum', { tint: { l: NaN, a: 0, b: 0 } }],
    ['masstone', 'darker-than-its-shine', { masstone: { l: 12, a: 1, b: 1 }, finish: 'shine-in' }],
  ] as const)('[hand] refused at the %s: %s', (at, reason, wrong) => {
    expect(calibrateSwatches({ ...brown, ...wrong })).toEqual({ ok: false, at, reason });
  });
  test('[property] a dark red that falls below its shine only in blue is refused as well', () => {
    const red = { l: 30, a: 30, b: 28 };
    const smooth = smoothSpectrum(red);
    if (!smooth.ok) throw new Error(smooth.reason);
    expect([Math.min(...smooth.reflectance) < 0.04, Math.max(...smooth.reflectance) > 0.1]).toEqual([
      true,
      true,
    ]);
    expect(swatchReflectance(red, 'shine-in')).toEqual({ ok: false, reason: 'darker-than-its-shine' });
    expect(swatchReflectance(red, 'shine-out').ok).toBe(true);
  });
  test('[hand] a hue that was not tested is used and said', () => {
    const green = calibrateSwatches({
      ...brown,
      masstone: { l: 40, a: -20, b: 14 },
      tint: { l: 68, a: -16, b: 10 },
    });
    expect(green.ok && green.isTested).toBe(false);
  });
  test('[hand] taking the film off a swatch: 0.5 seen with the shine left out is 0.5/(0.96 × 0.4 + 0.3) within', () => {
    const grey = swatchReflectance(spectrumToLab(forBands(() => 0.5)), 'shine-out');
    const shiny = swatchReflectance(spectrumToLab(forBands(() => 0.5)), 'shine-in');
    if (!grey.ok || !shiny.ok) throw new Error('refused');
    expect(grey.reflectance[10]).toBeCloseTo(0.5 / 0.684, 6);
    expect(shiny.reflectance[10]).toBeCloseTo(0.46 / (0.384 + 0.6 * 0.46), 6);
  });
});
