import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, expect, test } from 'vitest';
import { filesUnder } from '#build/builtPages.ts';
import { writeServiceWorker } from '#build/writeServiceWorker.ts';
import { builtFolder, startSite } from '#tests/tools/builtSite.ts';
import { openPage } from '#tests/tools/openBrowser.ts';
import { notStarted } from '#words/notStarted.ts';
import { offlineWords } from '#words/offline.ts';
import { retype, waitForWords, wake, wordsOf } from './onPage.ts';
import { isTurn } from '#tests/tools/share.ts';
import { withBrowsers } from './withBrowsers.ts';

const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

/** A copy of the built site that a test may change while it is served. */
function copyOf(folder = builtFolder): string {
  const copy = mkdtempSync(join(tmpdir(), 'offline-'));
  folders.push(copy);
  cpSync(folder, copy, { recursive: true });
  return copy;
}
const swap = (file: string, from: string | RegExp, to: string) =>
  writeFileSync(file, readFileSync(file, 'utf8').replaceAll(from, to));
const pagesIn = (folder: string) => filesUnder(folder).filter((file) => file.endsWith('.html'));

const calculator = '/calculators/usual-difference/';
const calculatorFile = 'calculators/usual-difference/index.html';
const promise = 'Nothing you type leaves this device.';
const newPromise = 'What you type stays on this device.';
const own = /UsualDifference\.[\w-]{8}\.js/g;
const newName = 'UsualDifference.Later123.js';

/** The next version of the site: other words on every page, and another script for one calculator. */
async function nextVersion(): Promise<string> {
  const folder = copyOf();
  const [name = ''] = readFileSync(join(folder, calculatorFile), 'utf8').match(own) ?? [];
  renameSync(join(folder, '_astro', name), join(folder, '_astro', newName));
  for (const file of pagesIn(folder)) {
    swap(join(folder, file), promise, newPromise);
    swap(join(folder, file), own, newName);
  }
  await writeServiceWorker(folder);
  return folder;
}

const foot = '[data-offline]';
const versionIn = (folder: string) =>
  /"version":"(\w+)"/.exec(readFileSync(join(folder, 'offline.json'), 'utf8'))?.[1] ?? '';
const until = (page: Page, words: string) =>
  page.waitForFunction(
    (part, wanted) => document.querySelector(part)?.textContent?.includes(wanted),
    {},
    foot,
    words,
  );
/** The calculator answers a typed number. */
async function works(page: Page): Promise<void> {
  await wake(page, '.calculator .says');
  const before = await wordsOf(page, '.calculator .says');
  // What an earlier visit typed is still there.
  const typed = await page.$eval('#usual-difference', (box) => box instanceof HTMLInputElement && box.value);
  await retype(page, '#usual-difference', typed === '3.7' ? '4.2' : '3.7');
  await page.waitForFunction(
    (was) => document.querySelector<HTMLElement>('.says')?.innerText.replace(/\s+/g, ' ').trim() !== was,
    {},
    before,
  );
}

withBrowsers('the copy on the device', ({ browser }) => {
  /** A visit by a reader of its own: nothing is kept yet. */
  async function visit(folder: string) {
    const site = await startSite(folder);
    const context = await browser().createBrowserContext();
    const openTab = () => openPage(context, site.origin);
    return { ...(await openTab()), site, context, openTab };
  }

  if (isTurn(0, 4))
    test('[hand] half an upload is refused as a whole, the earlier version stays whole, and the next visit takes the rest', async () => {
      const live = copyOf();
      const later = await nextVersion();
      const { page, site, context, openTab } = await visit(live);
      await page.goto(`${site.origin}/rules/`);
      await until(page, offlineWords.ready(versionIn(live)));
      const first = versionIn(live);

      // All of the later version but one page and the script of another.
      const kept = readFileSync(join(live, calculatorFile));
      cpSync(later, live, { recursive: true });
      writeFileSync(join(live, calculatorFile), kept);
      rmSync(join(live, '_astro', newName));
      await page.goto(`${site.origin}/rules/`);
      await until(page, offlineWords.newerRefused);
      expect(await wordsOf(page, foot)).toContain(offlineWords.ready(first));
      await page.goto(site.origin + calculator);
      expect(await wordsOf(page, foot)).toContain(promise);
      await works(page);

      cpSync(later, live, { recursive: true });
      await page.goto(`${site.origin}/rules/`);
      await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting);
      expect(await wordsOf(page, foot), 'an open tab stays in its version').toContain(promise);
      await page.close();
      const { page: next, faults } = await openTab();
      await next.goto(`${site.origin}/rules/`);
      await until(next, offlineWords.ready(versionIn(later)));
      await site.close();
      await next.goto(site.origin + calculator);
      expect(await wordsOf(next, foot)).toContain(newPromise);
      await works(next);
      expect(faults).toEqual([]);
      await context.close();
    });

  if (isTurn(1, 4))
    test('[hand] a host that alters pages: nothing is kept, the foot says why, and the site works on', async () => {
      const altering = copyOf();
      for (const file of pagesIn(altering)) swap(join(altering, file), '</body>', '<!-- hosted --></body>');
      const { page, faults, site, context } = await visit(altering);
      await page.goto(`${site.origin}/rules/`);
      await until(page, offlineWords.refused);
      await page.goto(site.origin + calculator);
      await works(page);
      await until(page, offlineWords.refused);
      expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
      for (const file of pagesIn(altering)) cpSync(join(builtFolder, file), join(altering, file));
      await page.goto(`${site.origin}/rules/`);
      await until(page, offlineWords.ready(versionIn(builtFolder)));
      expect(faults).toEqual([]);
      await context.close();
      await site.close();
    });

  if (isTurn(2, 4))
    test('[hand] the first step alone: rules, urgent cards and search without a signal, and the foot says so', async () => {
      const live = copyOf();
      const missing = 'limits/index.html';
      rmSync(join(live, missing));
      const { page, faults, site, context } = await visit(live);
      await page.goto(`${site.origin}/`);
      await until(page, offlineWords.restRefused);
      cpSync(join(builtFolder, missing), join(live, missing));
      await site.close();
      for (const address of ['/rules/', '/rules/faint/', '/rules/tail-inside-the-line/', '/']) {
        await page.goto(site.origin + address);
        expect(await wordsOf(page, 'h1'), address).not.toBe('');
      }
      await page.evaluate(() => document.querySelector<HTMLElement>('[data-search-open]')?.click());
      await page.waitForSelector('dialog[open]');
      await page.keyboard.type('tilt');
      await waitForWords(page, '#find-count', /\d+ found/);
      await until(page, offlineWords.restLater);
      expect(faults.filter((fault) => !/Failed to load|NetworkError/.test(fault))).toEqual([]);
      await context.close();
    });

  if (isTurn(3, 4))
    test('[hand] one press leads out of a broken version: the copy goes, what the reader kept stays, and the page works', async () => {
      const live = copyOf();
      const { page: broken, site, context } = await visit(live);
      await broken.goto(site.origin + calculator);
      await until(broken, offlineWords.ready(versionIn(live)));
      // What a worker could keep that did not look at what came: a page whose script is nowhere.
      await broken.evaluate(
        async (address, script, gone) => {
          localStorage.setItem('tautline-theme', 'dark');
          for (const name of await caches.keys()) {
            const store = await caches.open(name);
            for (const key of await store.keys())
              if (new URL(key.url).pathname === address) {
                const answer = await store.match(key);
                const text = await answer?.text();
                if (answer && text)
                  await store.put(
                    key,
                    new Response(text.replace(new RegExp(script, 'g'), gone), { headers: answer.headers }),
                  );
              }
          }
        },
        calculator,
        own.source,
        newName,
      );
      await broken.goto(site.origin + calculator);
      await waitForWords(broken, 'astro-island', new RegExp(`^${notStarted.gone}`));
      const arrived = broken.waitForNavigation({ waitUntil: 'load' });
      await broken.$eval('astro-island [data-again]', (link) => link instanceof HTMLElement && link.click());
      await arrived;
      await works(broken);
      expect(await broken.evaluate(() => localStorage.getItem('tautline-theme'))).toBe('dark');
      await until(broken, offlineWords.ready(versionIn(live)));
      await context.close();
      await site.close();
    });
});
