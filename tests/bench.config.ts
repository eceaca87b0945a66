import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    include: [],
    testTimeout: 120_000,
    fileParallelism: false,
  },
});
