import { expect, test } from 'vitest';
import { mark } from '#lib/practice/marking.ts';
import { skills } from '#skills/index.ts';
import { follow, press, retype, waitForWords, wake, wordsOf } from './onPage.ts';
import { browserNames } from '#tests/tools/openBrowser.ts';
import { withBrowsers } from './withBrowsers.ts';

const lesson = '/lessons/mapping/midline-when-the-nose-leans/';
const calculator = '/calculators/midline-and-sides/';
const seed = 345;

withBrowsers(
  'learning the midline',
  ({ open, site }) => {
    test('[hand] from the front page to the lesson, the calculator with own numbers, and print', async () => {
      const { page, faults } = await open();
      await page.goto(site().origin);
      expect(await wordsOf(page, 'h1')).not.toBe('');
      await follow(page, 'a[href="/lessons/"]');
      await follow(page, `main a[href="${lesson}"]`);
      expect(await wordsOf(page, 'h1')).toMatch(/midline/i);
      await wake(page, '.calculator .says');
      const opening = await wordsOf(page, '.calculator .says');
      expect(opening).toMatch(/\d mm/);

      await page.goto(site().origin + calculator);
      await wake(page, '.calculator .says');
      expect(await wordsOf(page, '.calculator .says'), 'the lesson opens on the same answer').toBe(opening);
      await page.select('.calculator .mark-panel select', 'noseWingL');
      await retype(page, '.calculator [id$="-x"]', '25,5');
      // A comma is read as a point.
      await page.waitForFunction(() =>
        document.querySelector('.calculator .handle')?.getAttribute('aria-label')?.includes('25.5'),
      );

      await retype(page, '.calculator [id$="-x"]', 'twelve');
      await waitForWords(page, '.calculator .field-error', /\S/);
      expect(
        await page.$eval('.calculator .handle', (handle) => handle.getAttribute('aria-label')),
        'a word changes nothing',
      ).toContain('25.5');
      await retype(page, '.calculator [id$="-x"]', '40');
      await page.waitForFunction(() =>
        document.querySelector('.calculator .handle')?.getAttribute('aria-label')?.includes('40.0'),
      );
      expect(await page.$('.calculator .field-error')).toBeNull();
      expect(await wordsOf(page, '.calculator .says'), 'the sentence follows the number').not.toBe(opening);
      await press(page, '.calculator', 'Reset the marks');
      await page.waitForFunction(
        (words) =>
          document.querySelector<HTMLElement>('.calculator .says')?.innerText.replace(/\s+/g, ' ').trim() ===
          words,
        {},
        opening,
      );

      await page.evaluate(() => {
        window.print = () => {
          document.documentElement.dataset['printed'] = 'yes';
        };
      });
      await press(page, '.calculator', 'Print');
      expect(await page.evaluate(() => document.documentElement.dataset['printed'])).toBe('yes');
      expect(faults).toEqual([]);
      await page.close();
    });

    test('[hand] a problem is answered by a named wrong way, then right; it is still known after coming back', async () => {
      const skill = skills['midline-from-pairs'];
      const given = skill.given(seed);
      const answer = skill.answer(given);
      if (answer.kind !== 'number') throw new Error('The journey types a number.');
      const wrong = skill.slips
        .map(({ value }) => Number(Number(value(given)).toFixed(1)))
        .find((value) => value > 0 && !mark(answer, [], value).right);
      const { page, faults } = await open(390, 844);
      await page.goto(`${site().origin}/practice/${skill.id}/?seed=${seed}`);
      await wake(page, '.problem form input');
      await page.waitForFunction((words) => document.body.innerText.includes(words), {}, `Seed ${seed}.`);
      await retype(page, '.problem form input', String(wrong));
      await page.keyboard.press('Enter');
      await waitForWords(page, '.problem .fb', /\S/);
      expect(await page.$('.problem .fb-right')).toBeNull();
      expect(await wordsOf(page, '.problem .fb'), 'the feedback holds the learner’s own number').toContain(
        String(wrong),
      );
      await press(page, '.problem', 'Try again');
      await retype(page, '.problem form input', answer.exact.toFixed(1));
      await page.keyboard.press('Enter');
      await page.waitForSelector('.problem .fb-right');
      await page.waitForFunction(() =>
        [...document.querySelectorAll('.prac-top *')].some((bead) =>
          /Question 1: right/.test(bead.getAttribute('aria-label') ?? bead.textContent ?? ''),
        ),
      );
      await page.goto(`${site().origin}/practice/`);
      await page.waitForFunction(() => /1 done/.test(document.body.innerText), {});
      expect(faults).toEqual([]);
      await page.close();
    });

    test('[hand] a lesson fetches the store at the first key, and an answer survives a store that never answers', async () => {
      const skill = skills['level-reference'];
      const box = `#problem-${skill.id}-a`;
      const { page, faults } = await open();
      // In this lesson the database is asked and stays silent, as on a device that is busy until the page is
      // left.
      await page.evaluateOnNewDocument((silentOn) => {
        if (location.pathname === silentOn)
          IDBFactory.prototype.open = () =>
            Object.create(IDBOpenDBRequest.prototype, {
              onupgradeneeded: { writable: true },
              onsuccess: { writable: true },
              onerror: { writable: true },
            });
      }, lesson);
      const storeIsFetched = () =>
        page.evaluate(() =>
          performance.getEntriesByType('resource').some(({ name }) => /\/_astro\/keep\./.test(name)),
        );
      await page.goto(site().origin + lesson);
      await wake(page, box);
      const shownSeed = await page.$eval(
        box,
        (input) => /Seed (\d+)\./.exec(input.closest('.prac')?.textContent ?? '')?.[1],
      );
      const answer = skill.answer(skill.given(Number(shownSeed)));
      if (answer.kind !== 'number') throw new Error('The journey types a number.');
      expect(await storeIsFetched(), 'nothing of the store before the problem is touched').toBe(false);
      await retype(page, box, answer.exact.toFixed(1));
      await page.waitForFunction(() =>
        performance.getEntriesByType('resource').some(({ name }) => /\/_astro\/keep\./.test(name)),
      );
      await page.keyboard.press('Enter');
      await page.waitForSelector('.problem .fb-right');
      await page.goto(`${site().origin}/practice/`);
      await page.waitForFunction(
        (row) => document.querySelector<HTMLElement>(row)?.innerText.includes('1 done'),
        {},
        `a[href="/practice/${skill.id}/"]`,
      );
      await page.waitForFunction(
        () => !Object.keys(localStorage).some((key) => key.startsWith('tautline-put-down')),
      );
      await page.reload();
      await page.waitForFunction(
        (row) => document.querySelector<HTMLElement>(row)?.innerText.includes('1 done'),
        {},
        `a[href="/practice/${skill.id}/"]`,
      );
      expect(faults).toEqual([]);
      await page.close();
    });
  },
  browserNames,
);
