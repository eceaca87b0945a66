import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe } from 'vitest';
import { startSite } from '#tests/tools/builtSite.ts';
import {
  browserNames,
  openBrowser,
  openPage,
  type BrowserName,
  type WatchedPage,
} from '#tests/tools/openBrowser.ts';
import { bySeed, isWhole, oneOf } from '#tests/tools/share.ts';

type Site = Awaited<ReturnType<typeof startSite>>;
export type Journey = Readonly<{
  name: BrowserName;
  open: (width?: number, height?: number) => Promise<WatchedPage>;
  site: () => Site;
  /** For a journey that needs tabs of its own, or a site that changes. */
  browser: () => Browser;
}>;

/**
 * Runs journeys in the named browsers, against a server of their own. With none named a run takes one of the
 * two, by the seed; `npm run deep -- pages` takes both.
 */
export function withBrowsers(
  title: string,
  journeys: (journey: Journey) => void,
  named?: readonly BrowserName[],
): void {
  const one = oneOf(browserNames, `browser of ${title}`);
  const names = named ?? (isWhole || !one ? browserNames : [one]);
  describe.each(names)(`${title}, %s${named ? '' : bySeed}`, (name) => {
    let browser: Browser;
    let site: Site;
    beforeAll(async () => {
      [browser, site] = await Promise.all([openBrowser(name), startSite()]);
    });
    afterAll(async () => {
      await browser?.close();
      await site?.close();
    });
    journeys({
      name,
      site: () => site,
      browser: () => browser,
      open: (width, height) => openPage(browser, site.origin, width, height),
    });
  });
}

/**
 * How far off a moved mark may be, mm. Firefox takes whole screen pixels only: a pointer can be half a pixel
 * off.
 */
export const slackMm = (name: BrowserName, way: string): number =>
  name === 'firefox' && (way === 'drag' || way === 'tap') ? 0.21 : 1e-9;
