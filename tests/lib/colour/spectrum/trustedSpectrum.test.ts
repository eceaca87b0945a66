import { expect, test } from 'vitest';
import { toldNumbers } from '#calculators/toldNumbers.ts';
import { type Spectrum } from '#lib/colour/spectrum/bands.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { absorptionRatio, thickReflectance } from '#lib/colour/layers/kubelkaMunk.ts';
import { lchToLab } from '#lib/colour/spaces/lch.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { pigmentIds, pigmentLayers, type PigmentId } from '#lib/colour/pigment/pigments.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { smoothSpectrum } from '#lib/colour/spectrum/smoothSpectrum.ts';
import { swatchTrust } from '#lib/colour/pigment/swatchTrust.ts';
import { pigmentPowders } from '#lib/tables/pigmentPowders.ts';

const smooth = (measured: Spectrum): Spectrum => {
  const found = smoothSpectrum(spectrumToLab(measured));
  if (!found.ok) throw new Error(found.reason);
  return found.reflectance;
};

/** The white powder carries no level: scaled as the model scales it. */
const powder = (name: keyof typeof pigmentPowders): Spectrum =>
  pigmentPowders[name].map((value) => Math.min(0.995, value * (name === 'titaniumDioxide' ? 1.6 : 1)));

const scatter = 0.5;

const asLayer = (reflectance: Spectrum) =>
  reflectance.map((value) => ({ k: scatter * absorptionRatio(value), s: scatter }));

/** The colour of a thick mix with a base pigment, by its share. */
function mixed(reflectance: Spectrum, id: PigmentId, share: number) {
  return spectrumToLab(
    asLayer(reflectance).map(({ k, s }, band) => {
      const other = pigmentLayers[id][band] ?? { k: NaN, s: NaN };
      return thickReflectance(((1 - share) * k + share * other.k) / ((1 - share) * s + share * other.s));
    }),
  );
}

/**
 * How far the smooth spectrum leads astray, ΔE00: the worst of mixes with each base pigment at three shares.
 */
function worstMix(measured: Spectrum): number {
  const guess = smooth(measured);
  return Math.max(
    ...pigmentIds.flatMap((id) =>
      [0.2, 0.5, 0.8].map((share) => ciede2000(mixed(measured, id, share), mixed(guess, id, share))),
    ),
  );
}

const skins = [
  [72, 9, 16],
  [63, 10, 19],
  [54, 10, 18],
  [44, 12, 17],
  [36, 11, 15],
].map(([l = 0, a = 0, b = 0]) => {
  const skin = skinOptics({ l, a, b });
  if (!skin.ok) throw new Error(skin.reason);
  return skin;
});

function worstInSkin(measured: Spectrum): number {
  const guess = smooth(measured);
  return Math.max(
    ...skins.flatMap((skin) =>
      [0.1, 0.3, 0.6].map((dose) => {
        const seen = (reflectance: Spectrum) =>
          healedColour(
            skin,
            asLayer(reflectance).map(({ k, s }) => ({ k: k * dose, s: s * dose })),
            { depthMm: 0.1, coverage: 1, veilShare: 0.35 },
          );
        return ciede2000(seen(measured), seen(guess));
      }),
    ),
  );
}

const earths = [
  'ironRed',
  'ironBlack',
  'titaniumDioxide',
  'yellowOchre',
  'burntUmber',
  'rawUmber',
  'burntSienna',
  'rawSienna',
  'carbonBlack',
  'goethite',
  'hematite',
  'magnetite',
] as const;

test('[table] twelve measured earths and greys are trusted: within 1.1 ΔE00 in mixes, 0.85 in five skins', () => {
  const [mixes, inSkin] = [
    earths.map((name) => worstMix(powder(name))),
    earths.map((name) => worstInSkin(powder(name))),
  ];
  earths.forEach((name, i) => {
    expect(swatchTrust(spectrumToLab(powder(name))), name).toBe('earth-like');
    expect(mixes[i], name).toBeLessThan(toldNumbers['swatch-of-earth-off']);
    expect(inSkin[i], name).toBeLessThan(0.85);
  });
  // Not flattering itself: somewhere the guess is off by more than half a unit.
  expect(Math.max(...mixes)).toBeGreaterThan(0.5);
});

test('[table] measured ultramarine is refused, and rightly: more than 5 ΔE00 in mixes, more than 3 in skin', () => {
  expect(swatchTrust(spectrumToLab(powder('ultramarine')))).toBe('blue-or-violet');
  expect(worstMix(powder('ultramarine'))).toBeGreaterThan(toldNumbers['swatch-of-ultramarine-off']);
  expect(worstInSkin(powder('ultramarine'))).toBeGreaterThan(3);
});

test('[table] of 63 mixes of measured ultramarine with earths, none that is trusted errs by more than 1.3 ΔE00', () => {
  const worst = { trusted: 0, not: 0 };
  for (const name of [
    'ironRed',
    'yellowOchre',
    'burntUmber',
    'rawSienna',
    'burntSienna',
    'carbonBlack',
    'titaniumDioxide',
  ] as const) {
    for (const share of [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]) {
      const both = powder(name).map((value, band) =>
        thickReflectance(
          (1 - share) * absorptionRatio(value) + share * absorptionRatio(powder('ultramarine')[band] ?? NaN),
        ),
      );
      const side = swatchTrust(spectrumToLab(both)) === 'earth-like' ? 'trusted' : 'not';
      worst[side] = Math.max(worst[side], worstMix(both));
    }
  }
  expect(worst.trusted).toBeGreaterThan(0.3);
  expect(worst.trusted).toBeLessThan(1.3);
  expect(worst.not).toBeGreaterThan(5);
});

test('[hand] trust by hue and chroma, at each edge', () => {
  const at = (c: number, hDeg: number) => swatchTrust(lchToLab({ l: 40, c, hDeg }));
  expect([at(2.99, 270), at(3.01, 270)]).toEqual(['earth-like', 'blue-or-violet']);
  expect([at(20, 9.9), at(20, 10.1), at(20, 109.9), at(20, 110.1)]).toEqual([
    'not-tested',
    'earth-like',
    'earth-like',
    'not-tested',
  ]);
  expect([at(44.9, 60), at(45.1, 60)]).toEqual(['earth-like', 'not-tested']);
  // Exactly at an edge: chroma 3 is no grey any more, chroma 45 (27, 36, 45) is still an earth's.
  expect([swatchTrust({ l: 40, a: 3, b: 0 }), swatchTrust({ l: 40, a: 27, b: 36 })]).toEqual([
    'not-tested',
    'earth-like',
  ]);
  expect([at(20, 189.9), at(20, 190.1), at(20, 344.9), at(20, 345.1)]).toEqual([
    'not-tested',
    'blue-or-violet',
    'blue-or-violet',
    'not-tested',
  ]);
  expect(at(60, 300)).toBe('blue-or-violet');
});
