import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { addressesUnder, startSite } from '#tests/tools/builtSite.ts';
import { openBrowser, openPage } from '#tests/tools/openBrowser.ts';

const mostBytes = 110_000;
const mostScriptBytes = 20_000;
const mostRequests = 12;
const mostShift = 0.02;

let browser: Browser;
let site: Awaited<ReturnType<typeof startSite>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([openBrowser('chromium'), startSite()]);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

const lessons = addressesUnder('/lessons/').filter((address) => address.split('/').length === 5);

test('[hand] there are lessons to weigh', () => expect(lessons.length).toBeGreaterThan(0));

test.each(lessons)(
  '[hand] %s loads cold on a phone within the bytes and requests, and nothing jumps',
  async (address) => {
    const context = await browser.createBrowserContext();
    try {
      const { page, faults } = await openPage(
        Object.assign(browser, { newPage: () => context.newPage() }),
        site.origin,
        390,
        844,
      );
      const wire = await page.createCDPSession();
      await wire.send('Network.enable');
      await wire.send('Network.setBypassServiceWorker', { bypass: true });
      const requests: string[] = [];
      let bytes = 0;
      wire.on('Network.requestWillBeSent', ({ request }) => requests.push(request.url));
      let scriptBytes = 0;
      // Bodies as sent with gzip. Headers are taken off: over a real line they are packed once for all
      // requests.
      const heads = new Map<string, Readonly<{ type: string; headBytes: number }>>();
      wire.on('Network.responseReceived', ({ requestId, type, response }) =>
        heads.set(requestId, { type, headBytes: response.encodedDataLength }),
      );
      wire.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
        const head = heads.get(requestId);
        const body = Math.max(0, encodedDataLength - (head?.headBytes ?? 0));
        bytes += body;
        if (head?.type === 'Script') scriptBytes += body;
      });
      await page.evaluateOnNewDocument(() => {
        let shift = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            if ('value' in entry && 'hadRecentInput' in entry && !entry.hadRecentInput)
              shift += Number(entry.value);
          document.documentElement.dataset['shift'] = String(shift);
        }).observe({ type: 'layout-shift', buffered: true });
      });
      await page.goto(site.origin + address, { waitUntil: 'networkidle0' });
      const shift = await page.evaluate(() => Number(document.documentElement.dataset['shift'] ?? 0));
      const own = requests.filter((url) => !/\/(sw\.js|offline\.json)$/.test(url));
      expect.soft(own.length, own.join('\n')).toBeLessThanOrEqual(mostRequests);
      expect.soft(scriptBytes, 'bytes of script').toBeLessThanOrEqual(mostScriptBytes);
      expect.soft(bytes, 'bytes in all').toBeLessThanOrEqual(mostBytes);
      expect.soft(shift, 'layout shift').toBeLessThan(mostShift);
      expect(faults).toEqual([]);
    } finally {
      await context.close();
    }
  },
);
