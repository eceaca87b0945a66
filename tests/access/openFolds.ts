import type { Page } from '@playwright/test';

/** Opens every fold of a page and waits until what is fetched for them stands there. */
export async function openFolds(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelectorAll('.own-room:empty').length === 0, undefined, {
    timeout: 10_000,
  });
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
  });
  await page.waitForFunction(
    () =>
      [...document.querySelectorAll('main details')].every(
        (fold) => fold instanceof HTMLDetailsElement && fold.open && fold.childElementCount > 1,
      ),
    undefined,
    { timeout: 10_000 },
  );
}
