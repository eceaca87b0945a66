import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser } from 'puppeteer-core';
import { skills } from '#skills/index.ts';
import { builtFolder, startSite } from '#tests/tools/builtSite.ts';
import { browserNames, openBrowser, openPage } from '#tests/tools/openBrowser.ts';
import { linkVersionWords, otherVersionsWords } from '#words/versions.ts';
import { retype, waitForWords, wake } from './onPage.ts';

const skill = skills.tilt;
const next = skill.version + 1;
const row = `a[href="/practice/${skill.id}/"]`;
const box = '.problem form input';

/** A copy of the built site in which this one skill has been made anew: its version in its script and in the two lists. */
function madeAnew(): string {
  const folder = mkdtempSync(join(tmpdir(), 'made-anew-'));
  cpSync(builtFolder, folder, { recursive: true });
  const swap = (pattern: string, from: RegExp) => {
    const files = globSync(pattern, { cwd: folder })
      .map((name) => join(folder, name))
      .filter((file) => from.test(readFileSync(file, 'utf8')));
    expect(files, pattern).toHaveLength(1);
    for (const file of files)
      writeFileSync(
        file,
        readFileSync(file, 'utf8').replace(from, (found) => found.replace(/\d+$/, String(next))),
      );
  };
  swap('_astro/*.js', new RegExp(`id:.${skill.id}.,version:\\d+`));
  for (const page of ['practice/index.html', 'practice/mixed/index.html'])
    swap(page, new RegExp(`${skill.id}&quot;\\],&quot;version&quot;:\\[0,\\d+`));
  return folder;
}

describe.each(browserNames)('an exercise made anew, %s', (name) => {
  let folder = '';
  let browser: Browser;
  beforeAll(async () => {
    folder = madeAnew();
    browser = await openBrowser(name);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('[hand] answers from before stay, are named as such and count for nothing; a link from before says so, in the list and on the page', async () => {
    const site = await startSite(folder);
    const { page, faults } = await openPage(browser, site.origin, 390, 844);
    // What a visit before left behind, as it was written then: without a version, three right answers, due long ago.
    const { version: _, ...then } = {
      skill: skill.id,
      version: 1,
      seed: 4,
      day: '2026-01-02',
      rung: 'bare',
      credit: 1,
      tries: 1,
      hints: 0,
      solved: true,
    };
    const left = JSON.stringify({ schema: 1, answers: [1, 2, 3].map((atMs) => ({ ...then, atMs })) });
    await page.goto(`${site.origin}/limits/`);
    await page.evaluate((text) => localStorage.setItem('tautline-practice', text), left);

    await page.goto(`${site.origin}/practice/`);
    const listed = otherVersionsWords({ earlier: 3, later: 0 });
    const words = await waitForWords(page, row, new RegExp(listed));
    expect(words).toContain('Not started');
    expect(words).not.toContain('Due');
    expect(await page.$$eval('.desk-now', (due) => due.length)).toBe(0);

    await page.goto(`${site.origin}/practice/${skill.id}/?seed=7`);
    await wake(page, box);
    const note = await waitForWords(
      page,
      '.prac-top',
      new RegExp(`${linkVersionWords('earlier')}.*${listed}`),
    );
    expect(note).toContain('made anew');
    await waitForWords(page, '.hintbox', new RegExp(`Seed 7, version ${next}\\.`));
    const answer = skill.answer(skill.given(7));
    if (answer.kind !== 'number') throw new Error('The journey types a number.');
    await retype(page, box, answer.exact.toFixed(1));
    await page.keyboard.press('Enter');
    await page.waitForSelector('.problem .fb-right');

    await page.goto(`${site.origin}/practice/${skill.id}/?seed=7&version=${next}`);
    await wake(page, box);
    await waitForWords(page, '.prac-top', new RegExp(listed));
    expect(await page.$eval('.prac-top', (top) => top.textContent)).not.toContain(
      linkVersionWords('earlier'),
    );
    await page.goto(`${site.origin}/practice/`);
    expect(await waitForWords(page, row, /1 done, 1 right/)).toContain(listed);

    // The copy carries all of it, each with its version.
    const kept = await page.evaluate(
      () =>
        new Promise<unknown>((done) => {
          const open = indexedDB.open('tautline-practice');
          open.onsuccess = () => {
            const asked = open.result
              .transaction('progress')
              .objectStore('progress')
              .get('tautline-practice');
            asked.onsuccess = () => done(asked.result);
          };
        }),
    );
    expect(kept).toMatchObject({ schema: 2, answers: [{ skill: skill.id, version: next, seed: 7 }] });
    expect(faults).toEqual([]);
    await page.close();
    await site.close();
  });

  test("[hand] today's site: answers to a later version are kept and named, a later or unreadable link says so", async () => {
    const site = await startSite();
    const { page, faults } = await openPage(browser, site.origin);
    const later = {
      skill: skill.id,
      version: next,
      seed: 4,
      day: '2026-01-02',
      atMs: 1,
      rung: 'bare',
      credit: 1,
      tries: 1,
      hints: 0,
      solved: true,
    };
    await page.goto(`${site.origin}/limits/`);
    await page.evaluate(
      (text) => localStorage.setItem('tautline-practice', text),
      JSON.stringify({ schema: 2, answers: [later] }),
    );
    await page.goto(`${site.origin}/practice/`);
    expect(await waitForWords(page, row, new RegExp(otherVersionsWords({ earlier: 0, later: 1 })))).toContain(
      'Not started',
    );
    for (const [version, link] of [
      [String(next), 'later'],
      ['x', 'unreadable'],
    ] as const) {
      await page.goto(`${site.origin}/practice/${skill.id}/?seed=7&version=${version}`);
      await wake(page, box);
      await waitForWords(page, '.prac-top', new RegExp(linkVersionWords(link)));
    }
    for (const [query, words] of [
      ['?seed=7&level=2&version=9', linkVersionWords('later')],
      ['?seed=7&level=2', ''],
    ] as const) {
      await page.goto(`${site.origin}/practice/place-the-midline/${query}`);
      await wake(page, '.stage');
      await page.waitForFunction(
        () => document.querySelector<HTMLInputElement>('#place-seed')?.value === '7',
      );
      expect(
        await page.$$eval('.place > .notice', (notes) => notes.map((note) => note.textContent).join(' ')),
      ).toBe(words);
    }
    expect(faults).toEqual([]);
    await page.close();
    await site.close();
  });
});
