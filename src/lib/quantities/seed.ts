import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Draws the next number, 0 ≤ x < 1. Made from a seed; never from the clock. */
export type Draw = () => number;

/**
 * Hashes any parts to one unsigned 32-bit seed (FNV-1a over UTF-16 units, then MurmurHash3's finaliser).
 * Item seed = seedFrom(assignment, learner, skill, index). Golden vectors pin it: a change re-deals every
 * printed key.
 */
export function seedFrom(...parts: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const part of parts) {
    const text = `${part}\u0000`;
    for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/**
 * A stream of uniform numbers from a seed. The seed is hashed first: neighbouring seeds otherwise start
 * alike.
 */
export function drawFrom(seed: number): Draw {
  const generator = xoroshiro128plus(seedFrom('draw', seed) | 0);
  return () => uniformFloat64(generator);
}

/** One normal deviate (Box & Muller 1958), mean 0, standard deviation 1. */
export function drawNormal(draw: Draw): number {
  return Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
}

/** A normal deviate held inside [lo, hi] by drawing again, so the shape inside the limits stays normal. */
export function drawNormalWithin(draw: Draw, mean: number, sd: number, lo: number, hi: number): number {
  for (let tries = 0; tries < 200; tries++) {
    const value = mean + sd * drawNormal(draw);
    if (value >= lo && value <= hi) return value;
  }
  return Math.min(hi, Math.max(lo, mean));
}

/** A whole number, lo ≤ n ≤ hi. */
export function drawWhole(draw: Draw, lo: number, hi: number): number {
  return lo + Math.floor(draw() * (hi - lo + 1));
}

/** One item of a list that is not empty. */
export function drawOne<T>(draw: Draw, items: readonly [T, ...T[]]): T {
  return items[drawWhole(draw, 0, items.length - 1)] ?? items[0];
}
