import { spawn } from 'node:child_process';
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
  read: ({ numPassedTests, numFailedTests }) => ({
    passed: numPassedTests,
    failed: numFailedTests,
  }),
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
    environment: {
      PLAYWRIGHT_JSON_OUTPUT_NAME: join(root, 'reports/access.json'),
    },
    read: ({ stats }) => ({
      passed: stats.expected,
      failed: stats.unexpected + stats.flaky + stats.skipped,
    }),
  },
  vitest('journeys', 'journeys.config.ts'),
];

/**
 * What runs at one time: the types keep one core busy and the units leave gaps on two. The site's tests look
 * for things that move while a page loads, and want a quiet machine.
 */
const together = [['types', 'units'], ['build'], ['site'], ['access'], ['journeys']];

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

/**
 * Runs one step. Beside another its words are kept back until it ends, so that two do not run into each
 * other.
 */
function runStep(step, isAlone) {
  const start = Date.now();
  const [command, ...args] = step.command;
  if (isAlone) console.log(`\n── ${step.name}`);
  return new Promise((done) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...toolEnvironment(), ...step.environment },
      stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    const said = [];
    child.stdout?.on('data', (part) => said.push(part));
    child.stderr?.on('data', (part) => said.push(part));
    child.on('error', () => done({ step, status: 1, seconds: 0 }));
    child.on('close', (status) => {
      if (!isAlone) console.log(`\n── ${step.name}\n${Buffer.concat(said)}`);
      done({ step, status: status ?? 1, seconds: (Date.now() - start) / 1000 });
    });
  });
}

// One seed for the run: it may go on into the next day.
process.env.TAUTLINE_SEED ??= String(Math.floor(Date.now() / 86_400_000));
const began = Date.now();
const rows = [];
for (const names of together) {
  const wanted = steps.filter(
    ({ name }) => names.includes(name) && (asked.length === 0 || asked.includes(name)),
  );
  for (const { step, status, seconds } of await Promise.all(
    wanted.map((step) => runStep(step, wanted.length === 1)),
  ))
    rows.push({ name: step.name, seconds, status, ...report(step, status) });
  if (rows.some(({ name, status }) => name === 'build' && status !== 0)) {
    console.log('The site did not build: the tests of the built site cannot run.');
    break;
  }
}

console.log();
for (const { name, seconds, passed, failed } of rows)
  console.log(`${name.padEnd(10)}${seconds.toFixed(1).padStart(7)} s  ${passed} passed, ${failed} failed`);
const total = (key) => rows.reduce((sum, row) => sum + row[key], 0);
console.log(
  `${'together'.padEnd(10)}${((Date.now() - began) / 1000).toFixed(1).padStart(7)} s, shares by TAUTLINE_SEED=${process.env.TAUTLINE_SEED}\n`,
);
console.log(`${total('passed')} passed, ${total('failed')} failed`);
process.exit(total('failed') > 0 || total('passed') === 0 ? 1 : 0);
