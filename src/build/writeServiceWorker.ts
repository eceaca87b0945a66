import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
// Only this part: the package as a whole loads a bundler and a compiler that nothing here asks for.
import { getManifest } from 'workbox-build/build/get-manifest.js';
import { bundleWorker } from './bundleWorker.ts';

/** What a device keeps for use without a signal. `bytes` unpacked, `transferBytes` as sent with gzip. */
export type OfflineList = Readonly<{ version: string; count: number; bytes: number; transferBytes: number }>;

/** A file and the mark of its content; none where its name carries one. */
type Kept = Readonly<{ url: string; revision: string | null }>;

/**
 * Four bytes of the mark tell one version of a file from another. The list is sent anew with every version of
 * the site, so it is kept short.
 */
const markLength = 8;

/** Names that carry a hash of what is in the file: such a file never changes. */
const hashedNames = /^_astro\/[^/]+[.-][\w-]{8}\.\w+$/;

/** A page is kept under the address readers use, never under its file name. */
const addressOf = (url: string): string => url.replace(/(^|\/)index\.html$/, '$1') || './';

function versionOf(entries: readonly Kept[]): string {
  const hash = createHash('sha256');
  for (const line of entries.map(({ url, revision }) => `${url} ${revision}\n`).sort()) hash.update(line);
  return hash.digest('hex').slice(0, 7);
}

/**
 * Writes sw.js, which keeps the whole site on the device, and offline.json, which says how much that is.
 * The list stands on the first line of sw.js, the worker that reads it below.
 */
export async function writeServiceWorker(folder: string): Promise<OfflineList> {
  const { manifestEntries, size, warnings } = await getManifest({
    globDirectory: folder,
    globPatterns: ['**/*.{html,css,js,svg,woff2,json,webmanifest}', 'pagefind/**/*'],
    globIgnores: ['sw.js', 'offline.json'],
    dontCacheBustURLsMatching: hashedNames,
    maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
  });
  if (warnings.length > 0) throw new Error(`The offline list is not whole: ${warnings.join('; ')}`);
  const version = versionOf(manifestEntries);
  const transferBytes = manifestEntries.reduce(
    (sum, { url }) => sum + gzipSync(readFileSync(join(folder, url))).length,
    0,
  );
  const kept = manifestEntries.map(({ url, revision }) => [
    addressOf(url),
    revision && revision.slice(0, markLength),
  ]);
  const all = Object.fromEntries([...kept, ['offline.json', version]]);
  writeFileSync(join(folder, 'sw.js'), `const keptOffline=${JSON.stringify(all)};\n${await bundleWorker()}`);
  const list = { version, count: Object.keys(all).length, bytes: size, transferBytes };
  writeFileSync(join(folder, 'offline.json'), `${JSON.stringify(list)}\n`);
  return list;
}
