import { expect, test } from 'vitest';
import { typeInto } from './movable.ts';
import { wake } from './onPage.ts';
import { partOf } from '#tests/tools/share.ts';
import { withBrowsers } from './withBrowsers.ts';

const places = [
  { address: '/calculators/midline-and-sides/', field: '#midline-readings', typed: '1' },
  { address: '/calculators/mix-by-drops/', field: '#drops-dose', typed: '0.6' },
  { address: '/calculators/pose/', field: '#pose-tilt', typed: '6' },
] as const;

withBrowsers('the answer stays in view on a phone', ({ open, site }) => {
  test.each(partOf(places, 0, 3))(
    '[hand] $address: while a field changes, a small picture and the first sentence stand above it and cover no field',
    async ({ address, field, typed }) => {
      const { page, faults } = await open(390, 640);
      await page.goto(site().origin + address);
      await wake(page, '.calculator .says');
      const said = () =>
        page.$eval('.calculator .says', (says) => (says.querySelector('b') ?? says)?.textContent ?? '');
      const before = await page.$eval('.calculator .says', (says) => says.textContent);
      await page.$eval(field, (box) => {
        box.closest('details')?.setAttribute('open', '');
        box.scrollIntoView({ block: 'start', behavior: 'instant' });
      });
      expect(await typeInto(page, field, typed)).toBe(true);
      await page.waitForFunction(
        (old) => document.querySelector('.calculator .says')?.textContent !== old,
        {},
        before,
      );
      await page.waitForFunction(
        (target) => {
          const strip = document.querySelector('.strip.is-shown')?.getBoundingClientRect();
          const box = document.querySelector(target)?.getBoundingClientRect();
          return strip && box && strip.top === 0 && box.top >= strip.bottom && box.bottom <= innerHeight;
        },
        {},
        field,
      );
      const words = await said();
      await page.waitForFunction((now) => document.querySelector('.strip p')?.textContent === now, {}, words);
      expect(
        await page.$$eval('.strip svg', (drawings) =>
          drawings.some((drawing) => drawing.getBoundingClientRect().width > 80),
        ),
      ).toBe(true);
      // At the end of the figure there is nothing to keep in view.
      await page.evaluate(() => scrollTo({ top: document.body.scrollHeight, behavior: 'instant' }));
      await page.waitForSelector('.strip:not(.is-shown)', { hidden: true });
      expect(faults).toEqual([]);
      await page.close();
    },
  );
});
