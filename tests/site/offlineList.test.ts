import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesUnder } from '#build/builtPages.ts';
import { builtAddresses, builtFolder } from '#tests/tools/builtSite.ts';

const worker = readFileSync(join(builtFolder, 'sw.js'), 'utf8');
const list: unknown = JSON.parse(readFileSync(join(builtFolder, 'offline.json'), 'utf8'));
/** The first line of the worker: each address, and the mark of its content where its name carries none. */
const listed = /^const keptOffline=(\{.*\});$/m.exec(worker)?.[1] ?? '{}';
const marks = new Map<string, unknown>(Object.entries(JSON.parse(listed)));
const kept = new Set(marks.keys());

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
    .reduce(
      (sum, url = '') =>
        sum +
        statSync(
          join(builtFolder, url === './' ? 'index.html' : url.endsWith('/') ? `${url}index.html` : url),
        ).size,
      0,
    );
  expect(list).toMatchObject({ bytes });
});

test('[hand] the worker loads nothing from elsewhere and never swaps versions under a reader', () => {
  expect(/importScripts\(/.test(worker)).toBe(false);
  expect(worker).not.toContain('skipWaiting');
});

test(`[hand] the list is sent with every version: at most ${mostListBytesAFile} bytes a file`, () => {
  expect(listed.length / kept.size).toBeLessThanOrEqual(mostListBytesAFile);
});

test('[hand] a file without a mark carries a hash in its name, so another content is another address', () => {
  const unmarked = [...marks].filter(([, mark]) => mark === null).map(([url]) => url);
  expect(unmarked.length).toBeGreaterThan(0);
  expect(unmarked.filter((url) => !/^_astro\/[^/]+[.-][\w-]{8}\.\w+$/.test(url))).toEqual([]);
  expect(
    [...marks].filter(
      ([url, mark]) => mark !== null && url !== 'offline.json' && !/^[0-9a-f]{8}$/.test(String(mark)),
    ),
  ).toEqual([]);
});

test('[hand] the ready-made search parts are left out', () => {
  expect(
    filesUnder(join(builtFolder, 'pagefind')).filter((file) => /-ui|highlight|unknown/.test(file)),
  ).toEqual([]);
});
