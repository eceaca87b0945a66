import { expect, test } from 'vitest';
import type { Answered } from '#lib/practice/progress.ts';
import { isIsoDay } from '#lib/quantities/isoDay.ts';
import { mendedIds, mendedWords } from '#words/beingMended.ts';
import { wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const longAgo = '2026-01-05';
/** Answered unaided and clean, long ago: due, were it asked. */
function answered(skill: string, i: number): Answered {
  if (!isIsoDay(longAgo)) throw new Error('A day.');
  return {
    skill,
    version: 1,
    seed: 5,
    day: longAgo,
    atMs: 1_767_600_000_000 + i,
    rung: 'bare',
    credit: 1,
    tries: 1,
    hints: 0,
    solved: true,
  };
}
const stillAsked = 'tilt';

withBrowsers('what is being mended', ({ open, site }) => {
  test('[hand] answers to it are kept and not due, the mixed set asks none of it, and an old link finds the notice', async () => {
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}/limits/`);
    const kept = JSON.stringify({ schema: 2, answers: [...mendedIds.skills, stillAsked].map(answered) });
    await page.evaluate((text) => localStorage.setItem('tautline-practice', text), kept);
    await page.goto(`${site().origin}/practice/`);
    await waitForWords(page, '.desk-due', /^1 skill is due for review today\.$/);
    for (const id of mendedIds.skills)
      expect(await wordsOf(page, `.desk-list a[href="/practice/${id}/"]`), id).toMatch(
        new RegExp(`1 done, 1 right.*${mendedWords.mark}$`),
      );
    expect(await wordsOf(page, `.desk-list a[href="/practice/${stillAsked}/"]`)).toMatch(/Due today$/);
    await page.goto(`${site().origin}/practice/mixed/`);
    await wake(page, '.prac');
    await waitForWords(page, '.prac .tiny', /Seed \d+\./);
    await page.goto(`${site().origin}/practice/green-trap/?seed=5`);
    expect(await wordsOf(page, 'main')).toContain(
      `${mendedWords.title} ${mendedWords.why} ${mendedWords.instead} ${mendedWords.skill}`,
    );
    expect(await page.$('main form, main input')).toBeNull();
    const held = await page.evaluate(() => localStorage.getItem('tautline-practice') ?? '');
    for (const id of mendedIds.skills) expect(held).toContain(`"${id}"`);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a link to old orange on fair skin names no bottle', async () => {
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}/calculators/which-hue/?skin=l72&old=orange`);
    await wake(page, '.calculator .says');
    const said = await waitForWords(page, '.calculator .says', /a\* −/);
    expect(said).toMatch(new RegExp(`^${mendedWords.title} The way back to the skin is`));
    expect(said).not.toMatch(/black|brown|points back/i);
    expect(await wordsOf(page, '.calculator .pic svg')).not.toMatch(/black|brown/);
    for (const part of ['.calculator .mended', '.calculator .says b'])
      expect(
        await page.$eval(part, (shown) => shown.checkVisibility() && shown.closest('.no-print') === null),
        part,
      ).toBe(true);
    expect(faults).toEqual([]);
    await page.close();
  });
});
