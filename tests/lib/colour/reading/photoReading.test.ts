import Color from 'colorjs.io';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { linearLight, srgbToLab } from '#lib/colour/spaces/srgbToLab.ts';
import { photoReading, type Patch } from '#lib/colour/reading/photoReading.ts';
import { readingValues } from '#lib/colour/numbers/reading.ts';
import { real } from '../../../tools/real.ts';

const flat = (r: number, g: number, b: number, spread = 0, clippedShare = 0): Patch => ({
  mean: { r, g, b },
  spread: { r: spread, g: spread, b: spread },
  clippedShare,
});
/** Coded value of a linear one, IEC 61966-2-1, written out here. */
const coded = (linear: number) =>
  linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
const lit = (lab: { l: number; a: number; b: number }, lamp: readonly [number, number, number]): Patch => {
  const { r, g, b } = labToSrgb(lab);
  return flat(
    coded(linearLight(r) * lamp[0]),
    coded(linearLight(g) * lamp[1]),
    coded(linearLight(b) * lamp[2]),
  );
};
const cardOf = (reflectance: number, lamp: readonly [number, number, number]): Patch =>
  flat(coded(reflectance * lamp[0]), coded(reflectance * lamp[1]), coded(reflectance * lamp[2]));
const mid = (reading: ReturnType<typeof photoReading>) =>
  reading.ok ? { l: reading.box.l.value, a: reading.box.a.value, b: reading.box.b.value } : reading.reason;

test('[library] coded colours to CIELAB as colorjs.io has them, D65', () => {
  fc.assert(
    fc.property(real(0, 1), real(0, 1), real(0, 1), (r, g, b) => {
      const ours = srgbToLab({ r, g, b });
      const [l = 0, a = 0, bb = 0] = new Color('srgb', [r, g, b]).to('lab-d65').coords;
      expect(Math.abs(ours.l - Number(l))).toBeLessThan(0.01);
      expect(Math.abs(ours.a - Number(a))).toBeLessThan(0.02);
      expect(Math.abs(ours.b - Number(bb))).toBeLessThan(0.03);
    }),
  );
});

test('[property] there and back: a skin on the screen is read as itself', () => {
  fc.assert(
    fc.property(real(30, 75), real(4, 16), real(8, 24), (l, a, b) => {
      const back = srgbToLab(labToSrgb({ l, a, b }));
      return Math.abs(back.l - l) < 1e-3 && Math.abs(back.a - a) < 1e-3 && Math.abs(back.b - b) < 1e-3;
    }),
  );
  expect(srgbToHex({ ...labToSrgb(srgbToLab({ r: 0.6, g: 0.4, b: 0.2 })) })).toBe('#996633');
});

test('[property] a yellow or dim lamp is undone by the card: skin from L* 72 to 36 comes back', () => {
  fc.assert(
    fc.property(real(0.4, 0.95), real(0.4, 0.95), real(0.4, 0.95), real(36, 72), (x, y, z, l) => {
      const lamp = [x, y, z] as const;
      const skin = { l, a: 10, b: 16 };
      const read = mid(photoReading(lit(skin, lamp), cardOf(0.18, lamp), 0.18));
      return (
        typeof read !== 'string' &&
        Math.abs(read.l - skin.l) < 1e-3 &&
        Math.abs(read.a - skin.a) < 1e-3 &&
        Math.abs(read.b - skin.b) < 1e-3
      );
    }),
  );
});

test('[hand] a card taken for twice as bright as it is makes the skin twice as bright', () => {
  const card = cardOf(0.18, [1, 1, 1]);
  // The same grey as the card, on a card said to be 36 %: Y 36, L* 116 × 0.36^(1/3) − 16 = 66.52.
  const read = photoReading(card, card, 0.36);
  expect(read.ok && read.box.l.value).toBeCloseTo(116 * Math.cbrt(0.36) - 16, 4);
  expect(read.ok && Math.hypot(read.box.a.value, read.box.b.value)).toBeLessThan(1e-3);
});

test('[hand] the interval: the camera’s own part without noise; with noise each patch adds, as squares', () => {
  const [skin, card] = [lit({ l: 60, a: 10, b: 16 }, [1, 1, 1]), cardOf(0.18, [1, 1, 1])];
  const width = (one: Patch, other: Patch) => {
    const read = photoReading(one, other, 0.18);
    if (!read.ok) throw new Error(read.reason);
    return {
      l: read.box.l.hi - read.box.l.value,
      a: read.box.a.hi - read.box.a.value,
      b: read.box.b.value - read.box.b.lo,
    };
  };
  const noisy = (patch: Patch, by: number): Patch => ({ ...patch, spread: { r: by, g: by, b: by } });
  const still = width(skin, card);
  for (const axis of ['l', 'a', 'b'] as const) expect(still[axis]).toBeCloseTo(readingValues.camera, 9);
  const [skinOnly, cardOnly, both] = [
    width(noisy(skin, 0.02), card),
    width(skin, noisy(card, 0.02)),
    width(noisy(skin, 0.02), noisy(card, 0.02)),
  ];
  for (const axis of ['l', 'a', 'b'] as const) {
    expect(both[axis] ** 2 - 9).toBeCloseTo(skinOnly[axis] ** 2 - 9 + cardOnly[axis] ** 2 - 9, 6);
    expect(skinOnly[axis]).toBeGreaterThan(3);
    expect(cardOnly[axis]).toBeGreaterThan(3);
  }
  // All of the noise in green alone, by hand: L* from Y moved by 0.7152 of what green gains.
  const green: Patch = { ...skin, spread: { r: 0, g: 0.01, b: 0 } };
  const gain = 0.7151686788 * (linearLight(skin.mean.g + 0.01) - linearLight(skin.mean.g));
  const y = ((60 + 16) / 116) ** 3;
  const lightness = 116 * Math.cbrt(y + gain) - 16 - 60;
  expect(width(green, card).l).toBeCloseTo(Math.hypot(3, 2 * lightness), 3);
});

test('[hand] refused: no card, clipped patches, a card too dark or wrongly labelled, skin brighter than white', () => {
  const [skin, card] = [lit({ l: 60, a: 10, b: 16 }, [1, 1, 1]), cardOf(0.18, [1, 1, 1])];
  expect(mid(photoReading(skin, undefined, 0.18))).toBe('no-card');
  for (const wrong of [0, 0.02, 1, 1.2, Number.NaN])
    expect(mid(photoReading(skin, card, wrong))).toBe('card-reflectance');
  expect(mid(photoReading(skin, { ...card, clippedShare: 0.011 }, 0.18))).toBe('card-clipped');
  expect(photoReading(skin, { ...card, clippedShare: 0.01 }, 0.18).ok).toBe(true);
  expect(mid(photoReading({ ...skin, clippedShare: 0.011 }, card, 0.18))).toBe('skin-clipped');
  expect(mid(photoReading(flat(0.99, 0.6, 0.5), flat(0.9, 0.9, 0.9), 0.18))).toBe('skin-clipped');
  expect(mid(photoReading(skin, flat(0.5, 0.5, 0.99), 0.18))).toBe('card-clipped');
  expect(photoReading(flat(0.5, 0.4, 0.3), flat(0.985, 0.985, 0.985), 0.18).ok).toBe(true);
  expect(mid(photoReading(flat(0.1, 0.1, 0.1), flat(coded(0.0199), 0.4, 0.4), 0.18))).toBe('card-too-dark');
  expect(photoReading(flat(0.1, 0.1, 0.1), flat(coded(0.0201), 0.4, 0.4), 0.18).ok).toBe(true);
  expect(mid(photoReading(flat(0.9, 0.5, 0.5), flat(0.3, 0.3, 0.3), 0.9))).toBe('skin-brighter-than-white');
  // One channel is enough.
  expect(mid(photoReading(flat(0.9, 0.1, 0.1), flat(0.3, 0.3, 0.3), 0.9))).toBe('skin-brighter-than-white');
});
