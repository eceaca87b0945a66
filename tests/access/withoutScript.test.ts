import { expect } from '@playwright/test';
import { addressesUnder, builtAddresses } from '#tests/tools/builtSite.ts';
import { kindOfPage } from '#tests/tools/pageKinds.ts';
import { bySeed, oneOfEach } from '#tests/tools/share.ts';
import { test } from './oneTab.ts';

test.use({ scripts: false });

const withFigure = new Set([...addressesUnder('/calculators/'), ...addressesUnder('/lessons/')]);
/**
 * Pages without a figure hold words alone: tests/site/withoutScript reads all of them from their files, a
 * browser opens some of each kind.
 */
const opened = new Set([...withFigure, ...oneOfEach(builtAddresses, kindOfPage, 'without scripts')]);

for (const address of builtAddresses.filter((each) => opened.has(each))) {
  test(`[hand] ${address} can be read without scripts${withFigure.has(address) ? ', with its default answer and drawing' : bySeed}`, async ({
    page,
  }) => {
    await page.goto(process.env['TAUTLINE_ORIGIN'] + address);
    await expect(page.locator('h1')).toBeVisible();
    expect((await page.locator('main').innerText()).length).toBeGreaterThan(20);
    for (const control of await page.locator('.needs-js').all()) await expect(control).toBeHidden();
    if (!withFigure.has(address)) return;
    const sentence = page.locator('main .says, main [role=status], main [aria-live]').first();
    await expect(sentence).toBeVisible();
    expect((await sentence.innerText()).trim()).toMatch(/\S.*\d.*\.|\S+ \S+ \S+.*\./s);
    // Paper, still picture and marks may be drawings of their own, one over the other: the figure is counted,
    // its buttons' icons are not.
    const figure = page.locator('main figure, main .fig').first();
    await expect(figure.locator('svg:not(.icon)').first()).toBeVisible();
    expect(
      await figure
        .locator('svg:not(.icon)')
        .locator('path, line, circle, polyline, polygon, ellipse, rect[fill^="#"]')
        .count(),
    ).toBeGreaterThan(5);
  });
}
