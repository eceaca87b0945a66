import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { mendedWords } from '#words/beingMended.ts';
import { addressesUnder } from '#tests/tools/builtSite.ts';
import { kindOfPage } from '#tests/tools/pageKinds.ts';
import { type BrowserName, browserNames } from '#tests/tools/openBrowser.ts';
import { bySeed, oneOfEach, partOf } from '#tests/tools/share.ts';
import { settle, wake, wordsOf } from '../journeys/onPage.ts';
import { withBrowsers } from '../journeys/withBrowsers.ts';

const folder = mkdtempSync(join(tmpdir(), 'print-'));
afterAll(() => rmSync(folder, { recursive: true }));

/**
 * A printed file, read back: the words of each sheet as a reader of the paper meets them, and how much ink
 * lies on it.
 */
function sheetsOf(pdf: Uint8Array): readonly Readonly<{ words: string; ink: number }>[] {
  const here = mkdtempSync(join(folder, 'file-'));
  const file = join(here, 'page.pdf');
  writeFileSync(file, pdf);
  execFileSync('pdftotext', ['-layout', file, join(here, 'words')]);
  execFileSync('pdftoppm', ['-r', '20', '-gray', file, join(here, 'sheet')]);
  const pictures = readdirSync(here)
    .filter((name) => name.endsWith('.pgm'))
    .sort();
  const words = readFileSync(join(here, 'words'), 'utf8').split('\f');
  return pictures.map((name, i) => ({
    words: words[i] ?? '',
    ink: readFileSync(join(here, name))
      .subarray(20)
      .filter((grey) => grey < 200).length,
  }));
}
const plain = (text: string): string => text.replace(/[­​]/g, '').replace(/\s+/g, ' ').trim();

const all = [
  ...addressesUnder('/calculators/'),
  ...addressesUnder('/lessons/'),
  ...addressesUnder('/rules/').slice(0, 2),
];
/**
 * Printed are one of each template and one in ten, by the seed. tests/access looks at every page as laid out
 * for paper: what sticks out, what is lost, which controls stay.
 */
const addresses = oneOfEach(all, kindOfPage, 'paper');
const mostPages = 14;
/** Dark dots on a sheet at 20 dots an inch. One line of text is about 100. */
const leastInk = 30;

/** A calculator's address, then what an educator must find on the paper beside the answer. */
const givens: readonly (readonly [string, readonly string[]])[] = [
  [
    'find-a-recipe/?targetL=45&skinL=58&oldWork=grey-blue&bottles=2&white=5',
    [
      'Target L* 45.0',
      'Old pigment: grey-blue',
      'At most 6 drops from 2 bottles, 5 % white',
      'at most 5 L* darker and 30° in hue',
      'Doses 0.05, 0.1',
      'mostly yellow oxide, some red',
      mendedWords.why,
    ],
  ],
  [
    'mix-by-drops/?orange=2&lamp=A&oldWork=pink',
    ['2 × orange', 'Dose 0.3. Skin L* 63.0', 'Old pigment: pink', 'Seen under tungsten lamp'],
  ],
  [
    'strokes-and-dots/?count=80&length=7',
    ['strokes 80 ± 3', 'length of a stroke 7 ± 0.5 mm', 'area of the brow 287.6 ± 15 mm²'],
  ],
  ['strokes-and-dots/?made=dots&dots=6', ['dots in a square millimetre 6 ± 1']],
  [
    'skin-reading/?count=2&l2=64&touch=touched',
    ['Reading 2: L* 64.0, a* 10.6', 'wiping, drawing or numbing: no: wiped'],
  ],
  [
    'which-hue/?skin=l72&old=violet',
    ['Skin L* 72, a* 8, b* 16', 'Old pigment: violet, L* 53.3', mendedWords.why],
  ],
  [
    'why-it-healed-this-way/?second=two-years&secondL=57&error=1.5',
    [
      'at two years L* 57.0',
      'each within 1.5',
      'Skin before the work L* 63.0',
      '3 × brown, yellow-heavy',
      'doses looked at 0.1 to 0.8',
    ],
  ],
];

/** Each is printed by one of the two browsers, by turns of the seed. */
const mine = <T>(list: readonly T[], name: BrowserName) =>
  partOf(list, browserNames.indexOf(name), browserNames.length);

withBrowsers(
  'on paper',
  ({ name, open, site }) => {
    // Firefox draws bold letters, ligatures and tabular figures as shapes without letters behind them: only
    // part can be read there.
    const isRead = (words: string, line: string) =>
      name === 'chromium'
        ? words.includes(line)
        : new RegExp(line.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/f[fi]+|\d/g, '.{1,3}')).test(words);

    test.each(mine(addresses, name))(
      `[library] %s prints whole, without controls, no page empty${bySeed}`,
      async (address) => {
        const { page, faults } = await open();
        await page.goto(site().origin + address, { waitUntil: 'load' });
        if (await page.$('astro-island')) await wake(page, 'astro-island > *');
        await settle(page);
        const title = await wordsOf(page, 'h1');
        const parts = name === 'chromium' ? 'main h2, main .says b, main p' : 'main .prose > p';
        const lines = await page.$$eval(parts, (parts) =>
          parts
            .filter((part) => !part.closest('.no-print, nav, details:not([open])') && part.checkVisibility())
            .map((part) => part.textContent ?? ''),
        );
        const printed = sheetsOf(await page.pdf({ format: 'A4', printBackground: true }));
        const words = plain(printed.map((sheet) => sheet.words).join(' '));
        if (name === 'chromium') expect(words).toContain(plain(title));
        expect(words.length).toBeGreaterThan(300);
        expect(printed.length).toBeLessThanOrEqual(mostPages);
        expect(
          printed
            .map(({ ink }, i) => (ink < leastInk ? `sheet ${i + 1} of ${printed.length}` : ''))
            .filter(Boolean),
          'no sheet is empty',
        ).toEqual([]);
        // The first words of each part are there: nothing is cut away.
        const lost = lines.map(plain).filter((line) => line.length > 12 && !isRead(words, line.slice(0, 16)));
        if (name === 'chromium') expect(lost).toEqual([]);
        else expect(lost.length).toBeLessThanOrEqual(lines.length / 3);
        for (const control of [
          'Copy link',
          'Reset the marks',
          'Reset the numbers',
          'Skip to the page',
          'Search lessons',
        ])
          expect(words).not.toContain(control);
        expect(faults).toEqual([]);
        await page.close();
      },
    );

    test.each(mine(givens, name))(
      `[hand] %s says on its first sheet what was asked${bySeed}`,
      async (address, lines) => {
        const { page, faults } = await open();
        await page.goto(`${site().origin}/calculators/${address}`, {
          waitUntil: 'load',
        });
        await wake(page, 'astro-island > *');
        await page.waitForFunction(
          (line) => document.querySelector('.fig > .on-paper')?.textContent?.includes(line),
          { timeout: 20_000 },
          lines[0] ?? '',
        );
        // A figure higher than the sheet would leave the first one with its title alone.
        const [first] = sheetsOf(await page.pdf({ format: 'A4', printBackground: true }));
        for (const line of lines) expect(isRead(plain(first?.words ?? ''), line), line).toBe(true);
        expect(faults).toEqual([]);
        await page.close();
      },
    );
  },
  browserNames,
);
