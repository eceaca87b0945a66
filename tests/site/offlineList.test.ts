import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesUnder } from '#build/builtPages.ts';
import { builtAddresses, builtFolder } from '#tests/tools/builtSite.ts';

const worker = readFileSync(join(builtFolder, 'sw.js'), 'utf8');
const list: unknown = JSON.parse(readFileSync(join(builtFolder, 'offline.json'), 'utf8'));
const kept = new Set([...worker.matchAll(/url:"([^"]+)"/g)].map((hit) => hit[1]));

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
  // The one call waits for a message that no page sends.
  expect(worker.match(/[^,;]{0,60}skipWaiting\(\)/g)).toEqual([expect.stringContaining('"SKIP_WAITING"===')]);
});

test('[hand] the ready-made search parts are left out', () => {
  expect(
    filesUnder(join(builtFolder, 'pagefind')).filter((file) => /-ui|highlight|unknown/.test(file)),
  ).toEqual([]);
});
