import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from '../../src/build/ensureInstalled.mjs';
import { ensureBrowsers } from '../tools/browsers.mjs';

/**
 * Builds the site and runs the steps of the built site whole: every page in both themes at all widths, every
 * text, every mark, every paper.
 */
export function wholePages() {
  ensureBrowsers();
  if (run('npm', ['run', '--silent', 'build']) !== 0) throw new Error('The site did not build.');
  process.env.TAUTLINE_WHOLE = '1';
  try {
    const isGreen = run('node', ['tests/tools/test.mjs', 'access', 'journeys']) === 0;
    const journeys = JSON.parse(readFileSync(join(root, 'reports/journeys.json'), 'utf8'));
    const { stats } = JSON.parse(readFileSync(join(root, 'reports/access.json'), 'utf8'));
    if (!isGreen) process.exitCode = 1;
    return {
      passed: stats.expected + journeys.numPassedTests,
      failed: stats.unexpected + stats.flaky + stats.skipped + journeys.numFailedTests,
    };
  } finally {
    delete process.env.TAUTLINE_WHOLE;
  }
}
