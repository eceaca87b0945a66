import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { addressesUnder } from '#tests/tools/builtSite.ts';
import { follow, retype, settle, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const titles = [
  'Pale or fainted',
  'Swelling or short breath',
  'Odd after numbing cream',
  'Something in the eye',
  'Stuck or splashed',
];
const paths = ['faint', 'allergy', 'numbing-reaction', 'eye', 'stuck-or-splashed'].map(
  (id) => `/rules/${id}/`,
);
const lesson = addressesUnder('/lessons/').find((address) => address.split('/').length === 5) ?? '';
const pages = [
  '/',
  '/lessons/',
  lesson,
  '/calculators/',
  '/calculators/mix-by-drops/',
  '/practice/midline-from-pairs/',
  '/rules/real-or-not/',
  '/sheets/outline/',
  '/evidence/',
  '/404.html',
].filter((address) => address !== '');
const targetPx = 44;

/** Where a link lies on the screen, in CSS pixels of the window. */
const boxOf = (page: Page, selector: string) =>
  page.$eval(selector, (link) => {
    const { left, top, width, height, bottom, right } = link.getBoundingClientRect();
    return {
      x: left + width / 2,
      y: top + height / 2,
      width,
      height,
      isWhole: top >= 0 && left >= 0 && bottom <= innerHeight && right <= innerWidth,
    };
  });

/** Presses a link that can be seen, with a finger. */
async function tap(page: Page, selector: string): Promise<void> {
  const { x, y, width, height, isWhole } = await boxOf(page, selector);
  expect(isWhole, `${selector} lies in the window`).toBe(true);
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(targetPx);
  const arrived = page.waitForNavigation({ waitUntil: 'load' });
  await page.touchscreen.tap(x, y);
  await arrived;
}

/** All five names are in the window, in their order, without scrolling. */
async function sees(page: Page): Promise<void> {
  await page.waitForFunction(() => location.pathname === '/rules/' && location.hash === '#urgent');
  await page.waitForFunction(() =>
    [...document.querySelectorAll('#urgent li a')].every(
      (link) => link.getBoundingClientRect().top >= 0 && link.getBoundingClientRect().bottom <= innerHeight,
    ),
  );
  expect(await page.$$eval('#urgent li a', (links) => links.map((link) => link.textContent))).toEqual(titles);
}

/** From one page by two presses to one card. */
async function reach(page: Page, origin: string, address: string, nth: number): Promise<void> {
  await page.goto(origin + address, { waitUntil: 'load' });
  await settle(page);
  expect(await wordsOf(page, '.urgent-link'), address).toBe('Urgent');
  await tap(page, '.urgent-link');
  await sees(page);
  await tap(page, `#urgent li:nth-child(${nth + 1}) a`);
  expect(await wordsOf(page, 'h1'), address).toBe(titles[nth]);
}

withBrowsers('the urgent cards', ({ name, open, site }) => {
  test('[hand] from ten kinds of pages one press shows the five names, a second the card, on a phone', async () => {
    expect(pages).toHaveLength(10);
    const { page, faults } = await open(390, 844);
    for (const [at, address] of pages.entries())
      await reach(page, site().origin, address, at % titles.length);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] by keyboard: Urgent is the third stop of a page, the first name the next one after it', async () => {
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}/cautions/`, { waitUntil: 'load' });
    for (let stop = 1; stop <= 3; stop++) await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Urgent');
    await Promise.all([page.waitForNavigation({ waitUntil: 'load' }), page.keyboard.press('Enter')]);
    await sees(page);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(titles[0]);
    await Promise.all([page.waitForNavigation({ waitUntil: 'load' }), page.keyboard.press('Enter')]);
    expect(await wordsOf(page, 'h1')).toBe(titles[0]);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] the filter of the Rules page finds a card by spoken words, and leaves the five where they are', async () => {
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}/rules/`, { waitUntil: 'load' });
    const shown = () =>
      page.$$eval('#rule-list li:not([hidden]) b', (names) => names.map((each) => each.textContent ?? ''));
    expect(await shown()).not.toContain(titles[0]);
    for (const [words, title] of [
      ['passed out', titles[0]],
      ['can’t breathe', titles[1]],
      ['ringing ears', titles[2]],
      ['cream in eye', titles[3]],
      ['needle stick', titles[4]],
    ] as const) {
      await retype(page, '#rule-words', words);
      await waitForWords(page, '#rule-count', /\d+ of \d+ rules/);
      expect.soft(await shown(), words).toContain(title);
      expect
        .soft(
          await page.$$eval('#urgent li a', (links) => links.filter((link) => link.checkVisibility()).length),
        )
        .toBe(titles.length);
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a card’s six lines are at least 20 px, in the first screen of a phone, and on one sheet of paper', async () => {
    const { page, faults } = await open(390, 844);
    for (const path of paths) {
      await page.goto(site().origin + path, { waitUntil: 'load' });
      await page.evaluate(() => document.fonts.ready.then(() => undefined));
      const lines = await page.$$eval('.six li', (items) =>
        items.map((item) => ({
          px: parseFloat(getComputedStyle(item).fontSize),
          bottom: item.getBoundingClientRect().bottom,
          words: item.textContent?.trim() ?? '',
        })),
      );
      expect.soft(lines.length, path).toBeLessThanOrEqual(6);
      for (const { px, bottom, words } of lines) {
        expect.soft(px, words).toBeGreaterThanOrEqual(20);
        expect.soft(bottom, words).toBeLessThanOrEqual(844);
      }
      if (name === 'firefox') continue; // it writes its sheets packed: they cannot be counted without a reader
      const pdf = Buffer.from(await page.pdf({ format: 'A4', printBackground: true })).toString('latin1');
      expect.soft(pdf.match(/\/Type\s*\/Page\b/g)?.length, `sheets of ${path}`).toBe(1);
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] and without a signal, also from an address that has no page', async () => {
    const { page, faults } = await open(390, 844);
    const { origin } = site();
    await page.goto(`${origin}/`);
    await waitForWords(page, '[data-offline]', /Ready offline, version [0-9a-f]{7}\./);
    await site().close();
    for (const [at, address] of ['/calculators/pose/', lesson].entries())
      await reach(page, origin, address, at);
    await page.goto(`${origin}/no-such-page/`);
    await follow(page, '.urgent-link');
    await sees(page);
    await tap(page, '#urgent li:nth-child(5) a');
    expect(await wordsOf(page, 'h1')).toBe(titles[4]);
    expect(faults.filter((fault) => !/404/.test(fault))).toEqual([]);
    await page.close();
  });
});
