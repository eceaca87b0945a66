import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folders = ['src', 'components', 'content', 'public'];
const files = ['astro.config.mjs', 'package-lock.json', 'package.json', 'tsconfig.json'];

const filesIn = (folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));

/** The file in dist that holds the hash of the sources it was built from. */
export const stampName = '.sources';

/**
 * One hash over everything the pages are built from. The build leaves it in dist, so a second start need not
 * build.
 */
export function sourcesHash() {
  const hash = createHash('sha256');
  const all = [
    ...folders.filter((folder) => existsSync(join(root, folder))).flatMap(filesIn),
    ...files,
  ].sort();
  for (const file of all)
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(root, file)))
      .update('\0');
  return hash.digest('hex');
}
