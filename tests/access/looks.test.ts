import { expect } from '@playwright/test';
import { builtAddresses } from '#tests/tools/builtSite.ts';
import { kindOfPage } from '#tests/tools/pageKinds.ts';
import { bySeed, oneOfEach } from '#tests/tools/share.ts';
import { lookThrough } from './lookThrough.ts';
import { lost } from './lost.ts';
import { test } from './oneTab.ts';
import { openFolds } from './openFolds.ts';
import { markLines, offPaper, paperPx } from './paper.ts';
import { cutOff, moving, spaceText, stickingOut, tooSmall } from './shape.ts';
import { showWhole } from './showWhole.ts';

/**
 * One page of each template and one in ten of all are looked at in both themes at three widths by every rule.
 */
const whole = new Set(oneOfEach(builtAddresses, kindOfPage, 'axe'));

// One load of each page for all of this: loading takes longer than looking.
for (const address of builtAddresses) {
  const isWhole = whole.has(address);
  test(`[library] ${address}: axe finds nothing in both themes from 320 to 1280 px${isWhole ? `, every rule everywhere${bySeed}` : ''}; it keeps its shape, its controls and its drawings: 320 px, 200 % zoom, targets, text spacing, forced colours, paper, still when asked`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 320, height: 800 });
    await page.goto(process.env['TAUTLINE_ORIGIN'] + address);
    await showWhole(page);
    expect.soft(await page.evaluate(stickingOut), 'nothing sticks out at 320 px').toEqual([]);
    expect.soft(await page.evaluate(tooSmall), 'targets are at least 24 px at 320 px').toEqual([]);
    await page.setViewportSize({ width: 640, height: 450 });
    expect
      .soft(await page.evaluate(stickingOut), 'nothing sticks out at 200 % of a 1280 px window')
      .toEqual([]);
    await page.setViewportSize({ width: 1280, height: 900 });
    expect.soft(await page.evaluate(tooSmall), 'targets are at least 24 px at 1280 px').toEqual([]);
    expect.soft(await page.evaluate(moving), 'nothing moves with reduced motion').toEqual([]);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ forcedColors: 'active', colorScheme });
      expect.soft(await page.evaluate(lost), `nothing is lost in forced colours, ${colorScheme}`).toEqual([]);
    }
    await page.emulateMedia({ forcedColors: null, colorScheme: null });
    await page.evaluate(spaceText);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect
        .soft(await page.evaluate(cutOff), `no text is cut off with wide spacing at ${width} px`)
        .toEqual([]);
      expect
        .soft(await page.evaluate(stickingOut), `nothing sticks out with wide spacing at ${width} px`)
        .toEqual([]);
    }
    await page.evaluate(spaceText);
    // A sheet for paper is a page of its own size: it is measured on real paper.
    if (kindOfPage(address) !== 'sheets') {
      await page.setViewportSize(paperPx);
      await page.evaluate(markLines);
      await page.emulateMedia({ media: 'print' });
      expect
        .soft(
          await page.evaluate(stickingOut),
          'nothing sticks out on paper: the browser would shrink the page',
        )
        .toEqual([]);
      expect.soft(await page.evaluate(offPaper), 'paper holds the words and no control').toEqual([]);
      await page.emulateMedia({ media: null });
    }
    // Nothing is shown only while a fold is closed: opened, a calculator holds all there is to look at.
    if (address.startsWith('/calculators/')) await openFolds(page);
    expect(await lookThrough(page, isWhole)).toEqual([]);
  });
}
