import type { Page } from 'puppeteer-core';
import { describe, expect, test } from 'vitest';
import { addressesUnder } from '#tests/tools/builtSite.ts';
import { barsOn, crossesOn, pagesOf, printedPage, type OnPaper } from '#tests/tools/paperLines.ts';
import { libraryVersion } from '#lib/version.ts';
import { follow, waitForWords, wake } from '../journeys/onPage.ts';
import { withBrowsers } from '../journeys/withBrowsers.ts';

const papers = [
  { paper: 'a4', format: 'A4', widthMm: 210, heightMm: 297 },
  { paper: 'letter', format: 'Letter', widthMm: 215.9, heightMm: 279.4 },
] as const;
type Format = (typeof papers)[number]['format'];
/**
 * How far a bar may be off, and how far a page: Firefox rounds paper to whole points, Chromium to whole
 * pixels of a screen.
 */
const barSlackMm = 0.1;
const pageSlackMm = 0.4;
const sheets = addressesUnder('/sheets/');

/** Opens a sheet and waits until its paper and its foot are what its address asks for. */
async function openSheet(page: Page, address: string, foot = ''): Promise<void> {
  await page.goto(address, { waitUntil: 'load' });
  await wake(page, '.sheet-desk');
  const paper = new URL(address).searchParams.get('paper') ?? 'a4';
  await page.waitForFunction(
    (name, words) => document.querySelector(`.sheets.${name} .sheet-foot`)?.textContent?.includes(words),
    {},
    paper,
    foot,
  );
}

/** As a reader prints: the browser may shrink what is too wide. */
const print = (page: Page, format: Format) => page.pdf({ format, printBackground: true });

/** How far each of the four distances on the two bars is from what it says, mm. */
function barFaults(
  pdf: Uint8Array,
  want: Readonly<Record<'across' | 'up', number>> = { across: 100, up: 100 },
): readonly string[] {
  const bars = barsOn(printedPage(pdf, 1));
  const missing = (['across', 'up'] as const)
    .filter((axis) => bars.filter((bar) => bar.axis === axis).length !== 1)
    .map((axis) => `not one bar ${axis}`);
  const off = bars.flatMap(({ axis, strokesMm }) =>
    strokesMm.flatMap((at, i) => {
      const wantedMm = (want[axis] * i) / 20;
      return Math.abs(at - wantedMm) <= barSlackMm
        ? []
        : [`${axis}: ${at.toFixed(2)} for ${wantedMm.toFixed(2)} mm`];
    }),
  );
  return [...missing, ...off];
}

/**
 * The marks of the link below, as they lie on a face seen from the front: x to the client's left, y down, mm.
 */
const marks: readonly OnPaper[] = [
  [-15, 17],
  [15.5, 18],
  [-14, 25],
  [14.4, 26.2],
  [-47, 33],
  [46.1, 35],
  [-46, 27],
  [46, 28.4],
  [-64, 20],
  [62.5, 21],
].map(([x = 0, up = 0]) => ({ x, y: -up }));
const keys = ['frontLower', 'frontTop', 'archTop', 'archLower', 'tail'].flatMap((mark) => [
  `${mark}R`,
  `${mark}L`,
]);
const marksQuery = keys.map((key, i) => `${key}=${marks[i]?.x}_${-(marks[i]?.y ?? 0)}`).join('&');

/**
 * Every wanted place that has no printed cross within 0.1 mm, once the leftmost of both lie on each other.
 */
function marksOff(crosses: readonly OnPaper[], wanted: readonly OnPaper[]): readonly string[] {
  const leftmost = (places: readonly OnPaper[]) =>
    places.reduce((one, other) => (other.x < one.x ? other : one));
  const [from, to] = [leftmost(wanted), leftmost(crosses)];
  return wanted.flatMap(({ x, y }) => {
    const place = { x: x - from.x + to.x, y: y - from.y + to.y };
    return crosses.some((cross) => Math.hypot(cross.x - place.x, cross.y - place.y) <= barSlackMm)
      ? []
      : [`nothing at ${x}, ${-y}`];
  });
}

withBrowsers('true size', ({ name, open, site }) => {
  describe.each(sheets)('%s', (address) => {
    test.each(papers)(
      '[library] on $format every bar is true to 0.1 mm both ways',
      async ({ paper, format, widthMm, heightMm }) => {
        const { page, faults } = await open();
        await openSheet(page, `${site().origin}${address}?paper=${paper}`);
        const pdf = await print(page, format);
        const first = printedPage(pdf, 1);
        expect(Math.abs(first.widthMm - widthMm), 'width of the paper').toBeLessThan(pageSlackMm);
        expect(Math.abs(first.heightMm - heightMm), 'height of the paper').toBeLessThan(pageSlackMm);
        expect(barFaults(pdf)).toEqual([]);
        expect(pagesOf(pdf).length, 'pages').toBe(await page.$$eval('.sheet', (all) => all.length));
        expect(faults).toEqual([]);
        await page.close();
      },
    );

    test('[library] a printer that is off is corrected by what a ruler read, both ways apart', async () => {
      const { page } = await open();
      await openSheet(page, `${site().origin}${address}?across=98&up=101`, 'for one printer');
      expect(barFaults(await print(page, 'A4'), { across: 100 / 0.98, up: 100 / 1.01 })).toEqual([]);
      await page.close();
    });

    test('[library] one thing wider than the page makes the same check fail, unless the sheet clips it', async () => {
      const { page } = await open();
      await openSheet(page, site().origin + address);
      await page.evaluate(() => {
        const wide = Object.assign(document.createElement('div'), { id: 'wide' });
        const look = new CSSStyleSheet();
        look.replaceSync('#wide{width:300mm;height:2mm;flex:none;background:#000}');
        document.adoptedStyleSheets.push(look);
        document.querySelector('.sheet')?.append(wide);
      });
      expect(barFaults(await print(page, 'A4')), 'clipped by the sheet').toEqual([]);
      await page.evaluate(() =>
        document.adoptedStyleSheets
          .at(-1)
          ?.insertRule('.sheet{overflow:visible!important;contain:none!important}'),
      );
      const bars = barsOn(printedPage(await print(page, 'A4'), 1));
      expect(bars.length, 'the bars are still found').toBe(2);
      for (const { axis, strokesMm } of bars)
        expect(strokesMm.at(-1), `the bar ${axis} has shrunk`).toBeLessThan(95);
      await page.close();
    });
  });

  test('[hand] the outline sheet prints all ten marks of its link where they lie on the face, and again turned over', async () => {
    const { page } = await open();
    await openSheet(page, `${site().origin}/sheets/outline/?${marksQuery}`);
    await page.waitForFunction(() => document.querySelector('.brow-marks')?.textContent?.includes('62.5'));
    // On the screen the drawing is fetched after the table has changed hands: both come from one state.
    const crosses = crossesOn(printedPage(await print(page, 'A4'), 1));
    expect(crosses.length).toBe(20);
    const above = crosses.toSorted((a, b) => a.y - b.y).slice(0, 10);
    expect(marksOff(above, marks)).toEqual([]);
    const below = crosses.filter((cross) => !above.includes(cross));
    expect(
      marksOff(
        below,
        marks.map(({ x, y }) => ({ x: Math.abs(x), y })),
      ),
    ).toEqual([]);
    await page.close();
  });

  test('[hand] the calculator of outlines leads to its sheet with the marks that stand on the page', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/calculators/outline-and-cover/?tailL=61.7_19.3&station=40`);
    await wake(page, '.calculator .says');
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#outline-station')?.value === '40',
    );
    await follow(page, '[data-true-size]');
    expect(new URL(page.url()).searchParams.get('tailL')).toBe('61.7_19.3');
    await wake(page, '.sheet-desk');
    await waitForWords(page, '.brow-marks', /61\.7/);
    // What judges the brows is left behind: a sheet that does not know it would call the link damaged.
    expect(await page.$('.sheet-desk .caution')).toBeNull();
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] on the outline sheet a correction moves every mark, both ways apart', async () => {
    const { page } = await open();
    await openSheet(
      page,
      `${site().origin}/sheets/outline/?${marksQuery}&across=96&up=104`,
      'for one printer',
    );
    const above = crossesOn(printedPage(await print(page, 'A4'), 1))
      .toSorted((a, b) => a.y - b.y)
      .slice(0, 10);
    expect(
      marksOff(
        above,
        marks.map(({ x, y }) => ({ x: x / 0.96, y: y / 1.04 })),
      ),
    ).toEqual([]);
    expect(marksOff(above, marks)).not.toEqual([]);
    await page.close();
  });

  test('[library] the foot says how to make the sheet again: face, level, version, page', async () => {
    const { page } = await open();
    await openSheet(page, `${site().origin}/sheets/mapping-practice/?seed=7&level=3`, 'Face 7');
    // Firefox draws figures as shapes without letters behind them.
    if (name === 'chromium') {
      const words = pagesOf(await print(page, 'A4'));
      words.forEach((printed, i) =>
        expect(printed.replace(/\s+/g, ' ')).toContain(
          `Face 7 · Nose leans · Tautline ${libraryVersion} Page ${i + 1} of ${words.length}`,
        ),
      );
    }
    await page.close();
  });
});
