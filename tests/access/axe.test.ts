import { expect, test } from '@playwright/test';
import axe from 'axe-core';
import { builtAddresses } from '#tests/tools/builtSite.ts';
import { openFolds } from './openFolds.ts';
import { showWhole } from './showWhole.ts';

// One tab a page, axe put into it once; theme and width change inside it, or the run gets too long.

const widths = [1280, 390, 320] as const;
const themes = ['light', 'dark'] as const;

for (const address of builtAddresses) {
  test(`[library] axe finds nothing on ${address} in both themes at three widths`, async ({ page }) => {
    await page.goto(process.env['TAUTLINE_ORIGIN'] + address);
    await showWhole(page);
    // Nothing is shown only while a fold is closed: opened, a calculator holds all there is to look at.
    if (address.startsWith('/calculators/')) await openFolds(page);
    await page.evaluate(axe.source);
    const found = new Map<string, string[]>();
    for (const theme of themes) {
      await page.evaluate((name) => {
        document.documentElement.dataset['theme'] = name;
      }, theme);
      for (const width of widths) {
        await page.setViewportSize({ width, height: 900 });
        const violations = await page.evaluate(async () => {
          const results = await window.axe.run(document, {
            resultTypes: ['violations'],
            rules: { 'target-size': { enabled: true } },
          });
          return results.violations.flatMap(({ id, nodes }) =>
            nodes.map(
              ({ target, failureSummary }) =>
                `${id}: ${target.join(' ')} ${failureSummary?.split('\n')[1]?.trim() ?? ''}`,
            ),
          );
        });
        for (const says of violations) found.set(says, [...(found.get(says) ?? []), `${theme} ${width}`]);
      }
    }
    expect([...found].map(([says, where]) => `${says} (${where.join(', ')})`)).toEqual([]);
  });
}
