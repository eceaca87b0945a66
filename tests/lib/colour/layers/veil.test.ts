import { describe, expect, test } from 'vitest';
import { bandsNm } from '#lib/colour/spectrum/bands.ts';
import { absorptionRatio, layerOver, underLayer, type Layer } from '#lib/colour/layers/kubelkaMunk.ts';
import { modelValues as m } from '#lib/colour/numbers/model.ts';
import { overOldPigment } from '#lib/colour/pigment/oldPigment.ts';
import { withinSurface } from '#lib/colour/layers/saunderson.ts';
import { partedAt, skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';
import {
  baselineAbsorption,
  bloodAbsorption,
  melanosomeAbsorption,
  reducedScattering,
} from '#lib/colour/layers/tissue.ts';
import { fitFractions, plainSkin, veil, type SkinFractions } from '#lib/colour/layers/veil.ts';

const at = (nm: number) => bandsNm.indexOf(nm);
const of = (list: readonly number[], nm: number) => list[at(nm)] ?? NaN;
const opticsOf = (l: number, a: number, b: number): SkinOptics => {
  const optics = skinOptics({ l, a, b });
  if (!optics.ok) throw new Error(optics.reason);
  return optics;
};
const skins = [
  opticsOf(72, 7, 14),
  opticsOf(63, 10, 19),
  opticsOf(54, 10, 18),
  opticsOf(44, 12, 17),
  opticsOf(36, 11, 15),
];

describe('what tissue absorbs and scatters', () => {
  test('[hand] at 500 nm: 1.7e12 × 500^−3.48, 46 × 1.37 of scattering, a fifth of 0.244 + 85.3 e^(−346/66.2), each a tenth for a mm', () => {
    expect(of(melanosomeAbsorption, 500)).toBeCloseTo(1.7e11 * 500 ** -3.48, 9);
    expect(of(reducedScattering, 500)).toBeCloseTo(4.6 * 1.37, 9);
    expect(of(baselineAbsorption, 500)).toBeCloseTo(0.021 * (0.244 + 85.3 * Math.exp(-346 / 66.2)), 9);
    expect(of(reducedScattering, 700)).toBeCloseTo(4.6 * 1.37 * (5 / 7) ** 1.421, 9);
  });
});

describe('the layer above pigment', () => {
  const fractions: SkinFractions = { melanosomes: 0.04, blood: 0.005 };
  test('[hand] 0.1 mm deep: 0.06 mm of melanin, 0.04 mm of blood, the rest of the skin throughout, K twice and S three quarters of a share', () => {
    const layers = veil(fractions, 0.1, 0.4);
    for (const nm of [380, 540, 730]) {
      const { k, s } = layers[at(nm)] ?? { k: NaN, s: NaN };
      expect(k).toBeCloseTo(
        2 *
          (0.06 * 0.04 * of(melanosomeAbsorption, nm) +
            0.04 * 0.005 * of(bloodAbsorption, nm) +
            0.1 * of(baselineAbsorption, nm)),
        12,
      );
      expect(s).toBeCloseTo(0.1 * 0.4 * 0.75 * of(reducedScattering, nm), 12);
    }
  });

  test('[hand] inside the epidermis there is no blood; at no depth there is nothing; the share is 0.35 unless said', () => {
    const shallow = veil(fractions, 0.03)[at(540)] ?? { k: NaN, s: NaN };
    expect(shallow.k).toBeCloseTo(
      2 * 0.03 * (0.04 * of(melanosomeAbsorption, 540) + of(baselineAbsorption, 540)),
      12,
    );
    expect(shallow.s).toBeCloseTo(0.03 * 0.35 * 0.75 * of(reducedScattering, 540), 12);
    for (const { k, s } of veil(fractions, 0)) expect([k, s]).toEqual([0, 0]);
  });

  test('[hand] plain skin: the epidermis over dermis without end, whose R solves (1 − R)²/2R = K/S', () => {
    const seen = plainSkin(fractions);
    const above = veil(fractions, m.epidermisMm);
    for (const nm of [400, 540, 700]) {
      const layer = above[at(nm)] ?? { k: NaN, s: NaN };
      const under = underLayer(layer, of(seen, nm));
      if (!under.ok) throw new Error(under.reason);
      expect(absorptionRatio(under.reflectance)).toBeCloseTo(
        (2 * (0.005 * of(bloodAbsorption, nm) + of(baselineAbsorption, nm))) /
          (0.75 * of(reducedScattering, nm)),
        6,
      );
    }
  });
});

describe('fractions fitted to a skin', () => {
  test('[property] the fractions of a plain skin are found again, from fair to deep', () => {
    for (const melanosomes of [0.005, 0.02, 0.06, 0.2, 0.4])
      for (const blood of [0.001, 0.004, 0.02]) {
        const found = fitFractions(plainSkin({ melanosomes, blood }));
        expect(found.melanosomes / melanosomes).toBeCloseTo(1, 6);
        expect(found.blood / blood).toBeCloseTo(1, 6);
      }
  });

  test('[property] no fractions near by fit a measured-like skin better', () => {
    const missOf = (inside: readonly number[], fractions: SkinFractions) =>
      plainSkin(fractions).reduce(
        (sum, value, band) =>
          sum + (Math.log(absorptionRatio(value)) - Math.log(absorptionRatio(inside[band] ?? NaN))) ** 2,
        0,
      );
    for (const { inside, fractions } of skins) {
      const best = missOf(inside, fractions);
      for (const [x, y] of [
        [0.01, 0],
        [-0.01, 0],
        [0, 0.01],
        [0, -0.01],
        [0.01, 0.01],
        [0.01, -0.01],
        [-0.01, 0.01],
        [-0.01, -0.01],
      ] as const)
        expect(
          missOf(inside, {
            melanosomes: fractions.melanosomes * Math.exp(x),
            blood: fractions.blood * Math.exp(y),
          }),
        ).toBeGreaterThanOrEqual(best - 1e-9);
    }
  });
});

describe('a skin parted at a depth', () => {
  const isAllowed = (layer: Layer, seen: number) =>
    layerOver(layer, 0) <= 0.8 * seen + 1e-12 && underLayer(layer, seen).ok;
  test('[hand] the surface throws back 0.028, or four fifths of what a dark band shows; within it the reflectance is what is left', () => {
    for (const { reflectance, surfaces, inside } of skins)
      reflectance.forEach((seen, band) => {
        const surface = { outside: Math.min(0.028, 0.8 * seen), inside: 0.53 };
        expect(surfaces[band]).toEqual(surface);
        expect(inside[band]).toBe(withinSurface(seen, surface));
      });
  });

  test('[property] the veil stands as it is where the band leaves room for it, and is else as thick as there is room', () => {
    let [whole, thinned] = [0, 0];
    for (const skin of skins)
      for (const depthMm of [0.05, 0.1, 0.3, 0.8]) {
        const { above, under } = partedAt(skin, depthMm, 0.45);
        veil(skin.fractions, depthMm, 0.45).forEach((layer, band) => {
          const seen = skin.inside[band] ?? NaN;
          const held = above[band] ?? { k: NaN, s: NaN };
          expect(isAllowed(held, seen)).toBe(true);
          expect(layerOver(held, under[band] ?? NaN)).toBeCloseTo(seen, 9);
          if (isAllowed(layer, seen)) {
            whole++;
            expect(held).toEqual(layer);
          } else {
            thinned++;
            expect(held.k / layer.k).toBeCloseTo(held.s / layer.s, 9);
            expect(held.k).toBeGreaterThan(0);
            expect(isAllowed({ k: held.k * 1.001, s: held.s * 1.001 }, seen)).toBe(false);
          }
        });
      }
    expect(Math.min(whole, thinned)).toBeGreaterThan(60);
  });

  test('[hand] the veil’s share is 0.35 unless said', () => {
    const [skin] = skins;
    if (!skin) throw new Error('a skin');
    expect(partedAt(skin, 0.1)).toEqual(partedAt(skin, 0.1, 0.35));
    expect(partedAt(skin, 0.1)).not.toEqual(partedAt(skin, 0.1, 0.3));
  });
});

test('[property] old pigment is a smooth ratio: its logarithm over the bands is a parabola, no band reflects more than all, and the skin’s own veil lies above it', () => {
  const bare = opticsOf(63, 10, 19);
  for (const seen of [
    { l: 46, a: 1, b: 4 },
    { l: 50, a: 20, b: 18 },
    { l: 42, a: -2, b: 8 },
    { l: 17, a: 0, b: 0 },
  ]) {
    const over = overOldPigment({ l: 63, a: 10, b: 19 }, seen);
    if (!over.ok) throw new Error(over.reason);
    const logs = over.reflectance.map((value, band) => Math.log(value / (bare.reflectance[band] ?? NaN)));
    const again = (list: readonly number[]) => list.slice(1).map((value, i) => value - (list[i] ?? NaN));
    const free = over.reflectance.findIndex((value) => value === 1);
    const third = again(again(again(free < 0 ? logs : logs.slice(0, free))));
    expect(third.length).toBeGreaterThan(20);
    for (const change of third) expect(Math.abs(change)).toBeLessThan(1e-9);
    over.reflectance.forEach((value, band) => {
      expect(value).toBeLessThanOrEqual(1);
      expect(over.surfaces[band]).toEqual({
        outside: Math.min(0.028, 0.8 * (bare.reflectance[band] ?? NaN), 0.8 * value),
        inside: 0.53,
      });
      expect(over.inside[band]).toBe(
        withinSurface(value, over.surfaces[band] ?? { outside: NaN, inside: NaN }),
      );
    });
    expect(over.fractions).toEqual(bare.fractions);
    expect(over.isOutsideMeasured).toBe(bare.isOutsideMeasured);
  }
});
