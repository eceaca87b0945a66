import { defineConfig } from 'vitest/config';

// One seed for the run: its workers read it again, perhaps on the next day.
process.env['TAUTLINE_SEED'] ??= String(Math.floor(Date.now() / 86_400_000));

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{journeys,print}/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
  },
});
