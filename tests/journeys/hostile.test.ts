import { expect, test } from 'vitest';
import { calculators } from '#calculators/index.ts';
import { skills } from '#skills/index.ts';
import { breach, worstStrings } from './worstStrings.ts';
import { wake } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

/** A page names the first five refused parts of its address: five texts at a time, so that each is shown. */
const atOnce = 5;

/** An address that carries the texts as values, each under a name of the page, and as names. */
function queryOf(texts: readonly string[], keys: readonly string[]): string {
  const safe = texts.map((text) => encodeURIComponent(text.toWellFormed()));
  return [
    ...safe.map((text, i) => `${keys[i % keys.length]}=${text}`),
    ...safe.map((text, i) => `${text}=${safe[(i + 1) % safe.length]}`),
  ].join('&');
}

/** Runs in the page: what a hostile text must never leave behind. */
function harm(mark: string): string[] {
  const found: string[] = [];
  if (mark in window) found.push('a script of the text ran');
  if (document.getElementsByClassName(mark).length > 0) found.push('markup of the text became an element');
  const words = document.querySelector('main')?.textContent ?? '';
  for (const stray of ['NaN mm', 'undefined', '[object Object]', 'Infinity mm']) {
    const isQuoted = [...document.querySelectorAll('.caution, .field-error')].some((each) =>
      each.textContent?.includes(stray),
    );
    if (words.includes(stray) && !isQuoted) found.push(`the page says “${stray}”`);
  }
  for (const shape of document.querySelectorAll('main svg *')) {
    if ([...shape.attributes].some(({ value }) => /NaN|undefined|Infinity/.test(value)))
      found.push(`a drawing holds NaN: ${shape.outerHTML.slice(0, 80)}`);
  }
  if (!document.querySelector('h1')) found.push('the page is gone');
  return found;
}

const places = [
  ...Object.values(calculators).map(({ id, fields }) => ({
    address: `/calculators/${id}/`,
    ready: '.calculator .says',
    refused: '.calculator .caution.slim[role=alert]',
    keys: Object.values(fields).map(({ key }) => key),
  })),
  ...Object.keys(skills)
    .slice(0, 1)
    .map((id) => ({ address: `/practice/${id}/`, ready: '.problem h1', refused: undefined, keys: ['seed'] })),
];

test('[hand] there are at least 200 worst texts', () =>
  expect(worstStrings.length).toBeGreaterThanOrEqual(200));

/**
 * Every page reads its address by the same few lines, so the pages share the texts out: one with several
 * names gets every second text, one with a single name every tenth, and each text meets several pages of both
 * kinds.
 */
const given = (keys: readonly string[], page: number): readonly string[] => {
  const share = keys.length > 1 ? 2 : 10;
  return worstStrings.filter((_, i) => i % share === page % share);
};

withBrowsers(
  'hostile addresses',
  ({ open, site }) => {
    test.each(places.map((place, i) => ({ ...place, given: given(place.keys, i) })))(
      '[hand] no text in the address of $address harms the page',
      async ({ address, ready, refused, keys, given }) => {
        const { page, faults } = await open(800, 900);
        const wrong: string[] = [];
        const size = Math.min(atOnce, keys.length);
        for (let start = 0; start < given.length; start += size) {
          const texts = given.slice(start, start + size);
          // Any five names of the page in turn, so that every field meets every kind of text.
          const turned = keys.map((_, i) => keys[(i + start) % keys.length] ?? '');
          await page.goto(`${site().origin}${address}?${queryOf(texts, turned)}`, { waitUntil: 'load' });
          await wake(page, ready);
          // No page has fields of these names: once it says so, it has read the whole address.
          if (refused) await page.waitForSelector(refused);
          const found = await page.evaluate(harm, breach);
          if (found.length > 0 || faults.length > 0)
            wrong.push(
              `${JSON.stringify(texts).slice(0, 200)}: ${[...found, ...faults.splice(0)].join('; ')}`,
            );
        }
        expect(wrong).toEqual([]);
        await page.close();
      },
    );
  },
  ['chromium'],
);
