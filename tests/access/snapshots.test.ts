import { expect } from '@playwright/test';
import { addressesUnder } from '#tests/tools/builtSite.ts';
import { test } from './oneTab.ts';
import { showWhole } from './showWhole.ts';

for (const address of addressesUnder('/calculators/')) {
  test(`[hand] ${address} says to a screen reader what was read and agreed`, async ({ page }) => {
    await page.goto(process.env['TAUTLINE_ORIGIN'] + address);
    await showWhole(page);
    await expect(page.locator('main')).toMatchAriaSnapshot({
      name: `${address.split('/').filter(Boolean).join('-')}.aria.yml`,
    });
  });
}
