import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absorptionRatio,
  layerOver,
  layerTransmittance,
  mixedLayer,
  thickReflectance,
  underLayer,
} from '#lib/colour/layers/kubelkaMunk.ts';
import { seenThroughSurface, withinSurface } from '#lib/colour/layers/saunderson.ts';
import { real } from '#tests/tools/real.ts';

const layer = fc.record({ k: real(0, 5), s: real(0, 5) });

describe('layers', () => {
  test('[hand] K/S of a half, a quarter and a tenth; the way back; ends', () => {
    expect(absorptionRatio(0.5)).toBeCloseTo(0.25, 15);
    expect(absorptionRatio(0.25)).toBeCloseTo(1.125, 15);
    expect(absorptionRatio(0.1)).toBeCloseTo(4.05, 14);
    expect(thickReflectance(0.25)).toBeCloseTo(0.5, 15);
    expect(thickReflectance(0)).toBe(1);
    expect(absorptionRatio(1)).toBe(0);
  });

  test('[hand] K 0.25, S 1, one thick: bare, through, over 0.3 and over white', () => {
    const one = { k: 0.25, s: 1 };
    expect(layerOver(one, 0)).toBeCloseTo(0.4113829, 8);
    expect(layerTransmittance(one)).toBeCloseTo(0.37520479, 8);
    expect(layerOver(one, 0.3)).toBeCloseTo(0.45956258, 8);
    expect(layerOver(one, 1)).toBeCloseTo(0.65055135, 8);
  });

  test('[property] the textbook form a, b, coth gives the same reflectance', () => {
    fc.assert(
      fc.property(real(0.01, 5), real(0.01, 5), real(0, 1), (k, s, under) => {
        const a = 1 + k / s;
        const b = Math.sqrt(a * a - 1);
        const coth = 1 / Math.tanh(b * s);
        expect(layerOver({ k, s }, under)).toBeCloseTo(
          (1 - under * (a - b * coth)) / (a - under + b * coth),
          10,
        );
        expect(layerTransmittance({ k, s })).toBeCloseTo(
          b / (a * Math.sinh(b * s) + b * Math.cosh(b * s)),
          10,
        );
      }),
    );
  });

  test('[hand] clear, black and empty layers', () => {
    expect(layerOver({ k: 0, s: 2 }, 0)).toBeCloseTo(2 / 3, 15);
    expect(layerTransmittance({ k: 0.7, s: 0 })).toBeCloseTo(Math.exp(-0.7), 15);
    expect(layerOver({ k: 0.7, s: 0 }, 0.4)).toBeCloseTo(0.4 * Math.exp(-1.4), 15);
    expect(layerOver({ k: 0, s: 0 }, 0.37)).toBeCloseTo(0.37, 15);
    expect(layerTransmittance({ k: 0, s: 0 })).toBe(1);
  });

  test('[property] a layer split in two is the same layer; a thick one hides what is under it', () => {
    fc.assert(
      fc.property(layer, real(0, 1), real(0, 1), ({ k, s }, share, under) => {
        const part = (of: number) => ({ k: k * of, s: s * of });
        expect(layerOver(part(share), layerOver(part(1 - share), under))).toBeCloseTo(
          layerOver({ k, s }, under),
          12,
        );
      }),
    );
    expect(layerOver({ k: 25, s: 100 }, 0)).toBeCloseTo(thickReflectance(0.25), 12);
    expect(layerOver({ k: 25, s: 100 }, 1)).toBeCloseTo(thickReflectance(0.25), 12);
  });

  test('[property] what lies under is found again; reflectance rises with S and with what lies under, falls with K', () => {
    fc.assert(
      fc.property(fc.record({ k: real(0, 1.5), s: real(0, 1.5) }), real(0.02, 0.98), ({ k, s }, under) => {
        const seen = layerOver({ k, s }, under);
        const found = underLayer({ k, s }, seen);
        expect(found.ok && found.reflectance).toBeCloseTo(under, 7);
        expect(layerOver({ k: k + 0.1, s }, under)).toBeLessThan(seen);
        expect(layerOver({ k, s }, under + 0.01)).toBeGreaterThan(seen);
        expect(layerOver({ k, s: s + 0.1 }, 0)).toBeGreaterThanOrEqual(layerOver({ k, s }, 0));
      }),
    );
  });

  test('[hand] a colour that no ground can give under this layer is refused', () => {
    expect(underLayer({ k: 1, s: 0 }, 0.9)).toEqual({ ok: false, reason: 'outside-0-to-1' });
    expect(underLayer({ k: 0, s: 1 }, 0.1)).toEqual({ ok: false, reason: 'outside-0-to-1' });
    expect(underLayer({ k: 0, s: 1 }, 1)).toEqual({ ok: true, reflectance: 1 });
    // Too thick to see through: 125 − 75 = 0.5 × 100, whatever lies under.
    expect(underLayer({ k: 25, s: 100 }, 0.5)).toEqual({ ok: false, reason: 'layer-too-dense' });
  });

  test('[hand] drops add in K and in S', () => {
    expect(
      mixedLayer([
        { layer: { k: 4, s: 1 }, share: 0.25 },
        { layer: { k: 2, s: 3 }, share: 0.5 },
      ]),
    ).toEqual({ k: 2, s: 1.75 });
    expect(mixedLayer([])).toEqual({ k: 0, s: 0 });
  });
});

describe('surface', () => {
  test('[hand] 0.04 and 0.6 around 0.5: 0.04 + 0.96 × 0.4 × 0.5 / 0.7 = 0.31428571', () => {
    const surface = { outside: 0.04, inside: 0.6 };
    expect(seenThroughSurface(0.5, surface)).toBeCloseTo(0.31428571, 8);
    expect(seenThroughSurface(0.5, surface, 'excluded')).toBeCloseTo(0.27428571, 8);
    expect(withinSurface(0.31428571, surface)).toBeCloseTo(0.5, 7);
  });

  test('[property] in and out again, with the shine and without', () => {
    fc.assert(
      fc.property(
        real(0, 1),
        real(0, 0.1),
        real(0, 0.7),
        fc.constantFrom('included', 'excluded'),
        (within, outside, inside, shine) => {
          const surface = { outside, inside };
          expect(withinSurface(seenThroughSurface(within, surface, shine), surface, shine)).toBeCloseTo(
            within,
            12,
          );
        },
      ),
    );
  });
});
