import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root, run } from '../../src/build/ensureInstalled.mjs';
import { ensureBrowsers } from './browsers.mjs';

// `npm run deep`: the slow measurements. Each part's numbers go into tests/deep.json with the day and the
// commit.
//   npm run deep                          every part
//   npm run deep -- lighthouse            one part
//   npm run deep -- mutation 'src/lib/geometry/**/*.ts'      one part of the library; not recorded
//   npm run deep -- pages                 every page and journey whole, of which npm test takes a share
// npm run deep -- steady mixPlots,learn 10 these journeys ten times over with both cores loaded; not recorded
//   npm run deep -- lessons 20,200        only these numbers of lessons; not recorded
//   npm run deep -- build HEAD~3          the build against another commit's; not recorded

ensureInstalled();
const [asked, scope, times] = process.argv.slice(2);
const file = join(root, 'tests/deep.json');
const kept = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
const git = (...args) => spawnSync('git', args, { cwd: root, encoding: 'utf8' }).stdout.trim();

const parts = {
  mutation: async () => (await import('../deep/mutation.mjs')).mutation(scope),
  lighthouse: async () => {
    ensureBrowsers();
    if (run('npm', ['run', '--silent', 'build']) !== 0) throw new Error('The site did not build.');
    return (await import('../deep/lighthouse.mjs')).lighthouseScores();
  },
  recipes: async () => (await import('../deep/recipes.ts')).wholeSearches(),
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
  const numbers = await measure();
  const seconds = Math.round((Date.now() - start) / 1000);
  console.log(`${name}: ${seconds} s`);
  if (scope) {
    console.log(JSON.stringify(numbers, undefined, 2));
    continue;
  }
  kept[name] = {
    day: new Date().toISOString().slice(0, 10),
    commit: git('rev-parse', '--short', 'HEAD'),
    seconds,
    ...numbers,
  };
  writeFileSync(file, `${JSON.stringify(kept, undefined, 2)}\n`);
}
