import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { spectrumToLab, whiteOf } from '#lib/colour/spectrum/observe.ts';
import { bandOrder, bandRows, mixWidth } from '#lib/colour/recipe/bandRows.ts';
import { chromaFloor, lightnessFloor } from '#lib/colour/recipe/differenceFloor.ts';
import { mixBounds, type MixBox } from '#lib/colour/recipe/mixBounds.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';
import { real } from '#tests/tools/real.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const setting = { depthMm: 0.1, coverage: 0.9, veilShare: 0.35 };
const rows = bandRows({ skin, setting });
const { x, y, z } = foldedWeights.D65;
const white = whiteOf('D65');
const bands = bandOrder.map((_, band) => band);

/** K and S of one mix in every band, as a box takes them. */
const mixOf = (k: (band: number) => number, s: (band: number) => number) => {
  const mix = new Float64Array(mixWidth);
  bandOrder.forEach((band, i) => mix.set([k(band), s(band)], 2 * i));
  return mix;
};
/** What skin with the layer reflects in each band: the definition, band by band. */
const seen = (k: Float64Array, s: Float64Array, amount: number) => {
  const place = bands.map((band) => bandOrder.indexOf(band));
  return pigmentedReflectance(
    skin,
    place.map((i) => ({ k: amount * (k[2 * i] ?? NaN), s: amount * (s[2 * i + 1] ?? NaN) })),
    setting,
  );
};
/** The corners of a box: all dark with the most K and the least S, all light the other way. */
const corners = ({ lo, hi }: MixBox, amount: number) => ({
  dark: seen(hi, lo, amount),
  light: seen(lo, hi, amount),
});

test.each([0, 1, 16, 35])(
  '[property] what the bands from place %i on add to Y lies between the dark and the light corner of the box, and reaches both',
  (from) => {
    const bounds = mixBounds(rows, { l: 47, a: 10, b: 13 });
    for (const [wide, amount] of [
      [0, 0.2],
      [0.3, 0.1],
      [0.9, 0.4],
    ] as const) {
      const middle = mixOf(
        (band) => 1 + Math.sin(band),
        (band) => 0.4 + 0.2 * Math.cos(3 * band),
      );
      const box = {
        lo: middle.map((value) => value * (1 - wide)),
        hi: middle.map((value) => value * (1 + wide)),
      };
      const { dark, light } = corners(box, amount);
      const sum = (spectrum: readonly number[]) =>
        bandOrder.slice(from).reduce((all, band) => all + (y[band] ?? NaN) * (spectrum[band] ?? NaN), 0);
      // Room for the fraction: 8e-6 of the weight of the bands.
      const room = 8e-6 * sum(bands.map(() => 1));
      const [least, most] = bounds.restOfY(box, amount, from);
      expect(least).toBeLessThanOrEqual(sum(dark));
      expect(least).toBeGreaterThan(sum(dark) - 2.1 * room);
      expect(most).toBeGreaterThanOrEqual(sum(light));
      expect(most).toBeLessThan(sum(light) + 2.1 * room);
    }
  },
);

/** The root of CIE 15:2004, 8.2.1, drawn on below black. */
const root = (ratio: number) => (ratio > 216 / 24389 ? Math.cbrt(ratio) : ((24389 / 27) * ratio + 16) / 116);
const away = (value: number, values: readonly number[]) =>
  Math.max(0, Math.min(...values) - value, value - Math.max(...values));
const grid = (lo: number, hi: number) => Array.from({ length: 21 }, (_, i) => lo + ((hi - lo) * i) / 20);

/**
 * The floor of a box by looking at all of Y against all of X − Y and of Y − Z, 21 steps each: no end is known
 * beforehand.
 */
function floorByGrid(box: MixBox, amount: number, target: Lab): number {
  const { dark, light } = corners(box, amount);
  const range = (weight: (band: number) => number) => {
    const ends = bands.map((band) => [
      weight(band) * (dark[band] ?? NaN),
      weight(band) * (light[band] ?? NaN),
    ]);
    return grid(
      ends.reduce((sum, pair) => sum + Math.min(...pair), 0),
      ends.reduce((sum, pair) => sum + Math.max(...pair), 0),
    );
  };
  const ys = range((band) => (y[band] ?? NaN) / white.y);
  const apart = (weights: readonly number[], whole: number, steep: number) =>
    range((band) => (weights[band] ?? NaN) / whole - (y[band] ?? NaN) / white.y).flatMap((d) =>
      ys.map((each) => steep * (root(each + d) - root(each))),
    );
  const [ls, as, bs] = [
    ys.map((each) => 116 * root(each) - 16),
    apart(x, white.x, 500),
    apart(z, white.z, -200),
  ];
  const l = Math.min(Math.max(target.l, Math.min(...ls)), Math.max(...ls));
  const lightness = lightnessFloor(l, target.l);
  if (target.b <= 0 || Math.min(...bs) <= 0) return lightness;
  return Math.hypot(
    lightness,
    chromaFloor(Math.hypot(away(target.a, as), away(target.b, bs)), Math.hypot(target.a, target.b)),
  );
}

test('[property] the floor of a box is that of the nearest lightness, a* and b* on a grid over the box', () => {
  const met = { inside: 0, chroma: 0, targetWithoutYellow: 0, boxWithoutYellow: 0 };
  const spread = fc.array(real(0, 1), { minLength: 36, maxLength: 36 });
  fc.assert(
    fc.property(
      spread,
      spread,
      real(-1, 3),
      real(0, 0.25),
      real(0.02, 1),
      real(0, 1),
      fc.record({ l: real(-25, 25), a: real(-25, 25), b: real(-35, 35) }),
      (k, s, tilt, wide, amount, far, away) => {
        const middle = mixOf(
          (band) => (0.05 + 3 * (k[band] ?? NaN)) * Math.exp((tilt * (band - 18)) / 9),
          (band) => 0.2 + (s[band] ?? NaN),
        );
        const box = {
          lo: middle.map((value) => value * (1 - wide)),
          hi: middle.map((value) => value * (1 + wide)),
        };
        const own = spectrumToLab(seen(middle, middle, amount));
        const target = { l: own.l + far * away.l, a: own.a + far * away.a, b: own.b + far * away.b };
        const [ours, plain] = [mixBounds(rows, target).floor(box, amount), floorByGrid(box, amount, target)];
        expect(Math.abs(ours - plain)).toBeLessThan(0.03);
        if (target.b <= 0) met.targetWithoutYellow++;
        else if (own.b < 0) met.boxWithoutYellow++;
        else if (plain === 0) met.inside++;
        else if (wide < 0.1) met.chroma++;
      },
    ),
    { numRuns: 200, seed: 31, endOnFailure: true },
  );
  expect(Math.min(...Object.values(met))).toBeGreaterThan(5);
});
