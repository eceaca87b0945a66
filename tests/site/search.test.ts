import { readdirSync, readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '#build/serve.mjs';
import { builtFolder } from '#tests/tools/builtSite.ts';
import { openBrowser, openPage } from '#tests/tools/openBrowser.ts';
import { bySeed, isWhole, oneIn } from '#tests/tools/share.ts';

const mostFirstBytes = 145_000;
const mostSecondBytes = 30_000;
const kinds = ['Lesson', 'Calculator', 'Rule', 'Glossary', 'Practice', 'Page', 'Urgent'];
/** What the urgent cards are to be found by. */
const spoken = [
  ...new Set(
    readdirSync('content/urgent').flatMap((file) =>
      (/^also: \[(.*)\]$/m.exec(readFileSync(`content/urgent/${file}`, 'utf8'))?.[1] ?? '')
        .split(', ')
        .map((words) => words.replaceAll('"', '')),
    ),
  ),
];
const [first, second, nowhere] = ['level thread', 'nose wing', 'zyzzyva'] as const;

type Sent = Readonly<{ path: string; bytes: number }>;

let browser: Browser;
let server: Server;
let origin = '';
/**
 * Every body the server has sent, as sent. Counted there because the search fetches from a worker, out of the
 * page's sight.
 */
const sent: Sent[] = [];
beforeAll(async () => {
  [browser, server] = await Promise.all([openBrowser('chromium'), serve(builtFolder)]);
  const place = server.address();
  if (place === null || typeof place === 'string') throw new Error('The test server has no port.');
  origin = `http://localhost:${place.port}`;
  server.prependListener('request', (request, response) => {
    const end = response.end.bind(response);
    response.end = (body?: unknown) => {
      sent.push({ path: request.url ?? '', bytes: body instanceof Uint8Array ? body.length : 0 });
      return end(body);
    };
  });
});
afterAll(async () => {
  await browser?.close();
  server?.close();
  server?.closeAllConnections();
});

/** Opens a page that does not fill its offline list: that would count what no search asked for. */
async function openRules(): ReturnType<typeof openPage> {
  const watched = await openPage(browser, origin);
  await watched.page.evaluateOnNewDocument(() => {
    ServiceWorkerContainer.prototype.register = () => new Promise(() => {});
  });
  await watched.page.goto(`${origin}/rules/`, { waitUntil: 'networkidle0' });
  return watched;
}

/** Waits until nothing was sent for a while, and returns what was sent since the last time. */
async function sentSince(start: number): Promise<readonly Sent[]> {
  for (let before = -1; before !== sent.length;) {
    before = sent.length;
    await new Promise((done) => setTimeout(done, 700));
  }
  return sent.slice(start);
}

/** Types into the open dialog and returns the line that says what was found. */
async function searchFor(page: Page, words: string): Promise<string> {
  await page.$eval('#find-words', (box) => {
    if (box instanceof HTMLInputElement) box.select();
  });
  await page.keyboard.type(words);
  await page.waitForFunction(
    (text) => {
      const said = document.querySelector('#find-count')?.textContent ?? '';
      return (
        document.querySelector<HTMLInputElement>('#find-words')?.value === text &&
        (/^\d+ found/.test(said) || said.includes(`“${text}”`))
      );
    },
    {},
    words,
  );
  return page.$eval('#find-count', (line) => line.textContent ?? '');
}

async function openSearch(page: Page): Promise<void> {
  await page.keyboard.press('/');
  await page.waitForSelector('dialog[open][data-ready]');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-words');
}

const total = (part: readonly Sent[]) => part.reduce((sum, { bytes }) => sum + bytes, 0);
const listed = (part: readonly Sent[]) =>
  [`${total(part)} bytes`, ...part.map(({ path, bytes }) => `${bytes} ${path}`)].join('\n');

test(`[hand] nothing before the dialog is open; then “${first}” within ${mostFirstBytes} bytes, and “${second}” within ${mostSecondBytes} more`, async () => {
  const { page, faults } = await openRules();
  const whole = await sentSince(0);
  expect(whole.length).toBeGreaterThan(2);
  expect(whole.filter(({ path }) => /pagefind|startSearch/.test(path))).toEqual([]);

  await openSearch(page);
  expect(Number(/^(\d+) found/.exec(await searchFor(page, first))?.[1])).toBeGreaterThan(0);
  const forFirst = await sentSince(whole.length);
  expect(total(forFirst), 'the search was fetched').toBeGreaterThan(20_000);
  expect.soft(total(forFirst), listed(forFirst)).toBeLessThanOrEqual(mostFirstBytes);

  const shown = await page.$$eval('#find-list li', (items) =>
    items.map((item) => ({
      kind: item.querySelector('.find-kind')?.textContent ?? '',
      title: item.querySelector('b')?.textContent ?? '',
      marks: item.querySelectorAll('mark').length,
    })),
  );
  expect(shown.length).toBeGreaterThan(0);
  for (const { kind, title, marks } of shown) {
    expect.soft(kinds, title).toContain(kind);
    expect.soft(title).not.toBe('');
    expect.soft(marks, `${title}: what was found is marked`).toBeGreaterThan(0);
  }

  expect(Number(/^(\d+) found/.exec(await searchFor(page, second))?.[1])).toBeGreaterThan(0);
  const forSecond = await sentSince(whole.length + forFirst.length);
  expect.soft(total(forSecond), listed(forSecond)).toBeLessThanOrEqual(mostSecondBytes);
  expect(faults).toEqual([]);
  await page.close();
});

test('[hand] a half-typed word finds its endings, and plain words of the trade find their pages', async () => {
  const { page, faults } = await openRules();
  await openSearch(page);
  for (const [words, title] of [
    ['hea', /heal/i],
    ['coverage', /strokes, dots/i],
    ['hair strokes', /strokes and dots/i],
    ['dots', /strokes and dots/i],
    ['blacked out', /Pale or fainted/],
    ['wheeze', /Swelling or short breath/],
    ['ringing ears', /Odd after numbing cream/],
    ['cream in eye', /Something in the eye/],
    ['needle stick', /Stuck or splashed/],
    ['viewers who see', /Evidence: mapping/],
    ['molar mass', /Evidence: colour/],
    ['nothing by mouth', /Evidence: first aid/],
    ['feedback that explains', /Evidence: practice/],
  ] as const) {
    await searchFor(page, words);
    expect.soft(await page.$eval('#find-list', (list) => list.textContent ?? ''), words).toMatch(title);
  }
  expect(faults).toEqual([]);
  await page.close();
});

test(`[hand] what people say when something goes wrong finds an urgent card first${bySeed}`, async () => {
  const { page, faults } = await openRules();
  await openSearch(page);
  const share = oneIn(isWhole ? 1 : 15, spoken, 'words in an emergency');
  for (const words of ['passed out', 'she passed out', 'swelling', ...share]) {
    await searchFor(page, words);
    expect
      .soft(await page.$eval('#find-list li', (item) => item.textContent ?? ''), words)
      .toMatch(/^Urgent/);
  }
  expect(faults).toEqual([]);
  await page.close();
});

test('[hand] a word that is nowhere gets a plain message and no list', async () => {
  const { page, faults } = await openRules();
  await openSearch(page);
  await searchFor(page, 'thread');
  expect((await page.$$('#find-list li')).length).toBeGreaterThan(0);
  const said = await searchFor(page, nowhere);
  expect(said).toBe(`Nothing found for “${nowhere}”. Try one plain word.`);
  expect(await page.$$('#find-list li')).toEqual([]);
  expect(faults).toEqual([]);
  await page.close();
});
