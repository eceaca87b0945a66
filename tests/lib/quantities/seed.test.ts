import { expect, test } from 'vitest';
import { drawFrom, drawNormal, drawNormalWithin, drawWhole, seedFrom } from '#lib/quantities/seed.ts';

test('[hand] the hash tells parts apart and keeps their order', () => {
  const seeds = [seedFrom('a', 'bc'), seedFrom('ab', 'c'), seedFrom('bc', 'a'), seedFrom('a', 'bc', 0)];
  expect(new Set(seeds).size).toBe(4);
});

test('[property] a stream depends on its seed alone', () => {
  const first = drawFrom(7);
  const again = drawFrom(7);
  for (let i = 0; i < 100; i++) expect(first()).toBe(again());
});

test('[property] neighbouring seeds give unrelated first numbers: uniform mean and spread', () => {
  const firsts = Array.from({ length: 4000 }, (_, seed) => drawFrom(seed)());
  const mean = firsts.reduce((a, b) => a + b, 0) / firsts.length;
  const variance = firsts.reduce((a, b) => a + (b - mean) ** 2, 0) / firsts.length;
  expect(mean).toBeCloseTo(0.5, 1);
  expect(variance).toBeCloseTo(1 / 12, 1.7);
  expect(firsts.every((x) => x >= 0 && x < 1)).toBe(true);
});

test('[property] normal deviates have mean 0 and spread 1; limits hold', () => {
  const draw = drawFrom(11);
  const values = Array.from({ length: 20000 }, () => drawNormal(draw));
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length);
  expect(Math.abs(mean)).toBeLessThan(0.03);
  expect(Math.abs(sd - 1)).toBeLessThan(0.03);
  for (let i = 0; i < 500; i++) {
    const value = drawNormalWithin(draw, 0, 5, -1, 1);
    expect(value).toBeGreaterThanOrEqual(-1);
    expect(value).toBeLessThanOrEqual(1);
  }
});

test('[property] whole numbers reach both ends and nothing beyond', () => {
  const draw = drawFrom(3);
  const seen = new Set(Array.from({ length: 400 }, () => drawWhole(draw, 2, 5)));
  expect([...seen].sort()).toEqual([2, 3, 4, 5]);
});
