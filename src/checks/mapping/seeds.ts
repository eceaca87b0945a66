import { drawFrom, drawNormal, seedFrom } from '#lib/quantities/seed.ts';
import type { Check } from '../check.ts';

/**
 * The number that undoes a multiplication by an odd number, 32 bits (Newton's steps double the right bits).
 */
function undo(odd: number): number {
  let inverse = odd;
  for (let step = 0; step < 5; step++) inverse = Math.imul(inverse, 2 - Math.imul(odd, inverse));
  return inverse;
}

/** The state before the last mixing: each step of it can be walked back. */
function unmixed(hash: number): number {
  let state = hash ^ (hash >>> 16);
  state = Math.imul(state, undo(0xc2b2ae35));
  state ^= (state >>> 13) ^ (state >>> 26);
  state = Math.imul(state, undo(0x85ebca6b));
  return (state ^ (state >>> 16)) >>> 0;
}

/** FNV-1a of a text without the closing zero that `seedFrom` adds. */
function fnvOf(text: string): number {
  return Math.imul(unmixed(seedFrom(text)), undo(0x01000193)) >>> 0;
}

function spreadOfNormals(): number {
  const draw = drawFrom(1958);
  const count = 250_000;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += drawNormal(draw) ** 2;
  return Math.sqrt(squares / count);
}

const exact = 'whole numbers: exact';

/** Seeds and random numbers: a change here would re-deal every printed key. */
export const seedChecks = [
  {
    id: 'fnv-a-zero',
    kind: 'table',
    source: 'fnv-vectors',
    where: '32-bit FNV-1a: with a closing zero byte',
    what: 'hash of “a”, mixing taken off',
    printed: 0x2b24d044,
    unit: '1',
    tolerance: 0,
    because: exact,
    ours: (factor = 1) => factor * unmixed(seedFrom('a')),
  },
  {
    id: 'fnv-foobar',
    kind: 'table',
    source: 'fnv-vectors',
    where: '32-bit FNV-1a: without one',
    what: 'hash of “foobar”, mixing and closing zero taken off',
    printed: 0xbf9cf968,
    unit: '1',
    tolerance: 0,
    because: exact,
    ours: (factor = 1) => factor * fnvOf('foobar'),
  },
  {
    id: 'fnv-abc',
    kind: 'table',
    source: 'go-fnv',
    where: 'golden32a',
    what: 'hash of “abc”, mixing and closing zero taken off',
    printed: 0x1a47e90b,
    unit: '1',
    tolerance: 0,
    because: exact,
    ours: (factor = 1) => factor * fnvOf('abc'),
  },
  {
    // Two letters whose FNV-1a state is 0xffffffff: what is left is the mixing alone, which Murmur prints for
    // that seed.
    id: 'murmur-mixing',
    kind: 'table',
    source: 'murmur-vectors',
    where: 'empty text, seed 0xffffffff',
    what: 'the mixing of a seed of all ones',
    printed: 0x81f16f39,
    unit: '1',
    tolerance: 0,
    because: exact,
    ours: (factor = 1) => factor * seedFrom('\ufb26\ubd7e'),
  },
  {
    id: 'box-muller-spread',
    kind: 'hand',
    source: 'box-muller-article',
    where: 'unit variance',
    what: 'spread of 250,000 normal draws',
    printed: 1,
    unit: '1',
    tolerance: 0.0045,
    because: 'three times what chance leaves in 250,000 draws',
    ours: (factor = 1) => factor * spreadOfNormals(),
  },
] as const satisfies readonly Check[];
