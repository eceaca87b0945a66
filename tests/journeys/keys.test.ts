import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

type Stop = Readonly<{ what: string; isSeen: boolean }>;

/** Where the focus is, in words, and whether an outline, an edge or a change of ground shows it. */
const focused = (page: Page): Promise<Stop> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return { what: 'the page', isSeen: true };
    const words = element.getAttribute('aria-label') ?? element.textContent?.trim() ?? '';
    const what = `${element.tagName.toLowerCase()} ${element.id ? `#${element.id} ` : ''}${words.slice(0, 40)}`;
    const box = element.getBoundingClientRect();
    const holder = element.closest('label') ?? element;
    const outlined = [element, holder].some((each) => {
      const look = getComputedStyle(each);
      return (
        (look.outlineStyle !== 'none' && parseFloat(look.outlineWidth) >= 2) || look.boxShadow !== 'none'
      );
    });
    const drawn =
      element instanceof SVGElement &&
      [...element.querySelectorAll('*')].some(
        (shape) =>
          getComputedStyle(shape).outlineStyle !== 'none' ||
          parseFloat(getComputedStyle(shape).strokeWidth) > 0,
      );
    const isOnScreen = box.width > 0 && box.bottom > 0 && box.right > 0 && box.top < innerHeight;
    return {
      what: isOnScreen ? what : `${what} (off the screen: ${Math.round(box.left)}, ${Math.round(box.top)})`,
      isSeen: (outlined || drawn) && isOnScreen,
    };
  });

/** Presses Tab until the focus stands on a match, and asserts that every stop on the way can be seen. */
async function tabTo(page: Page, selector: string, most = 80): Promise<void> {
  const passed: string[] = [];
  for (let stops = 0; stops < most; stops++) {
    await page.keyboard.press('Tab');
    let stop = await focused(page);
    // A key travels to the page by another road than the question: give the page a moment to answer it.
    for (let waits = 0; waits < 400 && !stop.isSeen; waits++) {
      await new Promise((done) => setTimeout(done, 50));
      stop = await focused(page);
    }
    passed.push(stop.what);
    expect(stop.isSeen, `the focus shows on: ${stop.what}`).toBe(true);
    if (await page.evaluate((target) => document.activeElement?.matches(target) === true, selector)) return;
  }
  throw new Error(`Tab never reached ${selector}. It passed: ${passed.join(' → ')}`);
}

withBrowsers('with the keyboard alone', ({ open, site }) => {
  test('[hand] skip link, sections, calculator, a mark by arrow keys, a number by typing', async () => {
    const { page, faults } = await open();
    await page.goto(site().origin);
    await tabTo(page, '.skip', 2);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.id === 'main');
    await page.goto(site().origin);
    await tabTo(page, 'header nav a[href="/calculators/"]');
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')]);
    await tabTo(page, 'main a[href="/calculators/midline-and-sides/"]');
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')]);
    await wake(page, '.calculator .says');
    await page.evaluate(() => scrollTo(0, 0));
    await tabTo(page, '.calculator .handle');
    const before = await page.$eval('.calculator .handle', (handle) => handle.getAttribute('aria-label'));
    await page.keyboard.down('Shift');
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowLeft');
    await page.keyboard.up('Shift');
    await page.waitForFunction(
      (old) => document.querySelector('.calculator .handle')?.getAttribute('aria-label') !== old,
      {},
      before,
    );
    await tabTo(page, '.calculator [id$="-x"]');
    await page.keyboard.down('Control');
    await page.keyboard.press('a');
    await page.keyboard.up('Control');
    await page.keyboard.type('20');
    await page.waitForFunction(() =>
      document.querySelector('.calculator .handle')?.getAttribute('aria-label')?.includes('20.0'),
    );
    await tabTo(page, '.calculator .calc-tools button');
    await tabTo(page, 'footer a');
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a problem is answered, the worked answer opened, new numbers taken', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/practice/midline-from-pairs/?seed=7`);
    await wake(page, '.problem form input');
    await page.evaluate(() => scrollTo(0, 0));
    await tabTo(page, '.problem form input');
    await page.keyboard.type('1');
    await page.keyboard.press('Enter');
    await waitForWords(page, '.problem .fb', /\S/);
    await tabTo(page, '.problem .fb button');
    await tabTo(page, '.problem summary');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.problem details[open]');
    const question = await wordsOf(page, '.hintbox');
    await page.keyboard.down('Shift');
    for (let i = 0; i < 6; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(() => document.activeElement?.textContent?.includes('new numbers') === true))
        break;
    }
    await page.keyboard.up('Shift');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (old) => document.querySelector<HTMLElement>('.hintbox')?.innerText.replace(/\s+/g, ' ').trim() !== old,
      {},
      question,
    );
    expect(
      await page.evaluate(() => document.activeElement?.closest('.problem') !== null),
      'the focus stays with the problem',
    ).toBe(true);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] search opens by a key, finds, leads, and closes back to its button', async () => {
    const { page, faults } = await open();
    await page.goto(site().origin);
    await page.keyboard.press('/');
    await page.waitForSelector('dialog[open][data-ready]');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-words');
    await page.keyboard.press('Escape');
    await page.waitForSelector('dialog:not([open])');
    await page.waitForFunction(() => document.activeElement?.hasAttribute('data-search-open'));
    await page.keyboard.press('Enter');
    await page.waitForSelector('dialog[open]');
    await page.keyboard.type('midline nose');
    await waitForWords(page, '#find-count', /\d+ found/);
    await tabTo(page, '#find-list a', 4);
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')]);
    expect(await wordsOf(page, 'main')).toMatch(/midline/i);
    expect(faults).toEqual([]);
    await page.close();
  });
});
