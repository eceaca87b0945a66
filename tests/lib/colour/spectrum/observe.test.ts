import Color from 'colorjs.io';
import { converter } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandsNm, forBands } from '#lib/colour/spectrum/bands.ts';
import { foldWeights } from '#lib/colour/spectrum/foldWeights.ts';
import { labToXyz, xyzToLab } from '#lib/colour/spaces/lab.ts';
import { hueDeg, labToLch, lchToLab } from '#lib/colour/spaces/lch.ts';
import { lamps } from '#lib/colour/spectrum/lamps.ts';
import { spectrumToLab, spectrumToXyz, whiteOf } from '#lib/colour/spectrum/observe.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { firstNm, illuminantPower, lastNm, matchingFunctions } from '#lib/tables/cie1931.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';
import { real } from '#tests/tools/real.ts';

const lab = fc.record({ l: real(1, 99), a: real(-60, 60), b: real(-60, 60) });

test('[property] the weights that pages carry are the CIE tables folded again, to ten digits', () => {
  for (const lamp of lamps) {
    const again = foldWeights({ firstNm, matchingFunctions, power: illuminantPower[lamp], powerStepNm: 5 });
    for (const axis of ['x', 'y', 'z'] as const) {
      expect(foldedWeights[lamp][axis]).toHaveLength(36);
      foldedWeights[lamp][axis].forEach((kept, band) =>
        expect(Math.abs(kept - (again[axis][band] ?? NaN))).toBeLessThanOrEqual(
          1e-9 * Math.abs(kept) + 1e-13,
        ),
      );
    }
  }
});

test('[hand] the bands are 380 to 730 nm in tens; the tables hold 1 nm and 5 nm', () => {
  expect(bandsNm[0]).toBe(380);
  expect(bandsNm.at(-1)).toBe(730);
  expect(bandsNm).toHaveLength(36);
  expect(matchingFunctions).toHaveLength(lastNm - firstNm + 1);
  for (const power of Object.values(illuminantPower)) expect(power).toHaveLength((lastNm - firstNm) / 5 + 1);
});

test('[property] a perfect diffuser is exactly white under every lamp, a black nothing, a half grey the same everywhere', () => {
  for (const lamp of lamps) {
    expect(
      spectrumToLab(
        forBands(() => 1),
        lamp,
      ),
    ).toEqual({ l: 100, a: 0, b: 0 });
    expect(
      spectrumToLab(
        forBands(() => 0),
        lamp,
      ).l,
    ).toBeCloseTo(0, 12);
    const grey = spectrumToLab(
      forBands(() => 0.5),
      lamp,
    );
    expect(grey.l).toBeCloseTo(76.0693, 3);
    expect(Math.hypot(grey.a, grey.b)).toBeLessThan(1e-12);
  }
});

test('[hand] two narrow bands are read between their neighbours: a ramp folds to the sum over its own 1 nm', () => {
  // A straight line between the ends stays a straight line between the bands, so no reading error may remain.
  const ramp = (nm: number) => Math.min(730, Math.max(380, nm)) / 1000;
  const seen = spectrumToXyz(
    forBands((_, nm) => ramp(nm)),
    'A',
  );
  let [y, white] = [0, 0];
  matchingFunctions.forEach(([, yBar], i) => {
    const at = i / 5;
    const low = Math.floor(at);
    const from = illuminantPower.A[low] ?? 0;
    const watts = from + ((illuminantPower.A[low + 1] ?? from) - from) * (at - low);
    y += watts * yBar * ramp(firstNm + i);
    white += watts * yBar;
  });
  expect(seen.y).toBeCloseTo((100 * y) / white, 7);
});

test('[library] colorjs.io turns XYZ under D65 into the same Lab, and culori the same screen colour', () => {
  const toScreen = converter('rgb');
  fc.assert(
    fc.property(lab, (colour) => {
      const { x, y, z } = labToXyz(colour, { x: 95.047, y: 100, z: 108.883 });
      const back = xyzToLab({ x, y, z }, { x: 95.047, y: 100, z: 108.883 });
      expect(back.l).toBeCloseTo(colour.l, 9);
      expect(back.a).toBeCloseTo(colour.a, 9);
      expect(back.b).toBeCloseTo(colour.b, 9);
      const theirs = toScreen({ mode: 'lab65', ...colour });
      const ours = labToSrgb(colour);
      if (!ours.isClipped)
        for (const key of ['r', 'g', 'b'] as const)
          expect(Math.abs(ours[key] - Math.min(1, Math.max(0, theirs[key])))).toBeLessThan(1e-6);
    }),
    { numRuns: 2000 },
  );
  const screen = new Color('srgb', [0.2, 0.5, 0.7]).to('lab-d65').coords;
  const ours = labToSrgb({ l: screen[0] ?? 0, a: screen[1] ?? 0, b: screen[2] ?? 0 });
  expect([ours.r, ours.g, ours.b].map((value) => Number(value.toFixed(3)))).toEqual([0.2, 0.5, 0.7]);
});

test('[hand] hue runs from 0 at red to 90 at yellow; grey has none; chroma is the distance from grey', () => {
  expect([hueDeg(1, 0), hueDeg(0, 2), hueDeg(-3, 0), hueDeg(0, -1), hueDeg(0, 0)]).toEqual([
    0, 90, 180, 270, 0,
  ]);
  expect(labToLch({ l: 50, a: 3, b: 4 })).toEqual({ l: 50, c: 5, hDeg: expect.closeTo(53.1301, 4) });
  const back = lchToLab({ l: 50, c: 5, hDeg: 53.13010235415598 });
  expect(back.a).toBeCloseTo(3, 12);
  expect(back.b).toBeCloseTo(4, 12);
});

test('[hand] a colour outside the screen is flagged and held, white and black are not', () => {
  expect(labToSrgb({ l: 60, a: -90, b: -60 }).isClipped).toBe(true);
  expect(srgbToHex(labToSrgb({ l: 100, a: 0, b: 0 }))).toBe('#ffffff');
  expect(labToSrgb({ l: 100, a: 0, b: 0 }).isClipped).toBe(false);
  expect(srgbToHex(labToSrgb({ l: 0, a: 0, b: 0 }))).toBe('#000000');
  expect(labToSrgb({ l: 0, a: 0, b: 0 }).isClipped).toBe(false);
  // Grey lighter than white lies above all three ends and below none.
  expect(labToSrgb({ l: 101, a: 0, b: 0 }).isClipped).toBe(true);
  expect(srgbToHex(labToSrgb({ l: 101, a: 0, b: 0 }))).toBe('#ffffff');
  expect(srgbToHex({ r: 0.5, g: 0, b: 1, isClipped: false })).toBe('#8000ff');
});

test('[property] each lamp has a white of its own, and the warm one is the most yellow', () => {
  const ratio = (lamp: (typeof lamps)[number]) => whiteOf(lamp).x / whiteOf(lamp).z;
  expect(spectrumToXyz(forBands(() => 1))).toEqual(whiteOf('D65'));
  expect(lamps.toSorted((a, b) => ratio(a) - ratio(b))).toEqual(['D65', 'D50', 'LED-B3', 'A']);
});
