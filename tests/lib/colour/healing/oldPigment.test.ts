import { describe, expect, test } from 'vitest';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { overOldPigment } from '#lib/colour/pigment/oldPigment.ts';
import { mixLayer, type Shares } from '#lib/colour/pigment/pigments.ts';
import { skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';
import { seenThroughSurface } from '#lib/colour/layers/saunderson.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { skins, only } from './skinsAndShares.ts';

const opticsOf = (lab: Lab): SkinOptics => {
  const optics = skinOptics(lab);
  if (!optics.ok) throw new Error(optics.reason);
  return optics;
};

const at = (depthMm: number, coverage = 1) => ({ depthMm, coverage, veilShare: modelValues.veilShare });

const brown: Shares = { '77891': 0.05, '77492': 0.45, '77491': 0.25, '77499': 0.25, '77266': 0 };

describe('old pigment', () => {
  const olds: readonly Lab[] = [
    { l: 46, a: 1, b: 4 },
    { l: 44, a: 0, b: -3 },
    { l: 50, a: 20, b: 18 },
    { l: 48, a: 16, b: 8 },
    { l: 42, a: -2, b: 8 },
  ];
  test('[property] skin and old pigment together are exactly the colour seen, for five hues on fair to tan skin', () => {
    for (const skin of skins.slice(0, 3))
      for (const old of olds) {
        const over = overOldPigment(skin, old);
        if (!over.ok) throw new Error(`${JSON.stringify(skin)} ${JSON.stringify(old)}: ${over.reason}`);
        expect(ciede2000(spectrumToLab(over.reflectance), old)).toBeLessThan(1e-6);
        expect(ciede2000(healedColour(over, mixLayer(brown, 0), at(0.1)), old)).toBeLessThan(1e-6);
      }
  });

  test('[property] without old work the skin stays itself', () => {
    const skin = { l: 63, a: 10, b: 19 };
    const over = overOldPigment(skin, skin);
    const bare = opticsOf(skin);
    expect(over.ok && over.reflectance).toEqual(bare.reflectance);
  });

  test('[property] yellow over blue-grey goes towards green: a* falls below the skin and below what orange gives', () => {
    const over = overOldPigment({ l: 63, a: 10, b: 19 }, { l: 44, a: -1, b: -4 });
    if (!over.ok) throw new Error(over.reason);
    const yellow = healedColour(over, mixLayer(only('77492'), 0.05), at(0.1));
    const red = healedColour(over, mixLayer(only('77491'), 0.05), at(0.1));
    expect(yellow.b).toBeGreaterThan(0);
    expect(red.a).toBeGreaterThan(yellow.a + 3);
  });

  test('[property] the old work is the skin times a smooth ratio: its logarithm has no third difference, and is no straight line', () => {
    const skin = { l: 63, a: 10, b: 19 };
    const [bare, over] = [opticsOf(skin), overOldPigment(skin, { l: 44, a: 0, b: -3 })];
    if (!over.ok) throw new Error(over.reason);
    const differences = (values: readonly number[]) =>
      values.slice(1).map((value, i) => value - (values[i] ?? NaN));
    const bends = differences(
      differences(over.reflectance.map((value, band) => Math.log(value / (bare.reflectance[band] ?? NaN)))),
    );
    for (const step of differences(bends)) expect(Math.abs(step)).toBeLessThan(1e-9);
    expect(Math.abs(bends[0] ?? NaN)).toBeGreaterThan(1e-5);
  });

  test('[property] what lies within its surface shows the old work again, and no surface takes more than its part of a dark band', () => {
    for (const [skin, old] of [
      [
        { l: 63, a: 10, b: 19 },
        { l: 24, a: 8, b: 12 },
      ],
      [
        { l: 36, a: 11, b: 15 },
        { l: 60, a: 4, b: 8 },
      ],
    ] as const) {
      const [bare, over] = [opticsOf(skin), overOldPigment(skin, old)];
      if (!over.ok) throw new Error(over.reason);
      expect(over.surfaces).toHaveLength(36);
      over.surfaces.forEach((surface, band) => {
        const shown = over.reflectance[band] ?? NaN;
        expect(seenThroughSurface(over.inside[band] ?? NaN, surface)).toBeCloseTo(shown, 12);
        // Four fifths of a dark band, else the surface of the bare skin beside it: 0.028, or less where that
        // is dark.
        expect(surface).toEqual({
          outside: Math.min(0.8 * shown, 0.8 * (bare.reflectance[band] ?? NaN), 0.028),
          inside: 0.53,
        });
      });
      expect(over.fractions).toEqual(bare.fractions);
    }
    // The first of them holds both kinds of band.
    const dark = overOldPigment({ l: 63, a: 10, b: 19 }, { l: 24, a: 8, b: 12 });
    expect(
      dark.ok &&
        dark.surfaces.some(({ outside }) => outside < 0.028) &&
        dark.surfaces.some(({ outside }) => outside === 0.028),
    ).toBe(true);
  });

  test('[property] light old work on fair skin never throws back more light than falls on it', () => {
    const over = overOldPigment({ l: 72, a: 7, b: 14 }, { l: 93, a: 6, b: 20 });
    if (!over.ok) throw new Error(over.reason);
    expect(Math.max(...over.reflectance)).toBe(1);
  });

  test('[property] a colour out of reach of any smooth ratio is refused, never NaN', () => {
    expect(overOldPigment({ l: 63, a: 10, b: 19 }, { l: 60, a: -100, b: 100 })).toEqual({
      ok: false,
      reason: 'old-pigment-not-reached',
    });
    expect(overOldPigment({ l: 63, a: 10, b: 19 }, { l: NaN, a: 0, b: 0 })).toEqual({
      ok: false,
      reason: 'old-pigment-not-reached',
    });
    expect(overOldPigment({ l: NaN, a: 0, b: 0 }, { l: 60, a: 0, b: 0 })).toEqual({
      ok: false,
      reason: 'no-skin-like-spectrum',
    });
  });
});
