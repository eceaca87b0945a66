import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Printed values for numbers drawn from a seed. */
export const seedSources = {
  'fnv-vectors': {
    kind: 'data',
    short: 'FNV vectors',
    authors: 'Noll LC',
    title: 'FNV hash test vectors, 32-bit FNV-1a',
    where: 'fnv_test_str with and without a closing zero byte',
    read: 'copy',
    readOn,
  },
  'go-fnv': {
    kind: 'data',
    short: 'Go, hash/fnv',
    authors: 'The Go Authors',
    year: 2011,
    title: 'hash/fnv: golden values',
    where: 'src/hash/fnv/fnv_test.go',
    address: 'https://github.com/golang/go',
    read: 'whole',
    readOn,
  },
  'murmur-vectors': {
    kind: 'data',
    short: 'MurmurHash3 vectors',
    authors: 'Bitcoin developers',
    title: 'MurmurHash3 test vectors',
    where: 'T(0x81f16f39, 0xffffffff, "")',
    read: 'copy',
    readOn,
  },
  'box-muller-article': {
    kind: 'review',
    short: 'Box–Muller, article',
    authors: 'encyclopaedia article',
    title: 'Box–Muller transform',
    where: 'zero expectation, unit variance',
    read: 'copy',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
