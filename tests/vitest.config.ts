import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{lib,checks,specs,pictures}/**/*.test.ts', 'tests/*.test.ts'],
    testTimeout: 60_000,
    maxWorkers: 2,
  },
});
