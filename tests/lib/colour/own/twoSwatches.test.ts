import { describe, expect, test } from 'vitest';
import {
  calibrateSwatches,
  filmSurface,
  finishes,
  swatchReflectance,
  whiteScatter,
} from '#lib/colour/own/calibrateSwatches.ts';
import { forBands, type Spectrum } from '#lib/colour/spectrum/bands.ts';
import { mixedLayer, thickReflectance } from '#lib/colour/layers/kubelkaMunk.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { pigmentLayers, type PigmentId } from '#lib/colour/pigment/pigments.ts';
import { seenThroughSurface } from '#lib/colour/layers/saunderson.ts';
import { smoothSpectrum } from '#lib/colour/spectrum/smoothSpectrum.ts';

const white = pigmentLayers['77891'];

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
