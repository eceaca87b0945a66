import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { skills } from '#skills/index.ts';
import { typedWords } from '#words/typed.ts';
import { follow, retype, waitForWords, wake } from './onPage.ts';
import { backToStart } from './movable.ts';
import { isTurn } from '#tests/tools/share.ts';
import { withBrowsers } from './withBrowsers.ts';

// What was typed is there after a new load, after Back, and in a new tab of the same day.

const valueOf = (page: Page, box: string): Promise<string> =>
  page.$eval(box, (input) =>
    input instanceof HTMLInputElement || input instanceof HTMLSelectElement ? input.value : '',
  );
const holds = (page: Page, box: string, value: string) =>
  page.waitForFunction(
    (target, wanted) => document.querySelector<HTMLInputElement>(target)?.value === wanted,
    {},
    box,
    value,
  );
/** What is typed is written a moment later. */
const isWritten = (page: Page, text: string) =>
  page.waitForFunction(
    (wanted) =>
      Object.entries(localStorage).some(
        ([key, value]) => key.startsWith('tautline-typed ') && String(value).includes(wanted),
      ),
    {},
    text,
  );
const isEmpty = (page: Page) =>
  page.waitForFunction(() => !Object.keys(localStorage).some((key) => key.startsWith('tautline-typed ')));

/** One calculator of each kind, and a figure in a lesson: a box, what is typed, and what it shows then. */
const calculators = [
  { at: '/calculators/outline-and-cover/', box: '.calculator [id$="-x"]', typed: '31,5', shows: '31.5' },
  {
    at: '/calculators/usual-difference/',
    box: '.calculator .field input[type=text]',
    typed: '2.7',
    shows: '2.7',
  },
  { at: '/calculators/find-a-recipe/', box: '#recipe-targetL', typed: '41', shows: '41' },
  {
    at: '/lessons/mapping/midline-when-the-nose-leans/',
    box: '.calculator [id$="-x"]',
    typed: '-20.5',
    shows: '−20.5',
  },
] as const;

withBrowsers('what was typed', ({ open, site }) => {
  if (isTurn(0, 4))
    test('[hand] into calculators and a figure of a lesson: each its own, after a new load, Back and a closed tab; the start clears it', async () => {
      const { page, faults } = await open();
      const { origin } = site();
      const starts = new Map<string, string>();
      for (const { at, box, typed } of calculators) {
        await page.goto(origin + at);
        await wake(page, '.calculator .says');
        starts.set(at, await valueOf(page, box));
        await retype(page, box, typed);
        await isWritten(page, typed.replace(',', '.'));
      }
      const { at, box, shows } = calculators[0];
      // A refused text stays in its box, beside what was accepted.
      await page.goto(origin + at);
      await wake(page, '.calculator .says');
      await holds(page, box, shows);
      await retype(page, '.calculator [id$="-y"]', 'high');
      await isWritten(page, 'high');
      await page.reload();
      await wake(page, '.calculator .says');
      await holds(page, box, shows);
      await holds(page, '.calculator [id$="-y"]', 'high');
      await waitForWords(page, '.calculator .field-error', /not a number/);
      await follow(page, 'header a[href="/practice/"], nav a[href="/practice/"]');
      await page.evaluate(() => history.back());
      await page.waitForFunction((path) => location.pathname === path, {}, at);
      await wake(page, '.calculator .says');
      await holds(page, '.calculator [id$="-y"]', 'high');
      await page.close();

      const { page: next, faults: more } = await open();
      for (const each of calculators) {
        await next.goto(origin + each.at);
        await wake(next, '.calculator .says');
        await holds(next, each.box, each.shows);
        await backToStart(next);
        await holds(next, each.box, starts.get(each.at) ?? '');
      }
      await isEmpty(next);
      expect([...faults, ...more]).toEqual([]);
      await next.close();
    });

  if (isTurn(1, 4))
    test('[hand] a link with numbers wins over it, until something is typed under the link and the reader comes back to it', async () => {
      const { page, faults } = await open();
      const { origin } = site();
      const box = '#recipe-targetL';
      await page.goto(`${origin}/calculators/find-a-recipe/`);
      await wake(page, '.calculator .says');
      await retype(page, box, '41');
      await isWritten(page, '41');
      await page.goto(`${origin}/calculators/find-a-recipe/?targetL=44`);
      await wake(page, '.calculator .says');
      await holds(page, box, '44');
      await retype(page, box, '45');
      await isWritten(page, '45');
      await page.reload();
      await wake(page, '.calculator .says');
      await holds(page, box, '45');
      await page.goto(`${origin}/limits/`);
      await page.goto(`${origin}/calculators/find-a-recipe/?targetL=44`);
      await wake(page, '.calculator .says');
      await holds(page, box, '44');
      await page.goto(`${origin}/calculators/find-a-recipe/`);
      await wake(page, '.calculator .says');
      await holds(page, box, '45');
      await backToStart(page);
      await isEmpty(page);
      expect(faults).toEqual([]);
      await page.close();
    });

  if (isTurn(2, 4))
    test('[hand] an answer that is not checked, typed or chosen, and the pins of a placed midline', async () => {
      const { page, faults } = await open(390, 844);
      const { origin } = site();
      const numbers = '/practice/midline-from-pairs/';
      const box = '.problem form input';
      await page.goto(origin + numbers);
      await wake(page, box);
      await retype(page, box, '12,3');
      await isWritten(page, '12,3');
      await page.goto(`${origin}/practice/use-or-refuse/`);
      await wake(page, box);
      await page.$$eval('.problem form input', (options) => {
        const last = options.at(-1);
        if (last instanceof HTMLElement) last.click();
      });
      await page.waitForFunction(() =>
        Object.keys(localStorage).some((key) => key.endsWith('problem use-or-refuse')),
      );
      await page.goto(`${origin}/practice/place-the-midline/`);
      await wake(page, '.stage');
      await retype(page, '#place-top', '4.5');
      await retype(page, '#place-foot', 'left');
      await isWritten(page, 'left');
      await page.reload();
      await wake(page, '.stage');
      await holds(page, '#place-foot', 'left');
      await page.close();

      const { page: next, faults: more } = await open(390, 844);
      await next.goto(`${origin}/practice/place-the-midline/`);
      await wake(next, '.stage');
      await holds(next, '#place-top', '4.5');
      await holds(next, '#place-foot', 'left');
      await next.goto(`${origin}/practice/use-or-refuse/`);
      await wake(next, box);
      await next.waitForFunction(
        () => [...document.querySelectorAll<HTMLInputElement>('.problem form input')].at(-1)?.checked,
      );
      await next.goto(origin + numbers);
      await wake(next, box);
      await holds(next, box, '12,3');
      // Once it is settled it is no longer typed.
      const seed = Number(
        /Seed (\d+)/.exec(await next.$eval('.prac', (part) => part.textContent ?? ''))?.[1],
      );
      const skill = skills['midline-from-pairs'];
      const answer = skill.answer(skill.given(seed));
      if (answer.kind !== 'number') throw new Error('The journey types a number.');
      await retype(next, box, answer.exact.toFixed(1));
      await next.keyboard.press('Enter');
      await next.waitForSelector('.problem .fb-right');
      await next.waitForFunction(
        () => !Object.keys(localStorage).some((key) => key.endsWith('problem midline-from-pairs')),
      );
      expect([...faults, ...more]).toEqual([]);
      await next.close();
    });

  if (isTurn(3, 4))
    test('[hand] of an earlier day it is gone; of an earlier version it is left out, with one line; without storage the page works', async () => {
      const { page, faults } = await open();
      const { origin } = site();
      await page.goto(`${origin}/limits/`);
      await page.evaluate(() => {
        const now = new Date();
        const two = (part: number) => String(part).padStart(2, '0');
        const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
        const put = (key: string, entry: unknown) =>
          localStorage.setItem(`tautline-typed ${key}`, JSON.stringify(entry));
        const recipe = { query: '', fields: { targetL: '41', gone: '1' }, drafts: {} };
        put('/calculators/find-a-recipe/ calculator find-a-recipe', { day, version: 1, typed: recipe });
        put('/practice/tilt/ problem tilt', { day, version: 99, typed: { text: '4' } });
        put('/calculators/pose/ calculator pose', { day: '2020-02-02', version: 1, typed: recipe });
      });
      await page.goto(`${origin}/calculators/find-a-recipe/`);
      await wake(page, '.calculator .says');
      await waitForWords(page, '.calculator > .notice', new RegExp(typedWords.calculatorLost));
      await holds(page, '#recipe-targetL', '41');
      expect(
        await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('pose'))),
      ).toEqual([]);
      await page.goto(`${origin}/practice/tilt/`);
      await wake(page, '.problem form input');
      await waitForWords(page, '.problem', new RegExp(typedWords.problemLost));
      expect(await valueOf(page, '.problem form input')).toBe('');

      await page.evaluateOnNewDocument(() => {
        Object.defineProperty(window, 'localStorage', {
          get() {
            throw new DOMException('denied', 'SecurityError');
          },
        });
      });
      await page.goto(`${origin}/calculators/usual-difference/`);
      await wake(page, '.calculator .says');
      const before = await page.$eval('.calculator .says', (part) => part.textContent);
      await retype(page, '.calculator .field input[type=text]', '3.4');
      await page.waitForFunction(
        (words) => document.querySelector('.calculator .says')?.textContent !== words,
        {},
        before,
      );
      expect(faults).toEqual([]);
      await page.close();
    });
});
