import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, expect, test } from 'vitest';
import { drawnPng } from '#tests/tools/drawnPng.ts';
import { notFetched } from '#words/fetching.ts';
import { focusOn } from './movable.ts';
import { press, retype, wake, waitForWords, wordsOf } from './onPage.ts';
import { partOf } from '#tests/tools/share.ts';
import { withBrowsers } from './withBrowsers.ts';

const folder = mkdtempSync(join(tmpdir(), 'missing-'));
afterAll(() => rmSync(folder, { recursive: true }));
const picture = join(folder, 'skin.png');
writeFileSync(
  picture,
  drawnPng(60, 60, () => [120, 100, 90]),
);
const bottles = readFileSync(new URL('../fixtures/bottles-schema-1.json', import.meta.url), 'utf8');

const unfold = (page: Page, selector: string) =>
  page.$eval(selector, (fold) => fold instanceof HTMLElement && fold.click());
const step = (page: Page) =>
  page.$eval('.calculator .stepper button', (button) => button instanceof HTMLElement && button.click());
async function choosePicture(page: Page): Promise<void> {
  const box = await page.waitForSelector('[data-photo] input[type=file]');
  await (await box?.toElement('input'))?.uploadFile(picture);
}

type Part = Readonly<{
  /** The start of the built file's name. */
  file: string;
  address: string;
  ready?: string;
  /** What asks for the part. */
  ask: (page: Page) => Promise<unknown>;
  /** What it is called where it is missed, and where that is said. */
  what: string;
  where: string;
  /** What stands there once it came. */
  works: RegExp;
  /** What of the reader's doing the address holds while the part is missing. */
  keeps?: RegExp;
}>;

const says = '.calculator .says';
const parts: readonly Part[] = [
  {
    file: 'reading',
    address: '/calculators/midline-and-sides/',
    ask: (page) => press(page, '.calculator', 'Copy link'),
    what: 'What reads and links numbers',
    where: '.calc-tools span[role=status]',
    works: /Link copied|The link is/,
  },
  {
    file: 'reading',
    address: '/calculators/usual-difference/',
    ask: (page) => retype(page, '#usual-difference', '3.7'),
    what: 'What reads and links numbers',
    where: says,
    works: /3\.7/,
  },
  {
    file: 'reading',
    address: '/calculators/usual-difference/?difference=4.3',
    ask: async () => undefined,
    what: 'What reads and links numbers',
    where: says,
    works: /4\.3/,
  },
  {
    file: 'outlineSums',
    address: '/calculators/outline-and-cover/',
    ask: step,
    what: 'What works out the outline',
    where: says,
    works: /\d mm/,
    keeps: /frontTopR=/,
  },
  {
    file: 'askCoverWorker',
    address: '/calculators/cover-the-old-shape/',
    ask: step,
    what: 'The planner',
    where: says,
    works: /\d/,
    keeps: /old/,
  },
  {
    file: 'coverPaths',
    address: '/calculators/cover-the-old-shape/',
    ask: step,
    what: 'The planner',
    where: says,
    works: /\d/,
    keeps: /old/,
  },
  {
    file: 'readPosed',
    address: '/calculators/pose/',
    ask: async (page) =>
      (await focusOn(page, '.calculator input[type=range]')) && page.keyboard.press('ArrowRight'),
    what: 'What reads the picture',
    where: says,
    works: /\d mm/,
    keeps: /turn=/,
  },
  {
    file: 'askMixWorker',
    address: '/calculators/mix-by-drops/',
    ask: (page) => retype(page, '#drops-dose', '0.7'),
    what: 'The colour model',
    where: says,
    works: /\d/,
    keeps: /dose=0\.7/,
  },
  {
    file: 'askWhyWorker',
    address: '/calculators/why-it-healed-this-way/',
    ask: (page) => retype(page, '#why-coverage', '55'),
    what: 'The colour model',
    where: says,
    works: /\d/,
    keeps: /coverage=55/,
  },
  {
    file: 'askWorker',
    address: '/calculators/find-a-recipe/',
    ask: (page) => retype(page, '#recipe-bottles', '1'),
    what: 'The search',
    where: says,
    works: /\d/,
    keeps: /bottles=1/,
  },
  {
    file: 'skinPlausibility',
    address: '/calculators/skin-reading/',
    ask: (page) => retype(page, '#skin-a1', '30'),
    what: 'What compares it with measured skins',
    where: says,
    works: /lies outside the skins/,
  },
  {
    file: 'showPhoto',
    address: '/calculators/skin-reading/',
    ask: choosePicture,
    what: 'What reads pictures',
    where: '[data-photo]',
    works: /point at the grey card/,
  },
  {
    file: 'markFile',
    address: '/calculators/midline-and-sides/',
    ask: (page) => press(page, '[data-mark-files]', 'Save as a file'),
    what: 'What saves and opens files',
    where: '[data-mark-files] [role=status]',
    works: /Saved/,
  },
  {
    file: 'MidlineAndSidesPage',
    address: '/lessons/mapping/midline-when-the-nose-leans/',
    ask: (page) => unfold(page, '.calculator .numbers summary'),
    what: 'The tables',
    where: '.calculator .numbers .tables',
    works: /\d/,
  },
  {
    file: 'startSearch',
    address: '/rules/',
    ready: 'h1',
    ask: (page) => unfold(page, '[data-search-open]'),
    what: 'The search',
    where: '#find-count',
    works: /Type a word/,
  },
  {
    file: 'pagefind',
    address: '/rules/',
    ready: 'h1',
    ask: (page) => unfold(page, '[data-search-open]'),
    what: 'The search',
    where: '#find-count',
    works: /Type a word/,
  },
  {
    file: 'OwnPanel',
    address: '/calculators/mix-by-drops/',
    ask: async () => undefined,
    what: 'The part with your own bottles',
    where: '.own-room',
    works: /Your own bottles \(\d+\)/,
  },
  {
    file: 'ownShelf',
    address: '/calculators/mix-by-drops/',
    ask: async () => undefined,
    what: 'What reads your own bottles',
    where: '.own-room',
    works: /Your own bottles \(\d+\)/,
  },
  // A bottle added to a shelf that was not read would be written over it: the form stays away.
  {
    file: 'ownShelf',
    address: '/calculators/mix-by-drops/',
    ask: async (page) => (await page.waitForSelector('details.own')) && unfold(page, 'details.own summary'),
    what: 'The part with your own bottles',
    where: '.own-room',
    works: /Harbour brown/,
  },
  {
    file: 'PracticeSheetDrawing',
    address: '/sheets/mapping-practice/',
    ready: '.sheet-desk',
    ask: (page) => retype(page, '#practice-sheet-seed', '7'),
    what: 'The drawing',
    where: '.sheet-desk',
    works: /Face 7/,
  },
  {
    file: 'saveCopy',
    address: '/practice/',
    ready: '.copy-box',
    ask: (page) => press(page, '.copy-box', 'Save a copy'),
    what: 'What saves a copy',
    where: '.copy-box',
    works: /No account/,
  },
];

/**
 * A tab of a reader who asked to save data: nothing is kept on the device, so every part comes from the
 * server or not at all.
 */
async function onServerOnly(page: Page): Promise<void> {
  await page.evaluateOnNewDocument((kept) => {
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
    // A tab of its own: what another test typed today is not its reader's.
    if (location.protocol === 'http:' && !sessionStorage.getItem('own')) {
      localStorage.clear();
      sessionStorage.setItem('own', 'yes');
    }
    if (location.protocol === 'http:') localStorage.setItem('tautline-bottles', kept);
  }, bottles);
}

const strict = (faults: readonly string[]) =>
  faults.filter((fault) => !/^console: (Failed to load resource|.*NetworkError)/.test(fault));

withBrowsers('a part that is not fetched', ({ open, site }) => {
  test.each(partOf(parts, 0, 2))(
    '[hand] $file on $address: it is said, nothing is lost, and a new load of the page brings it',
    async ({ file, address, ready = says, ask, what, where, works, keeps }) => {
      const { page, faults } = await open(1280, 1000);
      await onServerOnly(page);
      let isRefused = true;
      let refused = 0;
      await page.setRequestInterception(true);
      page.on('request', (request) => {
        const isIt = isRefused && new RegExp(`/(_astro|pagefind)/${file}\\.`).test(request.url());
        if (isIt) refused++;
        void (isIt ? request.abort() : request.continue());
      });
      await page.goto(site().origin + address);
      await wake(page, ready);
      await ask(page);
      await page
        .waitForFunction(
          (part, words) => document.querySelector<HTMLElement>(part)?.innerText.includes(words),
          {},
          where,
          notFetched(what),
        )
        .catch(async () => {
          throw new Error(`It is not said that it is missing. There stands: ${await wordsOf(page, where)}`);
        });
      expect(refused, 'the part was asked for').toBeGreaterThan(0);
      // Numbers that belong to what stood there before must not stand beside what stands there now.
      if (keeps)
        await page.waitForFunction(() => !document.querySelector('.calculator > .numbers:not(.own) table'));
      if (keeps)
        await page.waitForFunction((source) => new RegExp(source).test(location.search), {}, keeps.source);
      expect(
        await page.evaluate(() => localStorage.getItem('tautline-bottles')),
        'what is kept on the device is untouched',
      ).toBe(bottles);

      isRefused = false;
      await page.reload();
      await wake(page, ready);
      // What the address kept has to be there by itself.
      if (!keeps) await ask(page);
      await waitForWords(page, where, works);
      await page.waitForFunction(
        (part, words) => !document.querySelector(part)?.textContent?.includes(words),
        {},
        where,
        notFetched(what),
      );
      if (keeps) expect(await page.evaluate(() => location.search)).toMatch(keeps);
      expect(strict(faults)).toEqual([]);
      await page.close();
    },
  );

  test('[hand] where the browser knows that there is no signal, a second try brings the part, without a new load', async () => {
    const { page, faults } = await open();
    await onServerOnly(page);
    await page.evaluateOnNewDocument(() =>
      Object.defineProperty(navigator, 'onLine', {
        configurable: true,
        get: () => !document.documentElement.hasAttribute('data-away'),
      }),
    );
    let isAway = false;
    await page.setRequestInterception(true);
    page.on('request', (request) => void (isAway ? request.abort() : request.continue()));
    const away = async (is: boolean) => {
      isAway = is;
      await page.evaluate((on) => document.documentElement.toggleAttribute('data-away', on), is);
    };
    await page.goto(`${site().origin}/calculators/outline-and-cover/`);
    await wake(page, says);
    const before = await wordsOf(page, says);
    await away(true);
    await step(page);
    await waitForWords(page, says, /What works out the outline could not be fetched/);
    await retype(page, '#outline-station', '40');
    await waitForWords(page, '.calculator .field-error', /What reads and links numbers could not be fetched/);
    expect(
      await page.$eval('#outline-station', (box) => box instanceof HTMLInputElement && box.value),
      'what was typed stays',
    ).toBe('40');
    await away(false);
    await retype(page, '#outline-station', '41');
    await page.waitForFunction(
      (old) => {
        const now = document.querySelector<HTMLElement>('.calculator .says')?.innerText ?? '';
        return now !== old && !now.includes('fetched');
      },
      {},
      before,
    );
    expect(await page.$('.calculator .field-error')).toBeNull();
    expect(strict(faults)).toEqual([]);
    await page.close();
  });
});
