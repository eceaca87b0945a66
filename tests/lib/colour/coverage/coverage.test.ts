import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareApart, shareAtRandom, shareOfDots, strokesForShare } from '#lib/colour/coverage/coverage.ts';
import { drawFrom } from '#lib/quantities/seed.ts';
import { real } from '#tests/tools/real.ts';

const sixty = { count: 60, lengthMm: 8, widthMm: 0.18, areaMm2: 287.625 };

test('[hand] 60 strokes of 8 by 0.18 mm on 287.625 mm²: 86.4/287.625 apart, 1 − e^−0.3004 at random; spread to 0.35 mm; 90 strokes', () => {
  const percent = (share: number) => Number((100 * share).toFixed(1));
  expect([shareApart(sixty), shareAtRandom(sixty)].map(percent)).toEqual([30, 25.9]);
  expect(
    [shareApart({ ...sixty, widthMm: 0.35 }), shareAtRandom({ ...sixty, widthMm: 0.35 })].map(percent),
  ).toEqual([58.4, 44.2]);
  expect([shareApart({ ...sixty, count: 90 }), shareAtRandom({ ...sixty, count: 90 })].map(percent)).toEqual([
    45.1, 36.3,
  ]);
  const both = { ...sixty, count: 90, widthMm: 0.35 };
  expect([shareApart(both), shareAtRandom(both)].map(percent)).toEqual([87.6, 58.4]);
});

test('[hand] 8 dots a mm² of 0.2 mm cover 22.2 %, of 0.3 mm 43.2 %', () => {
  expect(100 * shareOfDots({ perMm2: 8, diameterMm: 0.2 })).toBeCloseTo(22.2, 1);
  expect(100 * shareOfDots({ perMm2: 8, diameterMm: 0.3 })).toBeCloseTo(43.2, 1);
});

test('[library] dots thrown at random by a seed cover what the sum says', () => {
  const draw = drawFrom(5);
  const side = 12;
  const dots = Array.from({ length: 8 * side * side }, () => [draw() * side, draw() * side] as const);
  let hit = 0;
  const looks = 4000;
  for (let i = 0; i < looks; i++) {
    // Looked at away from the edge, where no dot is missing.
    const [x, y] = [1 + draw() * (side - 2), 1 + draw() * (side - 2)];
    if (dots.some(([a, b]) => Math.hypot(a - x, b - y) < 0.15)) hit++;
  }
  expect(Math.abs(hit / looks - shareOfDots({ perMm2: 8, diameterMm: 0.3 }))).toBeLessThan(0.03);
});

test('[property] between nothing and all; crossing never covers more than lying apart; wider never covers less', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 400 }),
      real(1, 15),
      real(0.05, 0.8),
      real(20, 600),
      (count, lengthMm, widthMm, areaMm2) => {
        const strokes = { count, lengthMm, widthMm, areaMm2 };
        const [apart, random] = [shareApart(strokes), shareAtRandom(strokes)];
        expect(random >= 0 && random <= apart + 1e-12 && apart <= 1).toBe(true);
        expect(shareAtRandom({ ...strokes, widthMm: widthMm * 1.2 })).toBeGreaterThanOrEqual(random);
      },
    ),
  );
  expect(shareApart({ ...sixty, areaMm2: 0 })).toBe(0);
  expect(shareAtRandom({ ...sixty, areaMm2: 0 })).toBe(0);
});

test('[hand] strokes for a share: 30 % of 287.625 mm² by strokes of 1.44 mm² is 59.92, so 60', () => {
  expect(strokesForShare(0.3, sixty)).toBe(60);
  expect(strokesForShare(0.5, { lengthMm: 10, widthMm: 0.2, areaMm2: 200 })).toBe(50);
  expect(strokesForShare(0, sixty)).toBe(0);
  expect(strokesForShare(1.1, sixty)).toBeUndefined();
  expect(strokesForShare(-0.1, sixty)).toBeUndefined();
  expect(strokesForShare(0.5, { ...sixty, widthMm: 0 })).toBeUndefined();
  expect(strokesForShare(0.5, { ...sixty, areaMm2: 0 })).toBeUndefined();
  expect(strokesForShare(1, { lengthMm: 10, widthMm: 0.2, areaMm2: 200 })).toBe(100);
});
