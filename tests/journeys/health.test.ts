import { expect, test } from 'vitest';
import { retype, waitForWords, wake } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

withBrowsers('an answer about health', ({ open, site }) => {
  test('[hand] is heeded at once, also without the planner; after a new load it is asked anew, with one line, beside the numbers', async () => {
    const { page, faults } = await open();
    await page.setRequestInterception(true);
    page.on(
      'request',
      (request) => void (/coverWorker/i.test(request.url()) ? request.abort() : request.continue()),
    );
    await page.goto(`${site().origin}/calculators/cover-the-old-shape/`);
    await wake(page, '.calculator .says');
    await page.select('#cover-skin', 'itchy');
    await waitForWords(page, '.calculator .says', /^Stop: .*itchy/);
    expect(await page.$('.calculator .numbers table'), 'no plan stands below it').toBeNull();
    await retype(page, '#cover-raise', '1.5');
    await page.waitForFunction(() => JSON.stringify(localStorage).includes('1.5'));
    expect(await page.evaluate(() => JSON.stringify(localStorage) + location.href)).not.toContain('itchy');
    await page.reload();
    await wake(page, '.calculator .says');
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#cover-raise')?.value === '1.5',
    );
    await waitForWords(page, '.calculator > .notice', /Skin over the old work/);
    expect(faults.filter((fault) => !/Failed to load|NetworkError/.test(fault))).toEqual([]);
    await page.close();
  });
});
