import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { judges, tooSlow } from './judges.mjs';
import { listed, startList } from './listTests.mjs';

// Stryker's test runner for the library: its modules and its tests need no bundler, so Node reads them once and
// the tests run again for each change in the same process, those that were quick without a change first. To
// start the test program anew for each change cost many times what the tests themselves do.
// What a change leaves behind must not judge the next one: a test that failed is run again without the
// change. Should it fail then too, every module is read afresh and the change judged once more.

const list = new URL('listTests.mjs', import.meta.url).href;
let reading = 0;

/** What the copy that holds the changes imports: the list in place of vitest, modules by the number of the reading. */
function hook() {
  const folder = pathToFileURL(`${process.cwd()}/`).href;
  registerHooks({
    resolve: (name, context, next) => {
      if (name === 'vitest' && context.parentURL?.startsWith(`${folder}tests/`))
        return { url: list, shortCircuit: true };
      const found = next(name, context);
      const isOurs = found.url.startsWith(folder) && found.url.endsWith('.ts');
      return isOurs ? { ...found, url: `${found.url}?${reading}` } : found;
    },
  });
}

/** What each test took without a change, for the processes that follow one that never ended: quick tests come first. */
const timesFile = 'testTimes.json';

async function readTests() {
  reading++;
  startList();
  const slow = new Set(tooSlow.flatMap((glob) => globSync(glob)));
  for (const file of judges().flatMap((glob) => globSync(glob))) {
    if (slow.has(file)) continue;
    startList.file(file);
    await import(pathToFileURL(join(process.cwd(), file)).href);
  }
  return listed();
}

/** The message of a test that fails, nothing of one that passes. */
async function faultOf(test) {
  try {
    await test.run();
    return undefined;
  } catch (error) {
    return String(error?.message ?? error);
  }
}

function oneProcess() {
  // Where the changed code looks for the change that is on, and counts.
  const state = (globalThis.__stryker__ ??= {});
  let tests = new Map();
  let msOf = new Map();

  const judge = async ({ activeMutant, testFilter, hitLimit }) => {
    const asked = (testFilter ?? [...tests.keys()]).toSorted(
      (one, other) => (msOf.get(one) ?? 0) - (msOf.get(other) ?? 0),
    );
    for (const [i, id] of asked.entries()) {
      Object.assign(state, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
      const failureMessage = await faultOf(tests.get(id));
      const isEndless = state.hitCount > hitLimit;
      state.activeMutant = undefined;
      if (isEndless) return { id, status: 'timeout', reason: failureMessage };
      if (failureMessage !== undefined)
        return { id, status: 'killed', killedBy: [id], failureMessage, nrOfTests: i + 1 };
    }
    return { status: 'survived', nrOfTests: asked.length };
  };

  return {
    capabilities: () => ({ reloadEnvironment: false }),
    init: async () => {
      hook();
      tests = await readTests();
      if (existsSync(timesFile)) msOf = new Map(JSON.parse(readFileSync(timesFile, 'utf8')));
    },
    dryRun: async () => {
      const results = [];
      for (const [id, test] of tests) {
        state.currentTestId = id;
        const start = performance.now();
        const failureMessage = await faultOf(test);
        const timeSpentMs = performance.now() - start;
        msOf.set(id, timeSpentMs);
        results.push({
          id,
          name: id,
          timeSpentMs,
          ...(failureMessage === undefined ? { status: 0 } : { status: 1, failureMessage }),
        });
      }
      state.currentTestId = undefined;
      writeFileSync(timesFile, JSON.stringify([...msOf]));
      return { status: 'complete', tests: results, mutantCoverage: state.mutantCoverage };
    },
    mutantRun: async (options) => {
      const { id, ...said } = await judge(options);
      if (id === undefined || (await faultOf(tests.get(id))) === undefined) return said;
      tests = await readTests();
      const { id: _, ...again } = await judge(options);
      return again;
    },
  };
}
oneProcess.inject = [];

export const strykerPlugins = [{ kind: 'TestRunner', name: 'oneProcess', factory: oneProcess }];
