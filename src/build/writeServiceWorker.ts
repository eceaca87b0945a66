import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { generateSW, type ManifestEntry } from 'workbox-build';
import { stripFaces } from '../words/faceStrip.ts';

/** What a device keeps for use without a signal. `bytes` unpacked, `transferBytes` as sent with gzip. */
export type OfflineList = Readonly<{ version: string; count: number; bytes: number; transferBytes: number }>;

/** A page is kept under the address readers use, never under its file name. */
const addressOf = (url: string): string => url.replace(/(^|\/)index\.html$/, '$1') || './';

function versionOf(entries: readonly ManifestEntry[]): string {
  const hash = createHash('sha256');
  for (const line of entries.map(({ url, revision }) => `${url} ${revision}\n`).sort()) hash.update(line);
  return hash.digest('hex').slice(0, 7);
}

/**
 * Writes sw.js, which keeps the whole site on the device, and offline.json, which says how much that is.
 * It never skips waiting: the version a page was opened with stays until every tab is closed, so nothing
 * changes in the middle of an exercise. It claims the first page, so one visit is enough.
 */
export async function writeServiceWorker(folder: string): Promise<OfflineList> {
  let version = '';
  let transferBytes = 0;
  const { count, size, warnings } = await generateSW({
    globDirectory: folder,
    globPatterns: ['**/*.{html,css,js,svg,woff2,json,webmanifest}', 'pagefind/**/*'],
    // Of the face files only those that a page shows: the others would double what a device has to keep.
    globIgnores: ['sw.js', 'offline.json', `faces/!(${stripFaces.join('|')})-*.svg`],
    swDest: join(folder, 'sw.js'),
    inlineWorkboxRuntime: true,
    sourcemap: false,
    mode: 'production',
    skipWaiting: false,
    clientsClaim: true,
    cleanupOutdatedCaches: true,
    // A calculator's state lives in the query: the page is the same page.
    ignoreURLParametersMatching: [/./],
    maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
    runtimeCaching: [
      {
        urlPattern: ({ request, sameOrigin }) => sameOrigin && request.mode === 'navigate',
        handler: 'NetworkOnly',
        options: { precacheFallback: { fallbackURL: '404.html' } },
      },
    ],
    manifestTransforms: [
      (entries) => {
        version = versionOf(entries);
        transferBytes = entries.reduce(
          (sum, { url }) => sum + gzipSync(readFileSync(join(folder, url))).length,
          0,
        );
        const kept = entries.map((entry) => ({ ...entry, url: addressOf(entry.url) }));
        return { manifest: [...kept, { url: 'offline.json', revision: version, size: 0 }], warnings: [] };
      },
    ],
  });
  if (warnings.length > 0) throw new Error(`The offline list is not whole: ${warnings.join('; ')}`);
  const list = { version, count, bytes: size, transferBytes };
  writeFileSync(join(folder, 'offline.json'), `${JSON.stringify(list)}\n`);
  return list;
}
