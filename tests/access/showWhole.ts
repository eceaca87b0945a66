import type { Page } from '@playwright/test';

/** Scrolls down a page once, so every island that waits to be seen has started, and returns to its top. */
export async function showWhole(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += 600) {
      scrollTo(0, y);
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
    }
    scrollTo(0, 0);
  });
  await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0, undefined, { timeout: 10_000 });
}
