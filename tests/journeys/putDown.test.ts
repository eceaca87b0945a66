import { expect, test } from 'vitest';
import { skills } from '#skills/index.ts';
import { retype, wake } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

// In a browser that has visited nothing: neither its cache nor the offline copy can stand in for what is
// refused.
withBrowsers('an answer put down', ({ open, site }) => {
  test('[hand] it survives when what keeps it cannot be fetched: no fault is left, and the next page knows it', async () => {
    const skill = skills.tilt;
    const box = `#problem-${skill.id}-a`;
    const { page, faults } = await open();
    let refused = 0;
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const isStore = /\/_astro\/keep\./.test(request.url()) && page.url().endsWith('/level-lines/');
      refused += isStore ? 1 : 0;
      void (isStore ? request.abort() : request.continue());
    });
    await page.goto(`${site().origin}/lessons/mapping/level-lines/`);
    await wake(page, box);
    const shownSeed = await page.$eval(
      box,
      (input) => /Seed (\d+)\./.exec(input.closest('.prac')?.textContent ?? '')?.[1],
    );
    const answer = skill.answer(skill.given(Number(shownSeed)));
    if (answer.kind !== 'number') throw new Error('The journey types a number.');
    await retype(page, box, answer.exact.toFixed(1));
    await page.keyboard.press('Enter');
    await page.waitForSelector('.problem .fb-right');
    expect(refused).toBeGreaterThan(0);
    await page.goto(`${site().origin}/practice/`);
    await page.waitForFunction(
      (row) => document.querySelector<HTMLElement>(row)?.innerText.includes('1 done'),
      {},
      `a[href="/practice/${skill.id}/"]`,
    );
    // The console names what could not be fetched; the page itself must not stumble over it.
    expect(faults.filter((fault) => !fault.startsWith('console: Failed to load resource'))).toEqual([]);
    await page.close();
  });
});
