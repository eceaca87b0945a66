import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { pinHeightsMm } from '#components/practice/placeMidline/placeView.ts';
import { lineThrough, xAtHeightMm } from '#lib/geometry/crossing.ts';
import { placeMidline } from '#skills/mapping/placeMidline.ts';
import { fixed } from '#words/number.ts';
import { placeMidlineWords as words, type Ends } from '#words/skills/placeMidline.ts';
import { onScreen, press, retype, bringToTop, waitForWords, wake, wordsOf } from './onPage.ts';
import { slackMm, withBrowsers } from './withBrowsers.ts';

const address = '/practice/place-the-midline/';
const face = { seed: 7, level: 3 } as const;
const toMm = 3.5;

/** What stands in a pin's box, as a number. */
const standsAt = (page: Page, box: string) =>
  page.$eval(box, (input) =>
    input instanceof HTMLInputElement ? Number(input.value.replace('−', '-')) : Number.NaN,
  );

/** Where the two pins stand for a line that crosses brow and chin height there, to a hundredth. */
function pinsFor(given: ReturnType<typeof placeMidline.given>, { browsMm, chinMm }: Ends) {
  const line = lineThrough(
    { xMm: browsMm, yMm: given.browHeightMm },
    { xMm: chinMm, yMm: given.chinHeightMm },
  );
  const at = (yMm: number) => (line && xAtHeightMm(line, yMm))?.toFixed(2) ?? '';
  return { top: at(pinHeightsMm.top), foot: at(pinHeightsMm.foot) };
}

async function place(page: Page, { top, foot }: Readonly<{ top: string; foot: string }>): Promise<void> {
  await retype(page, '#place-top', top);
  await retype(page, '#place-foot', foot);
  await page.keyboard.press('Enter');
}

withBrowsers('placing the midline', ({ open, site, name }) => {
  test('[hand] each pin: dragged, tapped, by arrow keys, by buttons and typed gives one number', async () => {
    const { page, faults } = await open(1280, 1000);
    await page.goto(site().origin + address);
    await wake(page, '.stage');
    await bringToTop(page, '.stage');
    for (const pin of ['top', 'foot'] as const) {
      const box = `#place-${pin}`;
      const yMm = pinHeightsMm[pin];
      const ways: Readonly<Record<string, () => Promise<void>>> = {
        drag: async () => {
          const { start, end } = await onScreen(page, { xMm: 0, yMm }, { xMm: toMm, yMm });
          await page.mouse.move(start.left, start.top);
          await page.mouse.down();
          await page.mouse.move((start.left + end.left) / 2, start.top + 6);
          await page.mouse.move(end.left, end.top);
          await page.mouse.up();
        },
        tap: async () => {
          const { start, end } = await onScreen(page, { xMm: 0, yMm }, { xMm: toMm, yMm });
          await page.mouse.click(start.left, start.top);
          await page.mouse.click(end.left, end.top);
        },
        keys: async () => {
          await page.click(`input[name="place-pin"][value="${pin}"]`);
          await page.$eval('.handle', (handle) => handle instanceof SVGElement && handle.focus());
          await page.keyboard.down('Shift');
          for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
          await page.keyboard.up('Shift');
          for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
          // Up and down are not its way.
          await page.keyboard.press('ArrowUp');
        },
        buttons: async () => {
          for (let i = 0; i < toMm / 0.5; i++)
            await page.$$eval(
              '.pin-row .step',
              (steps, at) => steps[at] instanceof HTMLElement && steps[at].click(),
              pin === 'top' ? 1 : 3,
            );
        },
        typed: () => retype(page, box, '3,5'),
      };
      for (const [way, move] of Object.entries(ways)) {
        await retype(page, box, '0');
        await page.waitForFunction(
          (row) => document.querySelector('.handle')?.getAttribute('aria-label')?.startsWith(row),
          {},
          `${words.pins[pin]}: across 0.0 `,
        );
        await page.$eval(box, (input) => input instanceof HTMLElement && input.blur());
        await bringToTop(page, '.stage');
        await move();
        await page.$eval(box, (input) => input instanceof HTMLElement && input.blur());
        await page
          .waitForFunction(
            (target, mm, slack) => {
              const input = document.querySelector<HTMLInputElement>(target);
              return input && Math.abs(Number(input.value) - mm) <= slack;
            },
            { timeout: 20_000 },
            box,
            toMm,
            slackMm(name, way),
          )
          .catch(() => undefined);
        const mm = await standsAt(page, box);
        expect(Math.abs(mm - toMm), `${pin} pin, ${way}: ${mm}, not ${toMm}`).toBeLessThanOrEqual(
          slackMm(name, way),
        );
        expect(
          await page.$eval('.handle', (handle) => handle.getAttribute('aria-label')),
          `${pin} pin, ${way}: said`,
        ).toContain(`${words.pins[pin]}: across ${fixed(mm)} millimetres`);
      }
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a thread down the nose is named so, with the learner’s own numbers; then the right one is right, and it is remembered', async () => {
    const given = placeMidline.given(face.seed, face.level);
    const nose = placeMidline.slips(given).find(({ id }) => id === 'followed-nose');
    if (!nose) throw new Error('On this face the nose misleads nobody.');
    const { page, faults } = await open(390, 844);
    await page.goto(`${site().origin}${address}?seed=${face.seed}&level=${face.level}`);
    await wake(page, '.stage');
    await page.waitForFunction(
      (seed) => document.querySelector<HTMLInputElement>('#place-seed')?.value === seed,
      {},
      String(face.seed),
    );
    await place(page, pinsFor(given, nose.ends));
    expect(await waitForWords(page, '.placed .fb-title', /\S/)).toMatch(/followed the nose/);
    expect(await page.$('.fb-right')).toBeNull();
    expect(await wordsOf(page, '.placed')).toContain(
      `${fixed(nose.ends.browsMm)} mm at the brows and ${fixed(nose.ends.chinMm)} mm at the chin`,
    );
    await press(page, '.placed', 'Try again');
    await place(page, pinsFor(given, placeMidline.answer(given).exact));
    await page.waitForSelector('.placed.fb-right');
    expect(await wordsOf(page, '.placed .fb-title')).toBe('Right');
    await page.goto(`${site().origin}/practice/`);
    await page.waitForFunction(
      (row) => document.querySelector<HTMLElement>(row)?.innerText.includes('1 done'),
      {},
      `a[href="${address}"]`,
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a face or a level that does not exist, in the address or typed, gets a message and harms nothing', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}${address}?seed=1000&level=9`);
    await wake(page, '.stage');
    expect(await waitForWords(page, '#place-seed-error', /\S/)).toBe(words.badFace);
    expect(
      await page.$$eval('.place .field-error', (errors) => errors.map((error) => error.textContent)),
    ).toContain(words.badLevel);
    expect(
      await page.$eval('#place-seed', (box) =>
        box instanceof HTMLInputElement ? [box.value, box.getAttribute('aria-invalid')] : [],
      ),
    ).toEqual(['1000', 'true']);
    await retype(page, '#place-seed', 'seven');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (text) => document.querySelector('#place-seed-error')?.textContent === text,
      {},
      words.badFaceTyped,
    );
    await retype(page, '#place-seed', String(face.seed));
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (query) => location.search === query && !document.querySelector('.place .field-error'),
      {},
      `?seed=${face.seed}&level=1`,
    );
    expect(faults).toEqual([]);
    await page.close();
  });
});
