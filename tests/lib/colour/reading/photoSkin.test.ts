import Color from 'colorjs.io';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lightnessTooHigh, lightSlope } from '#lib/colour/reading/lightSlope.ts';
import { patchOf } from '#lib/colour/reading/patchOf.ts';
import type { Patch } from '#lib/colour/reading/photoReading.ts';
import { photoSkin, tintOf } from '#lib/colour/reading/photoSkin.ts';
import { labToSrgb } from '#lib/colour/spaces/srgb.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { real } from '../../../tools/real.ts';

/** Coded value of a linear one, IEC 61966-2-1, written out here. */
const coded = (linear: number) =>
  linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
const light = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const dots = (...colours: readonly (readonly [number, number, number])[]) =>
  colours.flatMap(([r, g, b]) => [r, g, b, 255]);
const flat = (r: number, g: number, b: number): Patch => ({
  mean: { r, g, b },
  spread: { r: 0, g: 0, b: 0 },
  clippedShare: 0,
});
const grey = flat(0.46, 0.46, 0.46);
const skinPatch = (l: number, a: number, b: number) => {
  const { r, g, b: blue } = labToSrgb({ l, a, b });
  return flat(r, g, blue);
};

test('[hand] a patch: the mean is one of light, the spread one of coded values, every channel by itself', () => {
  const patch = patchOf(dots([51, 102, 204], [153, 102, 102]));
  if (!patch) throw new Error('two dots make a patch');
  // Red 0.2 and 0.6: light 0.0331048 and 0.3185468, mean 0.1758258, coded again 1.055 × 0.48468 − 0.055 =
  // 0.4563; spread half of 0.4.
  expect(patch.mean.r).toBeCloseTo(coded((light(0.2) + light(0.6)) / 2), 6);
  expect(patch.mean.r).toBeCloseTo(0.4563, 3);
  expect(patch.mean.g).toBeCloseTo(0.4, 6);
  expect(patch.mean.b).toBeCloseTo(coded((light(0.8) + light(0.4)) / 2), 6);
  expect([patch.spread.r, patch.spread.g, patch.spread.b].map((value) => Number(value.toFixed(6)))).toEqual([
    0.2, 0, 0.2,
  ]);
  expect(patch.clippedShare).toBe(0);
  expect([patchOf([]), patchOf([1, 2, 3])]).toEqual([undefined, undefined]);
  // What is left of a broken dot does not count, not in the mean and not as clipped.
  for (const left of [[153], [0, 0], [153, 200, 255]])
    expect(patchOf([...dots([51, 102, 204], [153, 102, 102]), ...left])).toEqual(patch);
});

test('[hand] a dot counts as clipped when one channel stands within a step of an end, once', () => {
  const share = (...colours: readonly (readonly [number, number, number])[]) =>
    patchOf(dots(...colours))?.clippedShare;
  for (const clipped of [
    [1, 90, 90],
    [90, 254, 90],
    [90, 90, 255],
    [0, 255, 1],
  ] as const)
    expect(share(clipped, [90, 90, 90])).toBe(0.5);
  for (const whole of [
    [2, 90, 90],
    [90, 253, 90],
    [90, 90, 2],
    [253, 253, 253],
  ] as const)
    expect(share(whole)).toBe(0);
  // Every dot is looked at, the last as the first.
  const [seven, end] = [Array.from({ length: 7 }, () => [90, 90, 90] as const), [255, 90, 90] as const];
  expect([share(end, ...seven), share(...seven, end), share(...seven, ...seven, end, end)]).toEqual([
    0.125, 0.125, 0.125,
  ]);
});

test('[library] dots of a drawn skin beside a card come back as the skin, by colorjs.io, within what whole steps allow', () => {
  fc.assert(
    fc.property(
      real(36, 75),
      real(6, 14),
      real(12, 22),
      real(0.85, 1.15),
      real(0.85, 1.15),
      (l, a, b, red, blue) => {
        const linear = new Color('lab-d65', [l, a, b]).to('srgb-linear').coords.map(Number);
        const lit = (value: number, by: number) => Math.round(255 * coded(value * by));
        const skin = patchOf(
          dots([lit(linear[0] ?? 0, red), lit(linear[1] ?? 0, 1), lit(linear[2] ?? 0, blue)]),
        );
        const card = patchOf(dots([lit(0.18, red), lit(0.18, 1), lit(0.18, blue)]));
        if (!skin || !card) throw new Error('one dot makes a patch');
        const read = photoSkin(skin, card, 0.18);
        // Half a step in card and skin: at most 0.5 in L*, 1.2 in a* and b*.
        return (
          read.ok &&
          Math.abs(read.box.l.value - l) < 0.5 &&
          Math.abs(read.box.a.value - a) < 1.2 &&
          Math.abs(read.box.b.value - b) < 1.2
        );
      },
    ),
  );
});

test('[hand] tint: strongest over weakest channel, in light; a card is grey enough up to 1.4', () => {
  expect(tintOf(flat(coded(0.28), coded(0.2), coded(0.25)))).toBeCloseTo(1.4, 9);
  expect(tintOf(flat(0.5, 0.5, 0.5))).toBe(1);
  expect([tintOf(flat(0.5, 0, 0.5)), tintOf(flat(0, 0, 0))]).toEqual([Infinity, Infinity]);
  const skin = skinPatch(60, 10, 16);
  expect(photoSkin(skin, flat(coded(0.2799), coded(0.2), coded(0.25)), 0.18).ok).toBe(true);
  expect(photoSkin(skin, flat(coded(0.2801), coded(0.2), coded(0.25)), 0.18)).toEqual({
    ok: false,
    reason: 'card-not-grey',
  });
  expect(photoSkin(skin, undefined, 0.18)).toEqual({ ok: false, reason: 'no-card' });
});

test('[property] no skin passes for a card: L* 30 to 80, a* from 6, b* from 10', () => {
  fc.assert(
    fc.property(real(30, 80), real(6, 16), real(10, 24), (l, a, b) => tintOf(skinPatch(l, a, b)) > 1.4),
  );
});

test('[hand] the doubt of the photo goes into both angles', () => {
  const read = photoSkin(skinPatch(62, 10, 17), grey, light(0.46));
  if (!read.ok) throw new Error(read.reason);
  // The camera leaves three each way: hue between the corners (13, 14) and (7, 20), typology angle between
  // (59, 20) and (65, 14).
  const deg = (y: number, x: number) => (Math.atan2(y, x) * 180) / Math.PI;
  expect(read.hue.lo).toBeCloseTo(deg(14, 13), 2);
  expect(read.hue.hi).toBeCloseTo(deg(20, 7), 2);
  expect(read.ita.lo).toBeCloseTo(deg(9, 20), 2);
  expect(read.ita.hi).toBeCloseTo(deg(15, 14), 2);
  expect(photoSkin(skinPatch(60, 10, 2.5), grey, light(0.46))).toEqual({
    ok: false,
    reason: 'outside-the-scale',
  });
});

/**
 * A square of grey whose light rises by a part of its middle per dot, before rounding to steps of 1/255 ÷
 * `fine`.
 */
function sloped(
  side: number,
  across: number,
  down: number,
  noise: () => number = () => 0,
): readonly number[] {
  const middle = (side - 1) / 2;
  return Array.from({ length: side * side }, (_, dot) => {
    const value =
      255 * coded(0.18 * (1 + across * ((dot % side) - middle) + down * (Math.floor(dot / side) - middle))) +
      noise();
    return [value, value, value, 255];
  }).flat();
}

test('[property] the slope of the light comes back, across and down apart', () => {
  fc.assert(
    fc.property(real(-0.01, 0.01), real(-0.01, 0.01), (across, down) => {
      const slope = lightSlope(sloped(20, across, down), 20);
      return (
        slope !== undefined &&
        Math.abs(slope.across - across) < 1e-9 &&
        Math.abs(slope.down - down) < 1e-9 &&
        slope.off < 1e-6
      );
    }),
    { numRuns: 50 },
  );
});

test('[hand] every colour gives its part of the light: green alone from left to right', () => {
  // Two by two: green 0 on the left, 255 on the right; light 0 and 0.71517: mean 0.357584, a whole step of
  // 0.71517 a dot: twice the mean.
  const slope = lightSlope([0, 0, 0, 255, 0, 255, 0, 255, 0, 0, 0, 255, 0, 255, 0, 255], 2);
  expect(slope?.across).toBeCloseTo(2, 9);
  expect(slope?.down).toBe(0);
  // Red left and green right: light 0.212639 and 0.7151687, their difference over their mean.
  const two = lightSlope([255, 0, 0, 255, 0, 255, 0, 255, 255, 0, 0, 255, 0, 255, 0, 255], 2);
  expect(two?.across).toBeCloseTo((0.7151686788 - 0.2126390059) / ((0.7151686788 + 0.2126390059) / 2), 6);
  const blue = lightSlope([0, 0, 255, 255, 0, 0, 255, 255, 255, 255, 255, 255, 255, 255, 255, 255], 2);
  expect(blue?.down).toBeCloseTo((1 - 0.0721923154) / ((1 + 0.0721923154) / 2), 6);
  // A square of another size, or of one dot, has no slope, however bright.
  expect([
    lightSlope([200, 200, 200, 255], 1),
    lightSlope(sloped(3, 0, 0), 2),
    lightSlope(sloped(2, 0, 0), 3),
    lightSlope(sloped(2, 0, 0).slice(1), 2),
  ]).toEqual([undefined, undefined, undefined, undefined]);
  expect([
    lightSlope([0, 0, 0, 255], 1),
    lightSlope([0, 0, 0, 255], 2),
    lightSlope(
      sloped(2, 0, 0).map(() => 0),
      2,
    ),
  ]).toEqual([undefined, undefined, undefined]);
});

test('[property] with noise the slope lies within two of its own errors in about 95 of 100 squares', () => {
  const draw = drawFrom(7);
  const noise = () => 3 * (draw() + draw() + draw() - 1.5);
  let inside = 0;
  for (let i = 0; i < 400; i++) {
    const slope = lightSlope(sloped(12, 0.004, 0, noise), 12);
    if (slope && Math.abs(slope.across - 0.004) <= 2 * slope.off) inside++;
  }
  // Two standard errors hold about 95 of 100.
  expect(inside).toBeGreaterThan(400 * 0.92);
  expect(inside).toBeLessThan(400 * 0.98);
});

test('[hand] skin in a tenth more light reads lighter by (L* + 16)(1 − 1.1^(−1/3)); noise alone says nothing; far out the light is held', () => {
  const slope = { across: 0.001, down: 0, off: 0 };
  expect(lightnessTooHigh(60, slope, { across: 100, down: 50 })).toBeCloseTo(76 * (1 - 1.1 ** (-1 / 3)), 9);
  expect(lightnessTooHigh(60, slope, { across: -100, down: 50 })).toBeCloseTo(76 * (1 - 0.9 ** (-1 / 3)), 9);
  expect(lightnessTooHigh(60, { across: 0, down: 0.002, off: 0 }, { across: 100, down: 50 })).toBeCloseTo(
    76 * (1 - 1.1 ** (-1 / 3)),
    9,
  );
  // Across 100 and down 0: an error of 0.0003 a dot makes 0.09 in three errors, below 0.1; 0.00034 makes
  // 0.102.
  expect(
    lightnessTooHigh(60, { across: 0.001, down: 0, off: 0.0003 }, { across: 100, down: 0 }),
  ).toBeGreaterThan(2);
  expect(lightnessTooHigh(60, { across: 0.001, down: 0, off: 0.00034 }, { across: 100, down: 0 })).toBe(0);
  expect(lightnessTooHigh(60, { across: 0.001, down: 0, off: 0.0003 }, { across: 100, down: 60 })).toBe(0);
  expect(lightnessTooHigh(60, { across: -0.1, down: 0, off: 0 }, { across: 100, down: 0 })).toBeCloseTo(
    76 * (1 - 0.05 ** (-1 / 3)),
    9,
  );
});
