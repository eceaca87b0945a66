import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from '../../src/build/ensureInstalled.mjs';
import stryker from '../stryker.config.mjs';

const caught = new Set(['Killed', 'Timeout']);
const missed = new Set(['Survived', 'NoCoverage']);

/**
 * Runs the mutation tests and counts, file by file, how many changes the tests noticed. `scope` narrows the
 * files, `judges` the tests that may notice: fewer of them can only miss more. What earlier runs said of
 * other files stays as it was, so that the whole library can be measured in parts.
 */
export function mutation({ scope, judges, workers, earlier, day, commit }) {
  if (judges) process.env.TAUTLINE_JUDGES = judges;
  const status = run('stryker', [
    'run',
    'tests/stryker.config.mjs',
    ...(scope ? ['--mutate', scope] : []),
    ...(workers ? ['--concurrency', workers] : []),
  ]);
  if (status !== 0) throw new Error('The mutation run stopped before its end.');
  const { files } = JSON.parse(readFileSync(join(root, 'reports/mutation/report.json'), 'utf8'));
  const byFile = scope ? present(earlier?.byFile) : {};
  const survivors = scope ? present(earlier?.survivors) : {};
  // Types alone and data hold nothing to change: no report names them.
  const asked = scope ? filesOf(scope.split(',')) : mutated();
  for (const file of new Set([...asked, ...Object.keys(files)])) {
    const mutants = files[file]?.mutants ?? [];
    const list = mutants
      .filter(({ status: said }) => missed.has(said))
      .map(({ location, mutatorName }) => `${location.start.line}: ${mutatorName}`);
    const hit = mutants.filter(({ status: said }) => caught.has(said)).length;
    byFile[file] = { ...counted(hit, list.length), day, commit, ...(judges ? { judges } : {}) };
    delete survivors[file];
    if (list.length > 0) survivors[file] = list;
  }
  return {
    ...summed(byFile),
    notYet: notYet(byFile),
    byFile: inOrder(byFile),
    survivors: inOrder(survivors),
  };
}

/** The files of a record that are still there. */
const present = (record = {}) =>
  Object.fromEntries(Object.entries(record).filter(([file]) => existsSync(join(root, file))));

const inOrder = (record) =>
  Object.fromEntries(Object.entries(record).toSorted(([one], [other]) => (one < other ? -1 : 1)));

/** All changes together, and those of each subject. */
function summed(byFile) {
  const bySubject = {};
  for (const [file, { caught: hit, missed: miss }] of Object.entries(byFile)) {
    const subject = file.split('/')[2] ?? '';
    const { caught: hits, missed: misses } = bySubject[subject] ?? { caught: 0, missed: 0 };
    bySubject[subject] = counted(hits + hit, misses + miss);
  }
  const all = Object.values(bySubject);
  return {
    ...counted(
      all.reduce((sum, { caught: hit }) => sum + hit, 0),
      all.reduce((sum, { missed: miss }) => sum + miss, 0),
    ),
    bySubject: inOrder(bySubject),
  };
}

const filesOf = (globs) =>
  globs
    .flatMap((glob) => globSync(glob, { cwd: root }))
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => !file.endsWith('.d.ts'));

/** The files that a whole run changes. */
function mutated() {
  const left = new Set(
    filesOf(stryker.mutate.filter((glob) => glob.startsWith('!')).map((glob) => glob.slice(1))),
  );
  const taken = new Set(filesOf(stryker.mutate.filter((glob) => !glob.startsWith('!'))));
  return [...taken].filter((file) => !left.has(file) || stryker.mutate.includes(file)).toSorted();
}

/** Files whose changes no run has counted. */
const notYet = (byFile) => mutated().filter((file) => !(file in byFile));

const counted = (hit, miss) => ({
  caught: hit,
  missed: miss,
  percent: hit + miss === 0 ? 100 : Math.round((1000 * hit) / (hit + miss)) / 10,
});
