import { expect, test } from 'vitest';
import { wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

/**
 * A million recipes at seven doses, for a colour that none reaches: the longest search there is without
 * bottles of one’s own.
 */
const longSearch = '/calculators/find-a-recipe/?bottles=4&drops=16&white=100&darker=50&lean=180&targetL=44';

withBrowsers('a long search', ({ open, site }) => {
  test('[hand] stopped by a key it says so and stays stopped; the same button starts it again, and the answer comes', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}${longSearch}`);
    await wake(page, '.calculator .says');
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    const stop = () =>
      page
        .waitForFunction(
          () => {
            const button = [...document.querySelectorAll<HTMLButtonElement>('.calculator button')].find(
              ({ textContent }) => textContent === 'Stop',
            );
            button?.focus();
            return button !== undefined;
          },
          { timeout: 20_000 },
        )
        .then(() => page.keyboard.press('Enter'));
    const isSearching = () =>
      page.$eval('.calculator', (calculator) => calculator.querySelector('progress') !== null);
    await stop();
    await waitForWords(page, '.calculator .says', /The search was stopped\./);
    expect(await isSearching()).toBe(false);
    expect(await focused()).toBe('Search again');
    // Whatever still came from the search that was stopped would come by now.
    await new Promise((done) => setTimeout(done, 1500));
    expect(await wordsOf(page, '.calculator .says')).toContain(
      'The recipe below belongs to the earlier numbers.',
    );

    await page.keyboard.press('Enter');
    await stop();
    await waitForWords(page, '.calculator .says', /The search was stopped\./);
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      () =>
        /No recipe is predicted to reach this colour/.test(
          document.querySelector('.calculator .says')?.textContent ?? '',
        ),
      { timeout: 60_000 },
    );
    expect(await isSearching()).toBe(false);
    expect(await page.$$eval('table.recipes tbody tr', (rows) => rows.length)).toBe(16);
    expect(
      await page.$$eval(
        '.calculator button',
        (buttons) =>
          buttons.filter(({ textContent }) => /^(Stop|Search again)$/.test(textContent ?? '')).length,
      ),
    ).toBe(0);
    expect(faults).toEqual([]);
  });
});
