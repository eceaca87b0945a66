// Changes the library one small piece at a time and asks whether a test notices.
// Tables are data, the index only passes names on, and the entry says ranges, each of which
// tests/lib/exports.test.ts tries from outside: they are left as they are.

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'oneProcess',
  plugins: ['./tests/deep/oneProcess.mjs'],
  mutate: [
    'src/lib/**/*.ts',
    '!src/lib/index.ts',
    '!src/lib/entry/*.ts',
    'src/lib/entry/domain.ts',
    '!src/lib/tables/**',
    '!src/lib/evidence/sources/**',
  ],
  reporters: ['progress-append-only', 'clear-text', 'json'],
  clearTextReporter: {
    allowColor: false,
    logTests: false,
    reportTests: false,
    reportScoreTable: true,
    reportMutants: false,
  },
  jsonReporter: { fileName: 'reports/mutation/report.json' },
  concurrency: 2,
  timeoutMS: 10_000,
  ignoreStatic: true,
  allowEmpty: true,
  checkers: [],
  ignorePatterns: ['dist', 'reports', '.astro', 'public'],
  tempDirName: '.stryker-tmp',
  warnings: { slow: false },
};
