import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { root } from '../../src/build/ensureInstalled.mjs';

/** Copies what the site is built from: the sources as they stand here, or those of a commit. */
export function copySources(folder, commit) {
  mkdirSync(folder, { recursive: true });
  if (commit === undefined) {
    for (const file of git('ls-files', '-z').split('\0').filter(Boolean)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      cpSync(join(root, file), join(folder, file));
    }
  } else if (
    spawnSync(`git archive ${commit} | tar -x -C ${JSON.stringify(folder)}`, {
      cwd: root,
      shell: true,
      stdio: 'inherit',
    }).status !== 0
  ) {
    throw new Error(`The sources of ${commit} could not be read.`);
  }
  // A copy, not a link: the build keeps a cache in there.
  cpSync(join(root, 'node_modules'), join(folder, 'node_modules'), {
    recursive: true,
    verbatimSymlinks: true,
  });
}

/** Seconds by the clock, which others on the machine lengthen, and of the processor, which they hardly do: Node's own, without the indexer. */
export function timeBuild(folder) {
  for (const name of ['.astro', 'dist', 'node_modules/.astro', 'node_modules/.vite', cpuFile])
    rmSync(join(folder, name), { recursive: true, force: true });
  const start = performance.now();
  const { status, stdout, stderr } = spawnSync('astro', ['build'], {
    cwd: folder,
    env: { ...environment(folder), NODE_OPTIONS: `--import ${countCpu(join(folder, cpuFile))}` },
    encoding: 'utf8',
    maxBuffer: 1e9,
    shell: process.platform === 'win32',
  });
  const seconds = tenth((performance.now() - start) / 1000);
  if (status !== 0)
    throw new Error(`The build in ${folder} stopped:\n${`${stdout}\n${stderr}`.slice(-4000)}`);
  const pages = readdirSync(join(folder, 'dist'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  ).length;
  const cpuSeconds = tenth(
    readFileSync(join(folder, cpuFile), 'utf8')
      .split('\n')
      .reduce((sum, line) => sum + Number(line), 0) / 1e6,
  );
  return { pages, seconds, cpuSeconds };
}

const cpuFile = 'cpu.txt';
/** A module that notes at its end how long each Node program kept the processor busy, in microseconds. */
const countCpu = (file) =>
  `data:text/javascript,${encodeURIComponent(`import { appendFileSync } from 'node:fs'; import { isMainThread } from 'node:worker_threads'; if (isMainThread) process.on('exit', () => { const { user, system } = process.cpuUsage(); appendFileSync(${JSON.stringify(file)}, user + system + '\\n'); });`)}`;

/** The folder's own programs first, then the project's Node. */
export const environment = (folder) => ({
  ...process.env,
  PATH: [join(folder, 'node_modules/.bin'), join(root, 'node_modules/.bin'), process.env.PATH].join(
    delimiter,
  ),
  ASTRO_TELEMETRY_DISABLED: '1',
});
const git = (...args) => spawnSync('git', args, { cwd: root, encoding: 'utf8', maxBuffer: 1e8 }).stdout;
const tenth = (value) => Math.round(value * 10) / 10;
