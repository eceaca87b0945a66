import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { follow, settle, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

/** Links from when all evidence stood on one page: two facts, a check, a source, and what stayed. */
const oldLinks = [
  ['few-see-mm', '/evidence/mapping/'],
  ['faint-lie-down', '/evidence/first-aid/'],
  ['check-normal-upper-2-5', '/evidence/mapping/'],
  ['source-sharma-2005', '/evidence/colour/'],
  ['status-published', '/evidence/'],
] as const;

/** The page stands where the address says, with the entry in the window. */
const arrived = (page: Page, path: string, id: string): Promise<unknown> =>
  page.waitForFunction(
    (where, name) => {
      const box = document.getElementById(name)?.getBoundingClientRect();
      return (
        document.readyState === 'complete' &&
        location.pathname === where &&
        location.hash === `#${name}` &&
        box !== undefined &&
        box.top >= -1 &&
        box.top < innerHeight
      );
    },
    {},
    path,
    id,
  );

withBrowsers('the evidence in parts', ({ open, site }) => {
  test('[hand] a link from when it was one page leads to its entry, and Back to where the reader was', async () => {
    const { page, faults } = await open(390, 844);
    const { origin } = site();
    await page.goto(`${origin}/limits/`, { waitUntil: 'load' });
    for (const [id, path] of oldLinks) {
      await page.evaluate((address) => location.assign(address), `/evidence/#${id}`);
      await arrived(page, path, id);
      await settle(page);
      await page.evaluate(() => history.back());
      await page.waitForFunction(() => location.pathname === '/limits/');
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] by keys alone a reader comes from the entry page to a part, to another, and to its sources', async () => {
    const { page, faults } = await open(1280, 900);
    const { origin } = site();
    const tabTo = async (path: string): Promise<void> => {
      for (let i = 0; i < 40; i++) {
        await page.keyboard.press('Tab');
        const here = await page.evaluate(() => document.activeElement?.getAttribute('href') ?? '');
        if (here === path) return;
      }
      throw new Error(`No press of Tab in forty reaches ${path}.`);
    };
    await page.goto(`${origin}/evidence/`, { waitUntil: 'load' });
    for (const path of ['/evidence/colour/', '/evidence/mapping/']) {
      await tabTo(path);
      const moved = page.waitForNavigation({ waitUntil: 'load' });
      await page.keyboard.press('Enter');
      await moved;
      expect(new URL(page.url()).pathname).toBe(path);
    }
    await tabTo('#sources');
    await page.keyboard.press('Enter');
    await arrived(page, '/evidence/mapping/', 'sources');
    expect(faults).toEqual([]);
    await page.close();
  });
});

// Firefox cannot be told to run no scripts.
withBrowsers(
  'the evidence without scripts',
  ({ open, site }) => {
    test('[hand] without scripts the link ends at the name of its entry, and the name leads on', async () => {
      const { page, faults } = await open(390, 844);
      const { origin } = site();
      await page.setJavaScriptEnabled(false);
      await page.goto(`${origin}/evidence/#few-see-mm`, { waitUntil: 'load' });
      expect(await wordsOf(page, '#few-see-mm')).toBe('A difference few viewers see');
      await follow(page, '#few-see-mm');
      expect(page.url()).toBe(`${origin}/evidence/mapping/#few-see-mm`);
      expect(await wordsOf(page, '#few-see-mm')).toContain('Hohman 2014');
      expect(faults).toEqual([]);
      await page.close();
    });
  },
  ['chromium'],
);
