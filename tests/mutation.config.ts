import { defineConfig } from 'vitest/config';

/** The tests that judge a change of the library: those of the library itself and the outside checks. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: { include: ['tests/{lib,checks}/**/*.test.ts'], testTimeout: 60_000 },
});
