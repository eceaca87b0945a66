import { expect, test } from 'vitest';
import { normalDensity, normalShareBelow, normalUpperPoint } from '#lib/quantities/normal.ts';

test('[hand] density: 1/√(2π) at 0, e^−½ of it at 1', () => {
  expect(normalDensity(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 15);
  expect(normalDensity(1) / normalDensity(0)).toBeCloseTo(Math.exp(-0.5), 15);
  expect(normalDensity(-1)).toBe(normalDensity(1));
});

test('[library] share below x agrees with Simpson’s rule on the density, to 1e-12', () => {
  for (const x of [0.1, 0.5, 1, 1.96, 2.8, 4, 6, 7.9]) {
    const steps = 4000;
    let sum = 0;
    for (let i = 0; i <= steps; i++) {
      const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
      const t = (x * i) / steps;
      sum += weight * Math.exp((-t * t) / 2);
    }
    const area = (sum * x) / steps / 3 / Math.sqrt(2 * Math.PI);
    expect(Math.abs(normalShareBelow(x) - 0.5 - area)).toBeLessThan(1e-12);
    expect(Math.abs(normalShareBelow(-x) - 0.5 + area)).toBeLessThan(1e-12);
  }
  expect(normalShareBelow(0)).toBe(0.5);
  expect([
    normalShareBelow(-9),
    normalShareBelow(9),
    normalShareBelow(-Infinity),
    normalShareBelow(Infinity),
  ]).toEqual([0, 1, 0, 1]);
});

/** Points that tables of the normal distribution print; 1.960 and 2.576 also in NIST TN 1297, 4.3. */
test.each([
  [0.5, 0],
  [0.1, 1.2816],
  [0.05, 1.6449],
  [0.025, 1.96],
  [0.005, 2.5758],
  [0.001, 3.0902],
])('[table] the point with share %f above it is %f', (share, x) => {
  expect(Math.abs(normalUpperPoint(share) - x)).toBeLessThan(0.00005);
});

test('[property] the upper point gives back its share, to 1e-9 in x', () => {
  for (const share of [0.5, 0.4, 0.3, 0.1, 0.025, 0.0025, 1e-4, 1e-6, 1e-7]) {
    const x = normalUpperPoint(share);
    expect(Math.abs(1 - normalShareBelow(x) - share) / normalDensity(x)).toBeLessThan(1e-9);
  }
  expect(Number.isFinite(normalUpperPoint(1e-300))).toBe(true);
});
