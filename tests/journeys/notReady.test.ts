import type { HTTPRequest } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { notStarted } from '#words/notStarted.ts';
import { bringIntoView, firstParts, look, onServerOnly } from './firstParts.ts';
import { focusOn } from './movable.ts';
import { wake, waitForWords } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

withBrowsers('a figure that is not ready', ({ open, site }) => {
  /** Opens a page whose first island waits for its script until that is let go. */
  async function openHeld(address: string) {
    const opened = await open();
    const path = address.replace(/\?.*/, '');
    const own = firstParts.find((each) => each.address === path)?.file;
    await onServerOnly(opened.page);
    const held: HTTPRequest[] = [];
    let isHeld = true;
    await opened.page.setRequestInterception(true);
    opened.page.on('request', (request) => {
      if (isHeld && new URL(request.url()).pathname === own) held.push(request);
      else void request.continue();
    });
    // An import that has begun holds up the loading of the page.
    await opened.page.goto(site().origin + address, { waitUntil: 'domcontentloaded' });
    await bringIntoView(opened.page);
    const letGo = async () => {
      isHeld = false;
      await Promise.all(held.map((request) => request.continue()));
    };
    return { ...opened, letGo };
  }

  test('[hand] until a calculator is ready, no typed number stands in it; one line says so, and then it works', async () => {
    const { page, faults, letGo } = await openHeld('/calculators/usual-difference/');
    const start = await look(page);
    await focusOn(page, '#usual-difference');
    await page.keyboard.type('7');
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    expect(await look(page)).toEqual(start);
    await waitForWords(page, '.coming[role=status]', new RegExp(notStarted.coming));
    await letGo();
    await page.waitForFunction(() => document.querySelector('.coming')?.textContent === '');
    await page.keyboard.type('7');
    await page.waitForFunction(
      (before) => document.querySelector('.says')?.textContent !== before,
      {},
      start.answer,
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  test.each([
    ['a number', '/practice/tilt/', '.problem form input', '2'],
    ['an empty box', '/practice/tilt/', '.problem form input', ''],
    ['a choice', '/practice/real-or-not/', '.problem form input[type=radio]', ' '],
  ])(
    '[hand] %s and Enter, before a problem is ready, are taken up once it is',
    async (_, address, box, keys) => {
      const { page, faults, letGo } = await openHeld(address);
      await focusOn(page, box);
      await page.keyboard.type(keys);
      await page.keyboard.press('Enter');
      await letGo();
      await page.waitForSelector(keys === '' ? '.problem .field-error' : '.problem :is(.fb, .fb-right)');
      expect(faults).toEqual([]);
      await page.close();
    },
  );

  test('[hand] placing the midline: a typed pin and Enter before it is ready are marked once it is', async () => {
    const { page, faults, letGo } = await openHeld('/practice/place-the-midline/');
    await focusOn(page, '#place-top');
    await page.keyboard.press('End');
    await page.keyboard.type('1');
    const typed = await page.$eval('#place-top', (field) => field instanceof HTMLInputElement && field.value);
    await page.keyboard.press('Enter');
    await letGo();
    await page.waitForSelector('.place .fb');
    expect(
      await page.$eval('#place-top', (field) => field instanceof HTMLInputElement && Number(field.value)),
    ).toBe(Number(typed));
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a link with a seed asks something else than the page that arrives: nothing typed before is marked', async () => {
    const { page, faults, letGo } = await openHeld('/practice/tilt/?seed=7');
    await focusOn(page, '.problem form input');
    await page.keyboard.type('2');
    await page.keyboard.press('Enter');
    await letGo();
    await waitForWords(page, '.hintbox', /Seed 7/);
    await wake(page, '.problem form input');
    expect(
      await page.$eval('.problem form input', (field) => field instanceof HTMLInputElement && field.value),
    ).toBe('');
    expect(await page.$('.problem :is(.fb, .field-error)')).toBeNull();
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] fields that the browser fills again on a new load hold what the answer is for', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/calculators/midline-and-sides/`);
    await wake(page, '.calculator .says');
    const start = await look(page);
    await page.select('#midline-level', 'pupils');
    await page.waitForFunction(
      (before) => document.querySelector('.says')?.textContent !== before,
      {},
      start.answer,
    );
    const chosen = await look(page);
    await page.reload();
    await wake(page, '.calculator .says');
    // What was chosen today is kept, and the answer is for it: never the one with the other.
    await expect.poll(() => look(page), { timeout: 20_000 }).toEqual(chosen);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] an island that breaks off while it starts says the same', async () => {
    const { page } = await open();
    await onServerOnly(page);
    await page.evaluateOnNewDocument(() => {
      // What a starting island reads of its place in the page.
      const { get: read } = Object.getOwnPropertyDescriptor(Node.prototype, 'childNodes') ?? {};
      Object.defineProperty(Node.prototype, 'childNodes', {
        get(this: Node) {
          if (this.nodeName === 'ASTRO-ISLAND') throw new Error('broken off');
          return read?.call(this);
        },
      });
    });
    await page.goto(`${site().origin}/calculators/usual-difference/`);
    await bringIntoView(page);
    await waitForWords(page, 'astro-island', new RegExp(`^${notStarted.gone}`));
    await page.close();
  });

  test('[hand] a script of the page that is no island’s: its buttons are shut until it runs, and it is said where it did not come', async () => {
    const { page } = await open();
    await onServerOnly(page);
    await page.setRequestInterception(true);
    page.on(
      'request',
      (request) => void (/\/PhotoReading\./.test(request.url()) ? request.abort() : request.continue()),
    );
    await page.goto(`${site().origin}/calculators/skin-reading/`);
    await waitForWords(page, '[data-photo]', new RegExp(`^${notStarted.gone}`));
    expect(
      await page.$eval(
        '[data-photo] button',
        (button) => button instanceof HTMLButtonElement && button.disabled,
      ),
    ).toBe(true);
    await page.close();
  });
});
