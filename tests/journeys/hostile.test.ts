import { expect, test } from 'vitest';
import { calculators } from '#calculators/index.ts';
import { skills } from '#skills/index.ts';
import { bySeed, isWhole, oneIn, seed } from '#tests/tools/share.ts';
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

type Place = Readonly<{
  kind: string;
  address: string;
  ready: string;
  refused: string | undefined;
  keys: readonly string[];
}>;

const places: readonly Place[] = [
  ...Object.values(calculators).map(({ id, fields }) => ({
    kind: 'calculator',
    address: `/calculators/${id}/`,
    ready: '.calculator .says',
    refused: '.calculator .caution.slim[role=alert]',
    keys: Object.values(fields).map(({ key }) => key),
  })),
  ...Object.keys(skills)
    .slice(0, 1)
    .map((id) => ({
      kind: 'practice',
      address: `/practice/${id}/`,
      ready: '.problem h1',
      refused: undefined,
      keys: ['seed'],
    })),
];

test('[hand] there are at least 200 worst texts', () =>
  expect(worstStrings.length).toBeGreaterThanOrEqual(200));

const howMany = ({ keys }: Place) => Math.min(atOnce, keys.length);

/**
 * The texts that a page gets. Every page reads its address by the same few lines, so the pages of one kind
 * share them out: each text goes to one page of each kind, by turns of the seed. A page takes as many at once
 * as it has names, and gets texts by that number: a page with a single name would else be loaded as often as
 * five others. The whole: each text, every second page with several names, every tenth with one.
 */
function given(place: Place, nth: number): readonly string[] {
  if (isWhole)
    return worstStrings.filter(
      (_, i) => i % (place.keys.length > 1 ? 2 : 10) === nth % (place.keys.length > 1 ? 2 : 10),
    );
  const seats = places.flatMap((other) =>
    other.kind === place.kind ? Array<Place>(howMany(other)).fill(other) : [],
  );
  // A kind of which one page alone is driven, by one name, would load once for each text: the texts are
  // shared out over ten seeds.
  const share = seats.length > 1 ? worstStrings : oneIn(10, worstStrings, `hostile ${place.kind}`);
  return share.filter((_, i) => seats[(i + seed) % seats.length] === place);
}

test('[hand] every text meets a page, and every page meets texts', () => {
  const met = new Set(places.flatMap(given));
  expect(worstStrings.filter((text) => !met.has(text))).toEqual([]);
  expect(places.filter((place, nth) => given(place, nth).length === 0).map(({ address }) => address)).toEqual(
    [],
  );
});

const mostLetters = 12_000;

withBrowsers(
  'hostile addresses',
  ({ open, site }) => {
    test.each(places.map((place, nth) => ({ ...place, given: given(place, nth) })))(
      `[hand] no text in the address of $address harms the page${bySeed}`,
      async ({ address, ready, refused, keys, given }) => {
        const { page, faults } = await open(800, 900);
        const wrong: string[] = [];
        const size = Math.min(atOnce, keys.length);
        for (let start = 0; start < given.length;) {
          const from = start;
          // Any five names of the page in turn, so that every field meets every kind of text.
          const turned = keys.map((_, i) => keys[(i + from) % keys.length] ?? '');
          let texts = given.slice(start, start + size);
          // Servers refuse an address of more than some thousand letters.
          while (texts.length > 1 && queryOf(texts, turned).length > mostLetters) texts = texts.slice(0, -1);
          start += texts.length;
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
