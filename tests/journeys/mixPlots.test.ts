import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { retype, wake, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const fold = '.calculator details.fold:not(.numbers)';
const numberIn = (text: string, pattern: RegExp) => Number(pattern.exec(text)?.[1] ?? Number.NaN);

/**
 * The fold's two tables and two drawings as they stand: L* at six weeks, light of 600 nm thrown back at six
 * weeks, the lines drawn.
 */
async function read(page: Page) {
  const [years, light, lines] = await Promise.all([
    page.$$eval(`${fold} .two-years tbody tr`, (rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.firstChild?.textContent?.trim() ?? '')),
    ),
    page.$$eval(`${fold} .diffs table:not(.two-years) tbody tr`, (rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')),
    ),
    page.$$eval(`${fold} .colour-plot .plot-line`, (paths) =>
      paths.map((path) => path.getAttribute('d') ?? ''),
    ),
  ]);
  const row = (rows: readonly (readonly string[])[], name: string) =>
    rows.find(([first]) => first === name) ?? [];
  return { lightness: Number(row(years, 'six weeks')[1]), thrownBack: Number(row(light, '600')[3]), lines };
}

withBrowsers('the plots of a mix', ({ open, site }) => {
  test('[hand] the fold opens on what the page came with, and follows a drop: darker, less light thrown back, the same number as the answer', async () => {
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}/calculators/mix-by-drops/`);
    await wake(page, '.calculator .says');
    expect(await page.$eval(`${fold} .colour-plot`, (plot) => plot.checkVisibility())).toBe(false);
    await page.$eval(`${fold} > summary`, (summary) => summary instanceof HTMLElement && summary.click());
    await page.waitForFunction(
      (target) => document.querySelector(target)?.checkVisibility(),
      {},
      `${fold} .colour-plot`,
    );
    const before = await read(page);
    expect(before.lightness).toBe(
      numberIn(await wordsOf(page, '.calculator .says'), /at six weeks: L\* ([\d.]+)/),
    );

    // Three drops of black among four of brown and orange. The plots are worked out beside the page, as the
    // answer is: those before stay until the next ones come.
    await page.$eval(fold, (part) => {
      const count = () => part.querySelectorAll('.plot-line').length;
      part.dataset['fewest'] = String(count());
      new MutationObserver(() => {
        part.dataset['fewest'] = String(Math.min(count(), Number(part.dataset['fewest'])));
      }).observe(part, { childList: true, subtree: true });
    });
    await retype(page, '#drops-black-iron', '3');
    // Two workers answer, in any order: once answer and table name the same new number, both have.
    await page.waitForFunction(
      (inFold, old) => {
        const said = /at six weeks: L\* ([\d.]+)/.exec(
          document.querySelector('.calculator .says')?.textContent ?? '',
        )?.[1];
        const row = [...document.querySelectorAll(`${inFold} .two-years tbody tr`)].find(
          ({ firstChild }) => firstChild?.textContent === 'six weeks',
        );
        return (
          said !== undefined &&
          Number(said) !== old &&
          row?.children[1]?.firstChild?.textContent?.trim() === said
        );
      },
      {},
      fold,
      before.lightness,
    );
    const after = await read(page);
    expect(
      await page.$eval(fold, (part) => Number(part.dataset['fewest'])),
      'lines drawn while the next were worked out',
    ).toBe(before.lines.length);
    expect(after.lines.join()).not.toBe(before.lines.join());
    expect(after.lightness).toBeLessThan(before.lightness);
    expect(after.thrownBack).toBeLessThan(before.thrownBack);
    expect(after.lines.length).toBe(before.lines.length);
    expect(await wordsOf(page, `${fold} .matters + p`)).toMatch(/moves? the colour most/);

    expect(faults).toEqual([]);
    await page.close();
  });
});
