import { defineConfig } from 'vitest/config';

/**
 * The tests that judge a change of the library: those of the library itself and the outside checks.
 * Simulations of thousands of faces and searches of hundreds of plans are left out: each takes seconds, thousands of changes would take a day.
 */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{lib,checks}/**/*.test.ts'],
    exclude: ['tests/lib/mapping/{coverage,monteCarlo,plan/planHeights}.test.ts'],
    testTimeout: 60_000,
  },
});
