import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { builtAddresses } from '#tests/tools/builtSite.ts';
import { showWhole } from './showWhole.ts';

// One tab a page: theme and width change inside it, or the run gets too long.

const widths = [1280, 390, 320] as const;
const themes = ['light', 'dark'] as const;

for (const address of builtAddresses) {
  test(`[library] axe finds nothing on ${address} in both themes at three widths`, async ({ page }) => {
    await page.goto(process.env['TAUTLINE_ORIGIN'] + address);
    await showWhole(page);
    const found = new Map<string, string[]>();
    for (const theme of themes) {
      await page.evaluate((name) => { document.documentElement.dataset['theme'] = name; }, theme);
      for (const width of widths) {
        await page.setViewportSize({ width, height: 900 });
        const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } }).analyze();
        for (const { id, nodes } of violations) {
          for (const { target, failureSummary } of nodes) {
            const says = `${id}: ${target.join(' ')} ${failureSummary?.split('\n')[1]?.trim() ?? ''}`;
            found.set(says, [...(found.get(says) ?? []), `${theme} ${width}`]);
          }
        }
      }
    }
    expect([...found].map(([says, where]) => `${says} (${where.join(', ')})`)).toEqual([]);
  });
}
