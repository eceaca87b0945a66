import { expect, test } from 'vitest';
import { kindOfPage } from '#tests/tools/pageKinds.ts';
import { isWhole, oneOf } from '#tests/tools/share.ts';
import { notStarted } from '#words/notStarted.ts';
import { bringIntoView, type FirstPart, firstParts, look, onServerOnly } from './firstParts.ts';
import { waitForWords } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

/** A page of each template, and each calculator. */
const groupOf = ({ address }: FirstPart) =>
  /^\/(calculators|sheets)\/.|^\/practice\/($|mixed|place)/.test(address) ? address : kindOfPage(address);
const wanted = [...new Set(firstParts.map(groupOf))].flatMap((group) => {
  const inGroup = firstParts.filter((each) => groupOf(each) === group);
  const address = oneOf([...new Set(inGroup.map((each) => each.address))], `first part ${group}`);
  return inGroup.filter((each) => each.address === address);
});
/** A run takes each part once, on a calculator, a lesson and a problem. */
const chosen = isWhole
  ? wanted
  : ['calculators', 'lessons', 'practice'].flatMap(
      (section, at) =>
        oneOf(
          wanted.filter(
            ({ address, part }) =>
              address.startsWith(`/${section}/`) &&
              part === ['its own script', 'the script of every figure', 'a shared script'][at],
          ),
          `first part of ${section}`,
        ) ?? [],
    );

withBrowsers('the first part of a figure', ({ open, site }) => {
  test.each(chosen)(
    '[hand] $address without $part: it is said in its place, its fields are shut, and one press brings it',
    async ({ address, file }) => {
      const { page } = await open();
      await onServerOnly(page);
      let isRefused = true;
      await page.setRequestInterception(true);
      page.on('request', (request) => {
        const isIt = isRefused && new URL(request.url()).pathname === file;
        void (isIt ? request.abort() : request.continue());
      });
      await page.goto(site().origin + address);
      const start = await look(page);
      await bringIntoView(page);
      await waitForWords(page, 'astro-island', new RegExp(`^${notStarted.gone}`));
      await page.waitForFunction(() =>
        [
          ...document.querySelectorAll<HTMLInputElement>('astro-island[data-gone] :is(input,select,button)'),
        ].every(({ disabled }) => disabled),
      );
      const then = await look(page);
      expect(then.isShut).toBe(true);
      expect(then.fields).toEqual(start.fields);
      expect(then.answer).toBe(start.answer);

      isRefused = false;
      const arrived = page.waitForNavigation({ waitUntil: 'load' });
      await page.$eval('astro-island [data-again]', (link) => link instanceof HTMLElement && link.click());
      await arrived;
      await bringIntoView(page);
      await page.waitForFunction(() => document.querySelector('astro-island:not([ssr])'));
      expect(await page.$('[data-gone]')).toBeNull();
      await page.close();
    },
  );
});
