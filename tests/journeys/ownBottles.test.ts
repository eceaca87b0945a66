import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { isBeingMended } from '#words/beingMended.ts';
import { press, retype, wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const folder = mkdtempSync(join(tmpdir(), 'bottles-'));
afterAll(() => rmSync(folder, { recursive: true }));

withBrowsers('bottles of one’s own', ({ open, site }) => {
  test('[hand] a bottle is added, mixed, kept over a new visit; a bad file changes nothing; taken away and brought back; the other calculators of mixes take it too', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/calculators/mix-by-drops/`);
    await wake(page, '.calculator .says');
    await page.waitForSelector('details.own');
    await page.$eval('details.own summary', (summary) => summary instanceof HTMLElement && summary.click());
    await page.waitForSelector('.own-form');
    await retype(page, '#drops-own-name', '<b>Harbour</b>');
    await retype(page, '#drops-own-77492', '5');
    await retype(page, '#drops-own-77499', '-1');
    await press(page, '.own-form', 'Add this bottle');
    await waitForWords(page, '#drops-own-77499-error', /between 0 and 1000/);
    await retype(page, '#drops-own-77499', '5');
    await waitForWords(page, '.own-form', /Sum: 10 parts/);
    await press(page, '.own-form', 'Add this bottle');
    await waitForWords(page, '.own-list', /<b>Harbour<\/b>/);
    const before = await page.$eval('.calculator .says', (says) => says.textContent);
    await retype(page, '#drops-own1', '9');
    await page.waitForFunction(
      (old) => document.querySelector('.calculator .says')?.textContent !== old,
      {},
      before,
    );

    await page.reload();
    await wake(page, '.calculator .says');
    await page.waitForSelector('#drops-own1');
    await page.$eval('details.own summary', (summary) => summary instanceof HTMLElement && summary.click());
    await page.waitForSelector('.own-list');
    const bad = join(folder, 'bad.json');
    writeFileSync(bad, '{"schema":1,"holds":"bottles","library":"1","bottles":[{"slot":"own9"}]}');
    const box = await page.$('details.own input[type=file]');
    if (!box) throw new Error('The page has no box for files.');
    await (await box.toElement('input')).uploadFile(bad);
    await waitForWords(
      page,
      '.own .fold-in',
      /Bottle 1 in this file cannot be used: look at its name\. None was added\. Your bottles are as they were\./,
    );
    await press(page, '.own-list', 'Take away');
    await waitForWords(page, '.own .fold-in', /There is none yet/);
    await press(page, '.own .fold-in', 'Bring it back');
    await waitForWords(page, '.own-list', /Harbour/);

    await page.goto(`${site().origin}/calculators/which-hue/?old=pink`);
    await wake(page, '.calculator .says');
    await waitForWords(page, '.calculator .tables', /<b>Harbour<\/b>/);
    expect(await page.$$eval('.calculator tbody tr', (rows) => rows.length)).toBe(6);
    // While that page is being mended it ranks no bottle: own ones come last, and the picture holds none.
    const mended = isBeingMended('calculators', 'which-hue');
    if (mended)
      expect(await page.$eval('.calculator tbody tr:last-child th', (cell) => cell.textContent)).toContain(
        'Harbour',
      );
    expect(/yours/.test(await wordsOf(page, '.fig .pic svg'))).toBe(!mended);
    await page.goto(`${site().origin}/calculators/why-it-healed-this-way/`);
    await wake(page, '.calculator .says');
    await page.waitForSelector('#why-own1');
    const map = await wordsOf(page, '.calculator .says');
    await retype(page, '#why-own1', '9');
    await page.waitForFunction(
      (old) =>
        (document.querySelector('.calculator .says')?.textContent ?? '').replace(/\s+/g, ' ').trim() !== old,
      { timeout: 20_000 },
      map,
    );
    expect(await page.$eval('.calc-tools a', (link) => link.getAttribute('href'))).toContain('own1=9');
    expect(faults).toEqual([]);
    await page.close();
  });
});
