import fc from 'fast-check';
import quadprog from 'quadprog';
import { expect, test } from 'vitest';
import { bandsNm, type Spectrum } from '#lib/colour/spectrum/bands.ts';
import { lchToLab } from '#lib/colour/spaces/lch.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { smoothSpectrum } from '#lib/colour/spectrum/smoothSpectrum.ts';
import { foldedWeights } from '#lib/tables/foldedWeights.ts';
import { real } from '#tests/tools/real.ts';

const smooth = (measured: Spectrum): Spectrum => {
  const found = smoothSpectrum(spectrumToLab(measured));
  if (!found.ok) throw new Error(found.reason);
  return found.reflectance;
};

test('[property] any earthy colour is met to 1e-9 in L*, a*, b* by a curve between 0 and 1', () => {
  fc.assert(
    fc.property(real(8, 92), real(0, 40), real(10, 110), (l, chroma, hDeg) => {
      const lab = lchToLab({ l, c: chroma * Math.min(1, l / 40, (100 - l) / 25), hDeg });
      const found = smoothSpectrum(lab);
      if (!found.ok) return false;
      const ours = spectrumToLab(found.reflectance);
      return (
        Math.hypot(ours.l - lab.l, ours.a - lab.a, ours.b - lab.b) < 1e-9 &&
        found.reflectance.every((value) => value > 0 && value < 1)
      );
    }),
    { numRuns: 300 },
  );
});

test('[hand] a grey gives a level curve: L* 50 reflects 0.1842 everywhere', () => {
  // ((50 + 16)/116)³ = 0.18419
  for (const value of smooth(bandsNm.map(() => ((50 + 16) / 116) ** 3)))
    expect(value).toBeCloseTo(0.18419, 5);
});

test('[library] no curve with the same colour is smoother: quadprog finds no way down from it', () => {
  for (const lab of [
    { l: 46, a: 12, b: 37 },
    { l: 24, a: 20, b: 20 },
    { l: 60, a: 5, b: 15 },
  ]) {
    const found = smoothSpectrum(lab);
    if (!found.ok) throw new Error(found.reason);
    const curve = found.reflectance.map((value) => Math.atanh(2 * value - 1));
    const rise = curve.map((value) => (1 - Math.tanh(value) ** 2) / 2);
    // quadprog counts from 1.
    const bending = curve.map((_, i) => [
      0,
      ...curve.map((__, j) =>
        i === j ? (i === 0 || i === curve.length - 1 ? 1 : 2) + 1e-8 : Math.abs(i - j) === 1 ? -1 : 0,
      ),
    ]);
    const downhill = curve.map((value, i) => (curve[i - 1] ?? value) + (curve[i + 1] ?? value) - 2 * value);
    const { x, y, z } = foldedWeights.D65;
    const keepsColour = curve.map((_, i) => [
      0,
      ...[x, y, z].map((row) => (row[i] ?? NaN) * (rise[i] ?? NaN)),
    ]);
    const { solution } = quadprog.solveQP(
      [[], ...bending],
      [0, ...downhill],
      [[], ...keepsColour],
      [0, 0, 0, 0],
      3,
    );
    expect(Math.max(...solution.slice(1).map(Math.abs))).toBeLessThan(1e-5);
    // And it is a curve, not a level line.
    expect(Math.max(...downhill.map(Math.abs))).toBeGreaterThan(1e-3);
  }
});

test('[hand] a colour that nothing reflects is refused, never NaN', () => {
  for (const lab of [
    { l: 0, a: 0, b: 0 },
    { l: 0, a: 9, b: 9 },
    { l: 100, a: 0, b: 0 },
    { l: 100, a: 5, b: 5 },
    { l: 120, a: 0, b: 0 },
    { l: -5, a: 0, b: 0 },
    { l: 1e9, a: 0, b: 0 },
    { l: 50, a: 150, b: -150 },
    { l: 95, a: 60, b: 60 },
    { l: NaN, a: 0, b: 0 },
    { l: 50, a: Infinity, b: 0 },
  ]) {
    expect(smoothSpectrum(lab)).toEqual({ ok: false, reason: 'no-smooth-spectrum' });
  }
});
