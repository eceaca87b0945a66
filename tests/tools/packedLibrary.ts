import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root, toolEnvironment } from '../../src/build/ensureInstalled.mjs';

const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));

/** A package with all that it stands on. */
function withItsOwn(name: string): readonly string[] {
  return [name, ...Object.keys(packages[`node_modules/${name}`].dependencies ?? {}).flatMap(withItsOwn)];
}

/** Runs a command in a folder and returns what it said; throws with all of it where it failed. */
export function ran(
  folder: string,
  command: string,
  args: readonly string[],
  environment: NodeJS.ProcessEnv = {},
): string {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd: folder,
    encoding: 'utf8',
    env: { ...toolEnvironment(), ...environment },
    shell: process.platform === 'win32',
  });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}\n${stdout}\n${stderr}\n${error ?? ''}`);
  return stdout;
}

/**
 * The library as `npm pack` makes it, installed from its file into an empty folder without a network. Packed from a copy, so
 * that what runs at the same time finds package.json as it is.
 */
export function packedLibrary(): Readonly<{ folder: string; remove: () => void }> {
  const home = mkdtempSync(join(tmpdir(), 'tautline-'));
  const [source, folder] = [join(home, 'source'), join(home, 'outside')];
  mkdirSync(join(source, 'node_modules/.bin'), { recursive: true });
  mkdirSync(folder);
  for (const part of ['package.json', 'README.md', 'LICENSE', 'src/lib', 'src/build'])
    cpSync(join(root, part), join(source, part), { recursive: true });
  for (const name of new Set(['martinez-polygon-clipping', 'pure-rand', 'quadprog'].flatMap(withItsOwn)))
    cpSync(join(root, 'node_modules', name), join(source, 'node_modules', name), { recursive: true });
  symlinkSync(join(root, 'node_modules/.bin/tsc'), join(source, 'node_modules/.bin/tsc'));
  const before = readFileSync(join(source, 'package.json'), 'utf8');
  const file = ran(source, 'npm', ['pack', '--silent']).trim().split('\n').at(-1) ?? '';
  if (readFileSync(join(source, 'package.json'), 'utf8') !== before)
    throw new Error('Packing left another package.json behind.');
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }\n');
  ran(
    folder,
    'npm',
    ['install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--silent', join(source, file)],
    { npm_config_cache: join(home, 'empty-cache') },
  );
  return { folder, remove: () => rmSync(home, { recursive: true, force: true }) };
}

export const readmeExample = 'readme.js';

/** Writes the README's example as a program beside the installed library. */
export function writeUses(folder: string): void {
  const example = /## The library[\s\S]*?```js\n([\s\S]*?)```/.exec(
    readFileSync(join(root, 'README.md'), 'utf8'),
  )?.[1];
  if (example === undefined) throw new Error('The README has lost its example.');
  writeFileSync(join(folder, readmeExample), example);
}
