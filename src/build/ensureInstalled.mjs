import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

// Plain JavaScript that runs on Node 20: nothing is installed yet when it is needed.

export const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (name) => JSON.parse(readFileSync(join(root, name), 'utf8'));

/**
 * True when node_modules holds, version for version, what the lock file asks for. npm keeps its own record
 * there.
 */
export function isInstalled() {
  if (!existsSync(join(root, 'node_modules/.package-lock.json'))) return false;
  const wanted = read('package-lock.json').packages;
  const present = read('node_modules/.package-lock.json').packages;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === '' || optional || present[path]?.version === version,
  );
}

/** The environment for tools: the project's own Node first on the path, no usage reports. */
export function toolEnvironment() {
  const bin = join(root, 'node_modules', '.bin');
  return {
    ...process.env,
    PATH: `${bin}${delimiter}${process.env.PATH ?? ''}`,
    ASTRO_TELEMETRY_DISABLED: '1',
  };
}

/** Runs one command with its output shown; returns its exit code. */
export function run(command, args) {
  const isWindows = process.platform === 'win32';
  return (
    spawnSync(command, args, { cwd: root, env: toolEnvironment(), stdio: 'inherit', shell: isWindows })
      .status ?? 1
  );
}

/** Installs what the lock file pins when it is missing or has changed; stops the program when that fails. */
export function ensureInstalled() {
  if (!isInstalled()) {
    console.log('Installing the pinned packages (about 20 seconds, once) …');
    if (run('npm', ['ci', '--loglevel=error']) !== 0) {
      console.error('The packages did not install. Check the connection, then type: npm ci');
      process.exit(1);
    }
  }
  const [major, minor] = spawnSync('node', ['-p', 'process.versions.node'], {
    env: toolEnvironment(),
    encoding: 'utf8',
  })
    .stdout.split('.')
    .map(Number);
  if (major < 22 || (major === 22 && minor < 12)) {
    console.error(
      `The tools need Node 22.12 or newer, and none came with the packages for ${process.platform}-${process.arch}. Install Node 24 and try again.`,
    );
    process.exit(1);
  }
}
