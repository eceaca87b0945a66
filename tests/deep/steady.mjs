import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, mkdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { basename, join } from 'node:path';
import { root, toolEnvironment } from '../../src/build/ensureInstalled.mjs';
import { ensureBrowsers } from '../tools/browsers.mjs';

/**
 * Runs each journey many times while every core is busy with something else: a read that should wait fails
 * here sooner than on a quiet desk. Needs a built site. `only`: parts of file names, with commas; all
 * without. `times`: ten without.
 */
export async function steady(only = '', times = '10') {
  ensureBrowsers();
  const wanted = only.split(',').filter(Boolean);
  const files = ['journeys', 'print'].flatMap((folder) =>
    readdirSync(join(root, 'tests', folder))
      .filter(
        (name) =>
          name.endsWith('.test.ts') && (wanted.length === 0 || wanted.some((part) => name.startsWith(part))),
      )
      .map((name) => `tests/${folder}/${name}`),
  );
  if (files.length === 0) throw new Error(`No journey is called ${only}.`);
  mkdirSync(join(root, 'reports'), { recursive: true });
  const loads = Array.from({ length: availableParallelism() }, () =>
    spawn('node', ['-e', 'for (;;) Math.hypot(Math.random(), 1);'], {
      env: toolEnvironment(),
      stdio: 'ignore',
    }),
  );
  const rows = {};
  try {
    for (const file of files) {
      const failed = [];
      for (let i = 0; i < Number(times); i++) {
        const report = join(root, 'reports/steady.json');
        const { status } = spawnSync(
          'vitest',
          ['run', '-c', 'tests/journeys.config.ts', file, '--reporter=json', `--outputFile=${report}`],
          // Another share each time: the other browser, other pages.
          { cwd: root, env: { ...toolEnvironment(), TAUTLINE_SEED: String(i) }, stdio: 'ignore' },
        );
        if (status === 0) continue;
        const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
        failed.push(
          ...testResults.flatMap(({ assertionResults }) =>
            assertionResults
              .filter((one) => one.status === 'failed')
              .map((one) => `${one.fullName}: ${one.failureMessages[0]?.split('\n')[0]}`),
          ),
        );
        if (failed.length === 0) failed.push('it could not run');
      }
      rows[basename(file, '.test.ts')] = { times: Number(times), failed };
      console.log(`${basename(file)}: ${failed.length === 0 ? `green ${times} times` : failed.join('\n  ')}`);
    }
  } finally {
    for (const load of loads) load.kill();
  }
  if (Object.values(rows).some(({ failed }) => failed.length > 0)) process.exitCode = 1;
  return rows;
}
