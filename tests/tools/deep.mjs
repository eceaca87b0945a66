import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root, run } from '../../src/build/ensureInstalled.mjs';
import { ensureBrowsers } from './browsers.mjs';

// `npm run deep`: the slow measurements. Each part's numbers go into tests/deep.json with the day and the
// commit.
//   npm run deep                          every part
//   npm run deep -- lighthouse            one part
//   npm run deep -- mutation 'src/lib/geometry/**/*.ts'      one part of the library; recorded file by file
//   npm run deep -- mutation 'src/lib/geometry/*.ts' 'tests/lib/geometry/*.ts' 1
//                                         the same judged by these tests alone, one change at a time
//   npm run deep -- pages                 every page and journey whole, of which npm test takes a share
// npm run deep -- steady mixPlots,learn 10 these journeys ten times over with both cores loaded; not recorded
//   npm run deep -- lessons 20,200        only these numbers of lessons; not recorded
//   npm run deep -- build HEAD~3          the build against another commit's; not recorded

ensureInstalled();
const [asked, scope, times, workers] = process.argv.slice(2);
const file = join(root, 'tests/deep.json');
const kept = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
const git = (...args) => spawnSync('git', args, { cwd: root, encoding: 'utf8' }).stdout.trim();

const parts = {
  mutation: async (stamp) =>
    (await import('../deep/mutation.mjs')).mutation({
      ...stamp,
      scope,
      judges: times,
      workers,
      earlier: kept.mutation,
    }),
  lighthouse: async () => {
    ensureBrowsers();
    if (run('npm', ['run', '--silent', 'build']) !== 0) throw new Error('The site did not build.');
    return (await import('../deep/lighthouse.mjs')).lighthouseScores();
  },
  recipes: async () => (await import('../deep/recipes.ts')).wholeSearches(),
  covers: async () => (await import('../deep/covers.ts')).manyCovers(),
  pages: async () => (await import('../deep/pages.mjs')).wholePages(),
  steady: async () => (await import('../deep/steady.mjs')).steady(scope, times),
  nodes: async () => (await import('../deep/olderNodes.ts')).olderNodes(),
  lessons: async () => (await import('../deep/manyLessons.mjs')).manyLessons(scope),
  build: async () => (await import('../deep/builds.mjs')).builds(scope),
};

if (asked !== undefined && !(asked in parts)) {
  console.error(`No part is called ${asked}. Parts: ${Object.keys(parts).join(', ')}.`);
  process.exit(1);
}
for (const [name, measure] of Object.entries(parts)) {
  if (asked !== undefined && asked !== name) continue;
  const start = Date.now();
  const stamp = { day: new Date().toISOString().slice(0, 10), commit: git('rev-parse', '--short', 'HEAD') };
  const numbers = await measure(stamp);
  const seconds = Math.round((Date.now() - start) / 1000);
  console.log(`${name}: ${seconds} s`);
  // Lines of a file are no file: only whole files are recorded.
  if (scope && (name !== 'mutation' || /:\d/.test(scope))) {
    console.log(JSON.stringify(numbers, undefined, 2));
    continue;
  }
  kept[name] = { ...stamp, ...(scope ? {} : { seconds }), ...numbers };
  writeFileSync(file, `${JSON.stringify(kept, undefined, 2)}\n`);
}
