import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { healedColour, pigmentedReflectance, throughParts } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import {
  mixLayer,
  pigmentIds,
  pigmentLayers,
  type PigmentId,
  type Shares,
} from '#lib/colour/pigment/pigments.ts';
import { partedAt, skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';
import { thickReflectance } from '#lib/colour/layers/kubelkaMunk.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { real } from '#tests/tools/real.ts';
import { skins, only } from './skinsAndShares.ts';

const opticsOf = (lab: Lab): SkinOptics => {
  const optics = skinOptics(lab);
  if (!optics.ok) throw new Error(optics.reason);
  return optics;
};

const optics = skins.map(opticsOf);

const anySkin = fc.constantFrom(...optics);

const at = (depthMm: number, coverage = 1) => ({ depthMm, coverage, veilShare: modelValues.veilShare });

const brown: Shares = { '77891': 0.05, '77492': 0.45, '77491': 0.25, '77499': 0.25, '77266': 0 };

describe('skin', () => {
  test('[property] bare skin is unchanged by depth, veil and coverage', () => {
    const none = mixLayer(brown, 0);
    fc.assert(
      fc.property(
        fc.constantFrom(...skins),
        real(0, 0.3),
        real(0.25, 0.45),
        real(0, 1),
        (lab, depthMm, veilShare, coverage) => {
          const seen = healedColour(opticsOf(lab), none, { depthMm, veilShare, coverage });
          expect(Math.hypot(seen.l - lab.l, seen.a - lab.a, seen.b - lab.b)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('[property] what lies above and under is physical at every depth', () => {
    for (const skin of optics)
      for (const depthMm of [0, 0.05, 0.1, 0.2, 0.3]) {
        const { above, under } = partedAt(skin, depthMm);
        for (const { k, s } of above) expect(k >= 0 && s >= 0).toBe(true);
        for (const value of under) expect(value >= 0 && value <= 1).toBe(true);
      }
  });

  test('[property] deeper skins are given more melanin for their veil', () => {
    const melanin = optics.map(({ fractions }) => fractions.melanosomes);
    expect(melanin).toEqual(melanin.toSorted((a, b) => a - b));
    for (const share of melanin) expect(share > 0.001 && share < 0.5).toBe(true);
  });

  test('[property] a colour no skin has is refused', () => {
    expect(skinOptics({ l: 50, a: -60, b: 60 }).ok).toBe(false);
  });
});

describe('pigment in skin', () => {
  test('[property] more black never makes skin lighter', () => {
    const black = fc.constantFrom<PigmentId>('77266', '77499');
    fc.assert(
      fc.property(
        anySkin,
        black,
        real(0, 1),
        real(0.001, 0.5),
        real(0.03, 0.2),
        (skin, id, dose, more, depthMm) => {
          const lighter = healedColour(skin, mixLayer(only(id), dose), at(depthMm)).l;
          expect(healedColour(skin, mixLayer(only(id), dose + more), at(depthMm)).l).toBeLessThanOrEqual(
            lighter + 1e-9,
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  test('[property] the same pigment deeper in the dermis never looks darker', () => {
    fc.assert(
      fc.property(
        anySkin,
        fc.constantFrom<PigmentId>('77266', '77499', '77491'),
        real(0.05, 0.6),
        real(modelValues.epidermisMm, 0.2),
        real(0.005, 0.1),
        (skin, id, dose, depthMm, deeper) => {
          const layer = mixLayer(only(id), dose);
          expect(healedColour(skin, layer, at(depthMm + deeper)).l).toBeGreaterThanOrEqual(
            healedColour(skin, layer, at(depthMm)).l - 1e-9,
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  test('[hand] half covered is the mean of bare and covered reflectance', () => {
    const [skin] = optics;
    if (!skin) throw new Error('no skin');
    const layer = mixLayer(brown, 0.15);
    const [none, half, whole] = [0, 0.5, 1].map((coverage) =>
      pigmentedReflectance(skin, layer, at(0.1, coverage)),
    );
    half?.forEach((value, band) =>
      expect(value).toBeCloseTo(((none?.[band] ?? NaN) + (whole?.[band] ?? NaN)) / 2, 14),
    );
    expect(none).toEqual(skin.reflectance);
    expect(throughParts(skin, partedAt(skin, 0.1), layer, 1)).toEqual(whole);
  });

  test('[property] coverage moves lightness more than a step of the recipe does', () => {
    const [, skin] = optics;
    if (!skin) throw new Error('no skin');
    const at40 = healedColour(skin, mixLayer(brown, 0.15), at(0.1, 0.4));
    const at80 = healedColour(skin, mixLayer(brown, 0.15), at(0.1, 0.8));
    const other = healedColour(skin, mixLayer({ ...brown, '77492': 0.4, '77499': 0.3 }, 0.15), at(0.1, 0.4));
    expect(Math.abs(at80.l - at40.l)).toBeGreaterThan(3 * Math.abs(other.l - at40.l));
  });

  test('[property] under a warm lamp the same brow looks redder', () => {
    const [, skin] = optics;
    if (!skin) throw new Error('no skin');
    const layer = mixLayer(brown, 0.15);
    expect(healedColour(skin, layer, at(0.1), 'A').a).toBeGreaterThan(
      healedColour(skin, layer, at(0.1)).a + 2,
    );
  });
});

describe('pigments', () => {
  const mass = (id: PigmentId) => spectrumToLab(pigmentLayers[id].map(({ k, s }) => thickReflectance(k / s)));
  test('[property] white is light and without colour, blacks dark, red redder than yellow, yellow yellower than red', () => {
    expect(mass('77891').l).toBeGreaterThan(95);
    for (const id of ['77499', '77266'] as const) {
      expect(mass(id).l).toBeLessThan(16);
      expect(Math.hypot(mass(id).a, mass(id).b)).toBeLessThan(1.5);
    }
    expect(mass('77491').a).toBeGreaterThan(mass('77492').a + 10);
    expect(mass('77492').b).toBeGreaterThan(mass('77491').b + 5);
  });

  test('[hand] a mix adds its parts, each by share, dose and its own factor', () => {
    const mix = mixLayer({ ...brown, '77891': 0, '77491': 0, '77499': 0.55 }, 2, {
      '77492': 0.5,
      '77499': 1,
      '77891': 1,
      '77491': 1,
      '77266': 1,
    });
    for (const band of [0, 17, 35]) {
      const [yellow, black] = [pigmentLayers['77492'][band], pigmentLayers['77499'][band]];
      expect(mix[band]?.k).toBeCloseTo(0.45 * (yellow?.k ?? NaN) + 1.1 * (black?.k ?? NaN), 10);
      expect(mix[band]?.s).toBeCloseTo(0.45 * (yellow?.s ?? NaN) + 1.1 * (black?.s ?? NaN), 10);
    }
    expect(pigmentIds).toHaveLength(5);
  });
});
