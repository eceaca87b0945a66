import { expect, test } from 'vitest';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { bandOrder, bandRows, mixWidth, rowWidth } from '#lib/colour/recipe/bandRows.ts';
import { mixSlopes, slopesWidth, type MixCell } from '#lib/colour/recipe/mixSlopes.ts';
import { quickRise } from '#lib/colour/recipe/skinMap.ts';
import { spectrumToXyz, whiteOf } from '#lib/colour/spectrum/observe.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const setting = { depthMm: 0.1, coverage: 0.9, veilShare: 0.35 };
const target = { l: 47, a: 10, b: 13 };
const white = whiteOf('D65');
const places = bandOrder.map((_, i) => i);

/** Rows of a skin, everything it reflects times a share: 0.02 lies on the straight line of CIELAB’s root. */
const rowsTimes = (share: number) =>
  bandRows({ skin, setting }).map((value, i) => (i % rowWidth < 3 ? share * value : value));
const mixOf = (k: (band: number) => number, s: (band: number) => number) => {
  const mix = new Float64Array(mixWidth);
  bandOrder.forEach((band, i) => mix.set([k(band), s(band)], 2 * i));
  return mix;
};
const middle = mixOf(
  (band) => 1.3 + Math.sin(band),
  (band) => 0.4 + 0.2 * Math.cos(3 * band),
);
/** Half a slot along four axes, some up, some down; in cells that are cut nothing lies along the fourth. */
const halvesOf = (wide: number, cut: number) => [
  middle.map((value) => wide * value),
  mixOf(
    (band) => -wide * (0.3 + 0.1 * Math.cos(band)),
    (band) => 0.1 * wide * Math.sin(2 * band),
  ),
  mixOf(
    (band) => 0.2 * wide * Math.sin(band + 1),
    () => -0.06 * wide,
  ),
  ...(cut > 0 ? [] : [middle.map((value, i) => 0.3 * wide * value * Math.sin(i))]),
];
const roundOf = (halves: readonly Float64Array[], cut: number): MixCell['box'] => {
  const half = middle.map((_, i) => halves.reduce((sum, one) => sum + Math.abs(one[i] ?? NaN), 0));
  const lo = middle.map((value, i) => Math.max(0, value - (half[i] ?? NaN)) * (1 + 2 * cut));
  const hi = middle.map((value, i) => Math.max(lo[i] ?? NaN, (value + (half[i] ?? NaN)) * (1 - cut)));
  return { lo, hi };
};
/** How wide, how much of the box is cut off (its middle may then lie outside), the dose, what is reflected. */
const cases = [
  [0.05, 0, 0.1, 1],
  [0.3, 0, 0.3, 1],
  [0.2, 0.3, 0.65, 1],
  [0.1, 0, 0.3, 0.02],
  [0.05, 0.2, 2, 0.3],
  [0.02, 0, 0.001, 1],
] as const;

/** Y, X − Y and Y − Z, each over its white, of a mix: the layer in the skin, band by band. */
const tonesOf = (mix: Float64Array, dose: number, share: number): readonly number[] => {
  const layers = places.map((band) => {
    const i = bandOrder.indexOf(band);
    return { k: dose * (mix[2 * i] ?? NaN), s: dose * (mix[2 * i + 1] ?? NaN) };
  });
  const { x, y, z } = spectrumToXyz(pigmentedReflectance(skin, layers, setting));
  return [y / white.y, x / white.x - y / white.y, y / white.y - z / white.z].map((tone) => share * tone);
};

test.each(cases)(
  '[property] cells %f wide, cut by %f, dose %f, share %f: the line is the colour in the middle and its central differences',
  (wide, cut, dose, share) => {
    const halves = halvesOf(wide, cut);
    const lines = new Float64Array(slopesWidth + 5);
    mixSlopes(rowsTimes(share), target).fill({ middle, halves, box: roundOf(halves, cut) }, dose, lines, 5);
    const step = 1e-4;
    const moved = (axis: number, by: number) =>
      middle.map((value, i) => value + 2 * by * (halves[axis]?.[i] ?? 0));
    const inMiddle = tonesOf(middle, dose, share);
    for (const [tone, expected] of inMiddle.entries()) {
      expect(lines[5 + 5 * tone]).toBeCloseTo(expected, 12);
      for (const axis of [0, 1, 2, 3]) {
        const [up, down] = [step, -step].map((by) => tonesOf(moved(axis, by), dose, share)[tone] ?? NaN);
        expect(lines[6 + 5 * tone + axis]).toBeCloseTo(((up ?? NaN) - (down ?? NaN)) / (2 * step), 8);
      }
    }
    expect([...lines.subarray(0, 5)]).toEqual([0, 0, 0, 0, 0]);
  },
);

/**
 * How far the line of a band may be off: half the most that R″ = ((n3 − R)·C″ − 2·D′·R′)/D can be, with R′ =
 * (N′ − R·D′)/D, the ways from the middle to the farther side of the box, and the bounds of C by its series.
 */
const bendOf = (rows: Float64Array, place: number, { middle: mid, box }: MixCell, dose: number): number => {
  const [n1 = NaN, n2 = NaN, n3 = NaN, m1 = NaN, m2 = NaN] = rows.subarray(place * rowWidth);
  const rangeOf = (at: number) => {
    const [from, ...ends] = [mid[at], box.lo[at], box.hi[at]].map((value) => dose * (value ?? NaN));
    const all = [from ?? NaN, ...ends];
    return {
      least: Math.min(...all),
      most: Math.max(...all),
      way: Math.max(...all.map((end) => Math.abs(end - (from ?? NaN)))),
    };
  };
  const [k, s] = [rangeOf(2 * place), rangeOf(2 * place + 1)];
  const least = k.least ** 2 + 2 * k.least * s.least;
  // Along the way u = K² + 2KS: u′ = 2KK′ + 2K′S + 2KS′, u″ = 2K′² + 4K′S′.
  const u1 = 2 * k.most * k.way + 2 * s.most * k.way + 2 * k.most * s.way;
  const u2 = 2 * k.way ** 2 + 4 * k.way * s.way;
  const slope = Math.min(1 / 3, 1 / (2 * Math.sqrt(least)));
  const c1 = slope * u1;
  const c2 = ((2 * slope) / (least + Math.PI ** 2)) * u1 ** 2 + slope * u2;
  const reflected = (bandK: number, bandS: number) => {
    const c = quickRise(bandK ** 2 + 2 * bandK * bandS);
    return (n1 * bandS + n2 * bandK + n3 * c) / (m1 * bandS + m2 * bandK + c);
  };
  // The fraction for C may be off by 8e-6 of itself.
  const ends = [reflected(k.most, s.least) - 8e-6, reflected(k.least, s.most) + 8e-6];
  const d = (m1 * s.least + m2 * k.least + quickRise(least)) * (1 - 8e-6);
  const far = (n: number, m: number) => Math.max(...ends.map((r) => Math.abs(n - m * r)));
  const r1 = (far(n1, m1) * s.way + far(n2, m2) * k.way + far(n3, 1) * c1) / d;
  const d1 = m1 * s.way + m2 * k.way + c1;
  return (far(n3, 1) * c2 + 2 * d1 * r1) / d / 2;
};

/** The root of CIELAB and, by central difference, its slope. */
const root = (ratio: number) => (ratio > 216 / 24389 ? Math.cbrt(ratio) : ((24389 / 27) * ratio + 16) / 116);
const slopeOf = (ratio: number) => (root(ratio * 1.0001) - root(ratio * 0.9999)) / (ratio * 0.0002);
const corners = [0, 1, 2, 3].reduce<readonly (readonly number[])[]>(
  (all) => all.flatMap((one) => [-0.5, 0.5].map((end) => [...one, end])),
  [[]],
);

test.each(cases)(
  '[hand] cells %f wide, cut by %f, dose %f, share %f: the errors by their formula, with the corners of the cell one by one',
  (wide, cut, dose, share) => {
    const halves = halvesOf(wide, cut);
    const cell: MixCell = { middle, halves, box: roundOf(halves, cut) };
    const rows = rowsTimes(share);
    const lines = new Float64Array(slopesWidth);
    const found = mixSlopes(rows, target).fill(cell, dose, lines, 0);
    const errors = [0, 1, 2].map((tone) =>
      places.reduce((sum, i) => {
        const [x = NaN, y = NaN, z = NaN] = rows.subarray(i * rowWidth + 5);
        const weights = [y / white.y, x / white.x - y / white.y, y / white.y - z / white.z];
        return sum + Math.abs(weights[tone] ?? NaN) * bendOf(rows, i, cell, dose);
      }, 1e-7),
    );
    const [errorY = NaN, errorXY = NaN, errorYZ = NaN] = errors;
    // X = Y + (X − Y), Z = Y − (Y − Z): at the middle, and the most they move to a corner.
    const at = (place: readonly number[], tone: number) =>
      place.reduce(
        (sum, part, axis) => sum + part * (lines[5 * tone + 1 + axis] ?? NaN),
        lines[5 * tone] ?? NaN,
      );
    const reach = (of: (place: readonly number[]) => number, error: number) => {
      const from = of([0, 0, 0, 0]);
      const about = Math.max(...corners.map((corner) => Math.abs(of(corner) - from))) + error;
      return { least: from - about, most: from + about };
    };
    const y = reach((place) => at(place, 0), errorY);
    const x = reach((place) => at(place, 0) + at(place, 1), errorY + errorXY);
    const z = reach((place) => at(place, 0) - at(place, 2), errorY + errorYZ);
    const varies = (other: typeof y) =>
      slopeOf(Math.min(y.least, other.least)) - slopeOf(Math.max(y.most, other.most));
    const offL = 116 * slopeOf(y.least) * errorY;
    const offA = 500 * (slopeOf(x.least) * errorXY + varies(x) * errorY);
    const offB = 200 * (slopeOf(z.least) * errorYZ + varies(z) * errorY);
    for (const [i, expected] of [offL, offA, offB].entries())
      expect((found[i] ?? NaN) / expected).toBeCloseTo(1, 6);
    expect((lines[15] ?? NaN) / offL).toBeCloseTo(1, 6);
    expect((lines[16] ?? NaN) / Math.sqrt(offA ** 2 + offB ** 2)).toBeCloseTo(1, 6);
  },
);

test('[hand] a cell of no width is off by rounding alone; a middle with less than none of a pigment says nothing', () => {
  const lines = new Float64Array(slopesWidth);
  const slopes = mixSlopes(rowsTimes(1), target);
  const [offL] = slopes.fill({ middle, halves: [], box: { lo: middle, hi: middle } }, 0.3, lines, 0);
  const y = lines[0] ?? NaN;
  expect(offL / (116 * slopeOf(y) * 1e-7)).toBeCloseTo(1, 5);
  expect(slopes.floorAt(lines, 0, 0, 0, 0, 0)).toBeGreaterThan(1);

  const none = new Float64Array(mixWidth);
  slopes.fill({ middle: none, halves: [], box: { lo: none, hi: none } }, 0.3, lines, 0);
  expect(lines[0]).toBeCloseTo(tonesOf(none, 0.3, 1)[0] ?? NaN, 10);
  // Less than no absorption has no root; less than no scattering has one, and is nothing all the same.
  for (const place of [40, 41]) {
    const less = middle.map((value, i) => (i === place ? -1e-9 : value));
    slopes.fill({ middle: less, halves: [], box: { lo: middle, hi: middle } }, 0.3, lines, 0);
    expect(lines[0]).toBeNaN();
    expect(slopes.floorAt(lines, 0, 0, 0, 0, 0)).toBe(0);
  }
});
