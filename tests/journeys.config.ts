import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{journeys,print}/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
  },
});
