import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { fromAddress } from '#calculators/address.ts';
import { namedMarks } from '#calculators/marks.ts';
import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { fixed } from '#words/number.ts';
import { onScreen, retype, bringToTop, wake } from './onPage.ts';
import { slackMm, withBrowsers } from './withBrowsers.ts';

const calculator = '/calculators/midline-and-sides/';
const steps = { x: 7, y: -4 };

/** The link that "Copy link" would copy, as the state it holds. */
async function copied(page: Page) {
  const link = await page.evaluate(async () => {
    let text = '';
    Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { writeText: async (given: string) => { text = given; } } });
    [...document.querySelectorAll<HTMLButtonElement>('.calc-tools button')].find((button) => button.innerText.includes('Copy link'))?.click();
    for (let tries = 0; text === '' && tries < 200; tries++) await new Promise((done) => setTimeout(done, 10));
    return text;
  });
  const { state, refused } = fromAddress(midlineAndSides, new URL(link).search);
  expect(refused).toEqual([]);
  return state;
}

const reset = (page: Page) => page.evaluate(() => [...document.querySelectorAll<HTMLButtonElement>('.calc-tools button')].find((button) => button.innerText.includes('Back to the start'))?.click());

withBrowsers('five ways to move a mark', ({ open, site, name }) => {
  test('[hand] every mark of the spec: dragged, tapped, by arrow keys, by buttons and typed give one address', async () => {
    const { page, faults } = await open(1280, 1000);
    await page.goto(site().origin + calculator);
    await wake(page, '.stage');
    await bringToTop(page, '.stage');
    const { fields } = midlineAndSides;
    for (const { key } of namedMarks) {
      const from = fields[key].start;
      const to = { xMm: Number((from.xMm + steps.x / 10).toFixed(1)), yMm: Number((from.yMm + steps.y / 10).toFixed(1)) };
      const { start, end } = await onScreen(page, from, to);
      const ways: Readonly<Record<string, () => Promise<void>>> = {
        drag: async () => {
          await page.mouse.move(start.left, start.top);
          await page.mouse.down();
          await page.mouse.move((start.left + end.left) / 2, (start.top + end.top) / 2);
          await page.mouse.move(end.left, end.top);
          await page.mouse.up();
        },
        tap: async () => {
          await page.mouse.click(start.left, start.top);
          await page.mouse.click(end.left, end.top);
        },
        keys: async () => {
          await page.select('.mark-panel select', key);
          await page.$eval('.handle', (handle) => handle instanceof SVGElement && handle.focus());
          for (let i = 0; i < steps.x; i++) await page.keyboard.press('ArrowRight');
          for (let i = 0; i < -steps.y; i++) await page.keyboard.press('ArrowDown');
        },
        buttons: async () => {
          await page.select('.mark-panel select', key);
          const [, right, , down] = await page.$$('.stepper .step');
          for (let i = 0; i < steps.x; i++) await right?.evaluate((button) => button instanceof HTMLElement && button.click());
          for (let i = 0; i < -steps.y; i++) await down?.evaluate((button) => button instanceof HTMLElement && button.click());
        },
        typed: async () => {
          await page.select('.mark-panel select', key);
          await retype(page, '.calculator [id$="-x"]', to.xMm.toFixed(1));
          await retype(page, '.calculator [id$="-y"]', to.yMm.toFixed(1).replace('.', ','));
          await page.waitForFunction((words) => document.querySelector('.handle')?.getAttribute('aria-label')?.includes(words), {}, `across ${fixed(to.xMm)}, up ${fixed(to.yMm)} `);
        },
      };
      for (const [way, move] of Object.entries(ways)) {
        await reset(page);
        await move();
        const state = await copied(page);
        const slack = slackMm(name, way);
        expect(Math.abs(state[key].xMm - to.xMm), `${key}, ${way}, across: ${state[key].xMm}, not ${to.xMm}`).toBeLessThanOrEqual(slack);
        expect(Math.abs(state[key].yMm - to.yMm), `${key}, ${way}, up: ${state[key].yMm}, not ${to.yMm}`).toBeLessThanOrEqual(slack);
      }
    }
    expect(faults).toEqual([]);
    await page.close();
  });
});
