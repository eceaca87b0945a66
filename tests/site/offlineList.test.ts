import { createHash } from 'node:crypto';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { builtPages, filesUnder } from '#build/builtPages.ts';
import { builtAddresses, builtFolder } from '#tests/tools/builtSite.ts';
import { requestsOf } from '#tests/tools/pageWeight.ts';

const worker = readFileSync(join(builtFolder, 'sw.js'), 'utf8');
const list: unknown = JSON.parse(readFileSync(join(builtFolder, 'offline.json'), 'utf8'));
/** The first line of the worker: each address, and the mark of its content. */
const listed = /^const keptOffline=(\{.*\});$/m.exec(worker)?.[1] ?? '{}';
const marks = new Map<string, unknown>(Object.entries(JSON.parse(listed)));
const kept = new Set(marks.keys());

/** The file that is kept under an address. */
const fileOf = (url: string) => url.replace(/^\.\/$/, '').replace(/(^|\/)$/, '$1index.html');
/** How many of the list, from its start, are the first step. */
const first = [...kept].slice(0, Number(/^const keptFirst=(\d+);$/m.exec(worker)?.[1]));

const mostListBytesAFile = 65;

test('[hand] every page, style, script, face and the whole search index is kept', () => {
  const files = filesUnder(builtFolder).filter(
    (file) => (/\.(css|js|woff2)$/.test(file) && file !== 'sw.js') || file.startsWith('pagefind/'),
  );
  const wanted = [...builtAddresses.map((address) => address.slice(1) || './'), ...files];
  expect(wanted.filter((url) => !kept.has(url))).toEqual([]);
});

test('[hand] the stated count is the count of the list, and the stated bytes are those of the files', () => {
  expect(list).toMatchObject({ version: expect.stringMatching(/^[0-9a-f]{7}$/), count: kept.size });
  const bytes = [...kept]
    .filter((url) => url !== 'offline.json')
    .reduce((sum, url) => sum + statSync(join(builtFolder, fileOf(url))).size, 0);
  expect(list).toMatchObject({ bytes });
});

test('[hand] the worker loads nothing from elsewhere and never swaps versions under a reader', () => {
  expect(/importScripts\(/.test(worker)).toBe(false);
  expect(worker).not.toContain('skipWaiting');
});

test(`[hand] the list is sent with every version: at most ${mostListBytesAFile} bytes a file`, () => {
  expect(listed.length / kept.size).toBeLessThanOrEqual(mostListBytesAFile);
});

test('[library] every mark is the start of the SHA-256 of the file, so that what arrives can be compared', () => {
  const wrong = [...marks].filter(([url, mark]) => {
    const hash = createHash('sha256').update(readFileSync(join(builtFolder, fileOf(url))));
    return hash.digest('base64').slice(0, 8) !== mark;
  });
  expect(wrong).toEqual([]);
});

test('[hand] the first step holds rules, urgent cards and search with all that they fetch, and is less than half of the whole', () => {
  const pages = builtPages(builtFolder).filter(({ address }) => /^\/(rules\/.*)?$/.test(address));
  expect(pages.length).toBeGreaterThan(50);
  const wanted = [
    ...pages.flatMap((page) => requestsOf(page, builtFolder, Infinity)),
    ...filesUnder(builtFolder).filter((file) => file.startsWith('pagefind/')),
  ].map((file) => file.replace(/^\//, ''));
  const held = new Set(first.map(fileOf));
  expect(wanted.filter((file) => !held.has(file))).toEqual([]);
  const size = (urls: Iterable<string>) =>
    [...urls].reduce((sum, url) => sum + gzipSync(readFileSync(join(builtFolder, fileOf(url)))).length, 0);
  expect(size(first)).toBeLessThan(size(kept) / 2);
});

test('[hand] the ready-made search parts are left out', () => {
  expect(
    filesUnder(join(builtFolder, 'pagefind')).filter((file) => /-ui|highlight|unknown/.test(file)),
  ).toEqual([]);
});
