import type { Page } from '@playwright/test';

/**
 * Scrolls down a page with islands once, so every island that waits to be seen has started, and returns to
 * its top.
 * Waits for the faces of its letters and for what comes a moment later.
 */
export async function showWhole(page: Page): Promise<void> {
  await page.evaluate(async () => {
    if (!document.querySelector('astro-island')) return;
    for (let y = 0; y < document.documentElement.scrollHeight; y += 600) {
      scrollTo(0, y);
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
    }
    scrollTo(0, 0);
  });
  await page.waitForFunction(
    () => document.querySelectorAll('astro-island[ssr], .own-room:empty').length === 0,
  );
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}
