import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from '../../src/build/ensureInstalled.mjs';

const caught = new Set(['Killed', 'Timeout']);
const missed = new Set(['Survived', 'NoCoverage']);

/**
 * Runs the mutation tests and counts, file by file, how many changes the tests noticed. `scope` narrows the
 * files.
 */
export function mutation(scope) {
  const status = run('stryker', ['run', 'tests/stryker.config.mjs', ...(scope ? ['--mutate', scope] : [])]);
  if (status !== 0) throw new Error('The mutation run stopped before its end.');
  const { files } = JSON.parse(readFileSync(join(root, 'reports/mutation/report.json'), 'utf8'));
  const rows = Object.entries(files).map(([file, { mutants }]) => ({
    file,
    caught: mutants.filter(({ status: said }) => caught.has(said)).length,
    missed: mutants
      .filter(({ status: said }) => missed.has(said))
      .map(({ location, mutatorName }) => `${location.start.line}: ${mutatorName}`),
  }));
  const noticed = rows.reduce((sum, row) => sum + row.caught, 0);
  const survivors = Object.fromEntries(
    rows.filter((row) => row.missed.length > 0).map((row) => [row.file, row.missed]),
  );
  const survived = Object.values(survivors).flat().length;
  const bySubject = {};
  for (const row of rows) {
    const subject = row.file.split('/')[2] ?? '';
    bySubject[subject] ??= { caught: 0, missed: 0 };
    bySubject[subject].caught += row.caught;
    bySubject[subject].missed += row.missed.length;
  }
  for (const subject of Object.values(bySubject)) subject.percent = percent(subject.caught, subject.missed);
  const byFile = Object.fromEntries(
    rows.map(({ file, caught: hit, missed: list }) => [
      file,
      { caught: hit, missed: list.length, percent: percent(hit, list.length) },
    ]),
  );
  return {
    percent: percent(noticed, survived),
    caught: noticed,
    missed: survived,
    bySubject,
    byFile,
    survivors,
  };
}

const percent = (hit, miss) => (hit + miss === 0 ? 100 : Math.round((1000 * hit) / (hit + miss)) / 10);
