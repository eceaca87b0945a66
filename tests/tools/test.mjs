import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root, toolEnvironment } from '../../src/build/ensureInstalled.mjs';
import { ensureBrowsers } from './browsers.mjs';

// `npm test`: installs what is missing, runs every test in order, and ends with one line of totals.

const vitest = (name, config) => ({
  name,
  command: [
    'vitest',
    'run',
    '-c',
    `tests/${config}`,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=reports/${name}.json`,
  ],
  read: ({ numPassedTests, numFailedTests }) => ({ passed: numPassedTests, failed: numFailedTests }),
});

/** Steps without a report count as one test each. */
const steps = [
  { name: 'types', command: ['npm', 'run', '--silent', 'check'] },
  vitest('units', 'vitest.config.ts'),
  { name: 'build', command: ['npm', 'run', '--silent', 'build'] },
  vitest('site', 'site.config.ts'),
  {
    name: 'access',
    command: ['playwright', 'test', '-c', 'tests/playwright.config.ts', '--reporter=dot,json'],
    environment: { PLAYWRIGHT_JSON_OUTPUT_NAME: join(root, 'reports/access.json') },
    read: ({ stats }) => ({ passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped }),
  },
  vitest('journeys', 'journeys.config.ts'),
];

function report({ name, read }, status) {
  let counts = { passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1 };
  if (read) {
    try {
      counts = read(JSON.parse(readFileSync(join(root, `reports/${name}.json`), 'utf8')));
    } catch {
      // The tool stopped before it could write its report: one failure.
    }
    // A file that could not be loaded holds no failed test, yet it failed.
    if (status !== 0 && counts.failed === 0) counts.failed = 1;
  }
  return counts;
}

ensureInstalled();
ensureBrowsers();
rmSync(join(root, 'reports'), { recursive: true, force: true });
mkdirSync(join(root, 'reports'), { recursive: true });
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !steps.some((step) => step.name === name));
if (unknown.length > 0) {
  console.error(
    `No step is called ${unknown.join(', ')}. Steps: ${steps.map(({ name }) => name).join(', ')}.`,
  );
  process.exit(1);
}

const rows = [];
for (const step of steps) {
  if (asked.length > 0 && !asked.includes(step.name)) continue;
  console.log(`\n── ${step.name}`);
  const start = Date.now();
  const [command, ...args] = step.command;
  const { status } = spawnSync(command, args, {
    cwd: root,
    env: { ...toolEnvironment(), ...step.environment },
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  const seconds = (Date.now() - start) / 1000;
  rows.push({ name: step.name, seconds, ...report(step, status ?? 1) });
  if (step.name === 'build' && status !== 0) {
    console.log('The site did not build: the tests of the built site cannot run.');
    break;
  }
}

console.log();
for (const { name, seconds, passed, failed } of rows)
  console.log(`${name.padEnd(10)}${seconds.toFixed(1).padStart(7)} s  ${passed} passed, ${failed} failed`);
const total = (key) => rows.reduce((sum, row) => sum + row[key], 0);
console.log(`${'together'.padEnd(10)}${total('seconds').toFixed(1).padStart(7)} s\n`);
console.log(`${total('passed')} passed, ${total('failed')} failed`);
process.exit(total('failed') > 0 || total('passed') === 0 ? 1 : 0);
