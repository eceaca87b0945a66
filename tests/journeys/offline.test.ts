import { expect, test } from 'vitest';
import { drawFrom, drawWhole } from '#lib/quantities/seed.ts';
import { builtAddresses } from '#tests/tools/builtSite.ts';
import { retype, settle, waitForWords, wake, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const seed = 20261125;
const pages = 8;

withBrowsers('without a signal', ({ open, site }) => {
  test('[property] after one visit to one page the server goes, and pages, search, calculator and print still work', async () => {
    const { page, faults } = await open();
    const { origin } = site();
    await page.goto(`${origin}/rules/`);
    const said = await waitForWords(page, '[data-offline]', /Ready offline, version [0-9a-f]{7}\./);
    expect(said).toContain('Nothing you type leaves this device.');
    await site().close();
    await expect(fetch(origin)).rejects.toThrow();

    const draw = drawFrom(seed);
    const chosen = Array.from(
      { length: pages },
      () => builtAddresses[drawWhole(draw, 0, builtAddresses.length - 1)] ?? '/',
    );
    for (const address of chosen) {
      await page.goto(origin + address, { waitUntil: 'load' });
      expect(await wordsOf(page, 'h1'), address).not.toBe('');
      await settle(page);
    }

    await page.goto(`${origin}/evidence/#few-see-mm`);
    await page.waitForFunction(() => location.pathname === '/evidence/mapping/');
    expect(await wordsOf(page, '#few-see-mm')).toContain('Hohman 2014');

    await page.goto(`${origin}/calculators/midline-and-sides/?level=pupils`);
    await wake(page, '.calculator .says');
    await page.waitForFunction(() =>
      [...document.querySelectorAll<HTMLSelectElement>('.calculator select')].some(
        ({ value }) => value === 'pupils',
      ),
    );
    const says = await wordsOf(page, '.calculator .says');
    await retype(page, '.calculator [id$="-x"]', '44');
    await page.waitForFunction(
      (before) =>
        document.querySelector<HTMLElement>('.calculator .says')?.innerText.replace(/\s+/g, ' ').trim() !==
        before,
      {},
      says,
    );
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(10_000);

    await page.goto(`${origin}/practice/midline-from-pairs/?seed=3`);
    await wake(page, '.problem form input');
    await page.waitForFunction(() => document.body.innerText.includes('Seed 3.'));

    await page.keyboard.press('Escape');
    await page.evaluate(() => document.querySelector<HTMLElement>('[data-search-open]')?.click());
    await page.waitForSelector('dialog[open]');
    await page.keyboard.type('tilt');
    await waitForWords(page, '#find-count', /\d+ found/);
    expect(faults).toEqual([]);

    await page.goto(`${origin}/no-such-page/`);
    expect(await wordsOf(page, 'h1'), 'an unknown address gets the page that says so').toBe('No page here');
    await page.close();
  });
});
