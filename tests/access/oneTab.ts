import { type Page, test as base } from '@playwright/test';

/**
 * Tests of one worker share a tab: opening one takes as long as looking at a page. Before each test it
 * forgets what pages kept and takes off what a test made it wear.
 */
export const test = base.extend<{ page: Page }, { scripts: boolean; tab: Page }>({
  scripts: [true, { scope: 'worker', option: true }],
  tab: [
    async ({ browser, scripts }, use) => {
      // The worker that keeps the site on the device would fetch all of it for every page: it has its own
      // journey.
      const context = await browser.newContext({
        locale: 'en-GB',
        serviceWorkers: 'block',
        javaScriptEnabled: scripts,
      });
      await use(await context.newPage());
      await context.close();
    },
    { scope: 'worker' },
  ],
  page: async ({ tab }, use) => {
    const session = await tab.context().newCDPSession(tab);
    await session.send('Storage.clearDataForOrigin', {
      origin: process.env['TAUTLINE_ORIGIN'] ?? '',
      storageTypes: 'local_storage,indexeddb,cookies',
    });
    await session.detach();
    await tab.emulateMedia({ media: null, colorScheme: null, forcedColors: null, reducedMotion: null });
    await tab.setViewportSize({ width: 1280, height: 720 });
    await use(tab);
  },
});
