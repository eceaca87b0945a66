import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
// Only this part: the package as a whole loads a bundler and a compiler that nothing here asks for.
import { getManifest } from 'workbox-build/build/get-manifest.js';
import { bundleScript } from './bundleScript.ts';
import { firstStep } from './firstStep.ts';

/** What a device keeps for use without a signal. `bytes` unpacked, `transferBytes` as sent with gzip. */
export type OfflineList = Readonly<{ version: string; count: number; bytes: number; transferBytes: number }>;

/** A file and the mark of its content. */
type Kept = Readonly<{ file: string; mark: string }>;

/**
 * Six bytes of the SHA-256. What arrives is compared with it, so that half an upload or a page that was changed on
 * the way is not kept; one changed by chance passes once in 10^14. It is sent anew for every file with every
 * version of the site, and a hash cannot be packed, so it is kept short. A forger who could find another content
 * to it could change the list itself.
 */
const markBytes = 6;

/** A page is kept under the address readers use, never under its file name. */
const addressOf = (url: string): string => url.replace(/(^|\/)index\.html$/, '$1') || './';

const markOf = (folder: string, file: string): string =>
  createHash('sha256')
    .update(readFileSync(join(folder, file)))
    .digest()
    .subarray(0, markBytes)
    .toString('base64');

function versionOf(kept: readonly Kept[]): string {
  const hash = createHash('sha256');
  for (const line of kept.map(({ file, mark }) => `${file} ${mark}\n`).sort()) hash.update(line);
  return hash.digest('hex').slice(0, 7);
}

/**
 * Writes sw.js, which keeps the whole site on the device, and offline.json, which says how much that is.
 * The list stands on the first line of sw.js, with the first step in front, and how many files that is on the
 * second; the worker that reads them below.
 */
export async function writeServiceWorker(folder: string): Promise<OfflineList> {
  const { manifestEntries, size, warnings } = await getManifest({
    globDirectory: folder,
    globPatterns: ['**/*.{html,css,js,svg,woff2,json,webmanifest}', 'pagefind/**/*'],
    globIgnores: ['sw.js', 'offline.json'],
    maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
  });
  if (warnings.length > 0) throw new Error(`The offline list is not whole: ${warnings.join('; ')}`);
  const files = manifestEntries.map(({ url }) => url);
  const first = firstStep(folder, files);
  const kept = [...files.filter((file) => first.has(file)), ...files.filter((file) => !first.has(file))].map(
    (file) => ({ file, mark: markOf(folder, file) }),
  );
  const transferBytes = files.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(folder, file))).length,
    0,
  );
  const list = { version: versionOf(kept), count: kept.length + 1, bytes: size, transferBytes };
  writeFileSync(join(folder, 'offline.json'), `${JSON.stringify(list)}\n`);
  const all = Object.fromEntries(
    [{ file: 'offline.json', mark: markOf(folder, 'offline.json') }, ...kept].map(({ file, mark }) => [
      addressOf(file),
      mark,
    ]),
  );
  writeFileSync(
    join(folder, 'sw.js'),
    `const keptOffline=${JSON.stringify(all)};\nconst keptFirst=${first.size + 1};\n${await bundleScript(new URL('offlineWorker.ts', import.meta.url))}\n`,
  );
  return list;
}
