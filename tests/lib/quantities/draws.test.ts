import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, test } from 'vitest';
import { drawFrom, drawNormal, drawNormalWithin, drawOne, seedFrom } from '#lib/quantities/seed.ts';

/** Gives these numbers in turn, over and over, and counts. */
function drawing(...numbers: readonly number[]) {
  let count = 0;
  return { draw: () => numbers[count++ % numbers.length] ?? NaN, count: () => count };
}

/** FNV-1a, then the finaliser of MurmurHash3, in whole numbers without end. */
function hashOf(text: string): number {
  const whole = 2n ** 32n;
  let hash = 0x811c9dc5n;
  for (const sign of text) hash = ((hash ^ BigInt(sign.charCodeAt(0))) * 0x01000193n) % whole;
  hash = ((hash ^ (hash >> 16n)) * 0x85ebca6bn) % whole;
  hash = ((hash ^ (hash >> 13n)) * 0xc2b2ae35n) % whole;
  return Number(hash ^ (hash >> 16n));
}

test('[hand] a seed is the hash of its parts, each closed by a zero; a stream starts from the hash of its seed', () => {
  expect(seedFrom('a', 12)).toBe(hashOf('a\u000012\u0000'));
  expect(seedFrom('tilt', 'ö', 0)).toBe(hashOf('tilt\u0000ö\u00000\u0000'));
  const generator = xoroshiro128plus(hashOf('draw\u00007\u0000') | 0);
  expect(drawFrom(7)()).toBe(uniformFloat64(generator));
});

test('[hand] a normal deviate of ½ and 0 is √(2 ln 2); within limits it is taken as it is', () => {
  const deviate = Math.sqrt(2 * Math.LN2);
  expect(drawNormal(drawing(0.5, 0).draw)).toBeCloseTo(deviate, 12);
  expect(drawNormalWithin(drawing(0.5, 0).draw, 2, 3, 0, 6)).toBeCloseTo(2 + 3 * deviate, 12);
  // Too high, then as far below the middle.
  const twice = drawing(0.5, 0, 0.5, 0.5);
  expect(drawNormalWithin(twice.draw, 2, 3, -2, 5)).toBeCloseTo(2 - 3 * deviate, 12);
  expect(twice.count()).toBe(4);
});

test('[hand] both limits count as inside; limits that no draw meets give the one nearest to the mean after 200', () => {
  const onEdge = drawing(0, 0);
  expect(drawNormalWithin(onEdge.draw, 2, 3, 2, 5)).toBe(2);
  expect(drawNormalWithin(onEdge.draw, 2, 3, -1, 2)).toBe(2);
  expect(onEdge.count()).toBe(4);
  for (const [mean, nearest] of [
    [2, 100],
    [500, 101],
  ] as const) {
    const never = drawing(0.5, 0);
    expect(drawNormalWithin(never.draw, mean, 1, 100, 101)).toBe(nearest);
    expect(never.count()).toBe(400);
  }
});

test('[hand] one of a list: the first, the last, and none beyond', () => {
  const of = (number: number) => drawOne(() => number, ['a', 'b', 'c']);
  expect([0, 0.32, 0.34, 0.65, 0.67, 0.999].map(of)).toEqual(['a', 'a', 'b', 'b', 'c', 'c']);
});
