import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { drawFrom, drawWhole, seedFrom } from '#lib/quantities/seed.ts';
import type { calculators } from '#calculators/index.ts';
import { filesUnder } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';
import { bySeed, isWhole, partOf, seed } from '#tests/tools/share.ts';
import { gripKeys } from './movable.ts';
import { frame, marksAt, press, said, scrolled, spots, swipe, tap, type Spot } from './finger.ts';
import { standStill, wake } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

/** A page with marks, and the ways each can go. */
type Stage = Readonly<{ address: string; free: (key: string) => 'both' | 'across' | 'up' }>;

const calculatorStage = (id: keyof typeof calculators, free: Stage['free'] = () => 'both'): Stage => ({
  address: `/calculators/${id}/`,
  free,
});
const stages: readonly Stage[] = [
  calculatorStage('midline-and-sides'),
  calculatorStage('outline-and-cover'),
  calculatorStage('front-and-tail'),
  calculatorStage('cover-the-old-shape'),
  calculatorStage('arch-placement', () => 'across'),
  calculatorStage('hair-and-bone', (key) => (key.startsWith('bone') ? 'up' : 'across')),
  calculatorStage('two-readings', () => 'up'),
  calculatorStage('level-line', () => 'up'),
  { address: '/practice/place-the-midline/', free: () => 'across' },
];

/** By how much a finger goes, screen pixels: a second's pull, well past what counts as a tap. */
const pull = 34;
const ways: Readonly<Record<string, Spot>> = {
  up: { x: 0, y: -1 },
  down: { x: 0, y: 1 },
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  diagonal: { x: 0.7, y: 0.7 },
};
const wayNames = Object.keys(ways);
/** How near a mark keeps to the finger, screen pixels. */
const slackPx = 2;

withBrowsers(
  'touch',
  ({ open, site }) => {
    const openTouched = async (address: string) => {
      const { page, faults } = await open();
      await page.setViewport({ width: 390, height: 844, isMobile: true, hasTouch: true });
      await page.goto(site().origin + address);
      await wake(page, '.stage');
      await page.waitForSelector('.stage .grip');
      return { page, faults, finger: await page.createCDPSession() };
    };

    /** Brings the picture to the middle of the screen. */
    const centre = async (page: Page) => {
      await page.evaluate(() => {
        const box = document.querySelector('.stage')?.getBoundingClientRect();
        scrollBy({ top: (box?.top ?? 0) + (box?.height ?? 0) / 2 - innerHeight / 2, behavior: 'instant' });
      });
      await standStill(page);
    };

    /** Pulls a mark one way, holds it against the finger, and takes the move back. True where a limit stopped it. */
    async function follow(
      page: Page,
      finger: CDPSession,
      key: string,
      way: string,
      { address, free }: Stage,
    ) {
      const what = `${address} ${key} ${way}`;
      const [before, top] = [await spots(page), await scrolled(page)];
      const from = before[key];
      if (!from) throw new Error(`${what}: it is not in the picture.`);
      const to = { x: from.x + (ways[way]?.x ?? 0) * pull, y: from.y + (ways[way]?.y ?? 0) * pull };
      await swipe(finger, from, to);
      let offPx = Infinity;
      let isStopped = false;
      for (
        const end = performance.now() + 20_000;
        offPx > slackPx && !isStopped && performance.now() < end;
      ) {
        await frame(page);
        const { x, y } = (await spots(page))[key] ?? from;
        offPx = Math.max(
          free(key) === 'up' ? 0 : Math.abs(x - to.x),
          free(key) === 'across' ? 0 : Math.abs(y - to.y),
        );
        isStopped = / between .* and /.test(await said(page));
      }
      expect(isStopped ? 0 : offPx, `${what}: off the finger, px`).toBeLessThanOrEqual(slackPx);
      expect(await scrolled(page), `${what}: the page stays`).toBe(top);
      await press(page, 'Undo');
      await frame(page);
      expect(await spots(page), `${what}: taken back`).toEqual(before);
      return isStopped;
    }

    /** A place of the picture away from every mark, or on the strip at its edge beside one. */
    async function freePlace(page: Page, draw: ReturnType<typeof drawFrom>, onStrip = false): Promise<Spot> {
      const taken = Object.values(await spots(page));
      const { left, right, top, bottom } = await page.$eval('.stage', (stage) =>
        stage.getBoundingClientRect().toJSON(),
      );
      const [lo, hi] = [Math.max(top, 120), Math.min(bottom, 700)];
      if (onStrip) return { x: right - 12, y: taken.find(({ y }) => y > lo && y < hi)?.y ?? (lo + hi) / 2 };
      for (;;) {
        const spot = { x: drawWhole(draw, left + 2, right - 2), y: drawWhole(draw, lo, hi) };
        if (taken.every(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) > 24)) return spot;
      }
    }

    test.each(partOf(stages, 0, 4))(
      `[hand] $address: every mark follows a finger in every direction while the page stays${bySeed}`,
      async (stage) => {
        const { page, faults, finger } = await openTouched(stage.address);
        await centre(page);
        const draw = drawFrom(seedFrom(seed, `touch ${stage.address}`));
        const keys = await gripKeys(page);
        const all = await spots(page);
        const topmost = [...keys].sort((a, b) => (all[a]?.y ?? 0) - (all[b]?.y ?? 0))[0] ?? '';
        const pulls: Readonly<{ key: string; way: string; slowed: number }>[] = [
          ...keys.flatMap((key) =>
            (isWhole ? wayNames : [wayNames[drawWhole(draw, 0, wayNames.length - 1)] ?? '']).map((way) => ({
              key,
              way,
              slowed: 1,
            })),
          ),
          ...wayNames.flatMap((way) =>
            (isWhole ? [1, 4] : [drawWhole(draw, 0, 1) === 0 ? 1 : 4]).map((slowed) => ({
              key: topmost,
              way,
              slowed,
            })),
          ),
        ].sort((a, b) => a.slowed - b.slowed);
        let [stopped, rate] = [0, 1];
        for (const { key, way, slowed } of pulls) {
          if (slowed !== rate) await page.emulateCPUThrottling((rate = slowed));
          stopped += Number(await follow(page, finger, key, way, stage));
        }
        expect(stopped, 'pulls that ended at a limit').toBeLessThan(pulls.length);
        expect(faults).toEqual([]);
        await page.close();
      },
    );

    test.each(partOf(stages, 1, 4))(
      `[hand] $address: a swipe beside the marks scrolls and moves none, also after one was tapped; a tap places; a drag that is broken off moves nothing${bySeed}`,
      async ({ address, free }) => {
        const { page, faults, finger } = await openTouched(address);
        await centre(page);
        const draw = drawFrom(seedFrom(seed, `swipes ${address}`));
        const [key = ''] = await gripKeys(page);
        const pinned = async () => (await spots(page))[key] ?? { x: 0, y: 0 };
        let scrolls = 0;
        const swipes = isWhole ? 20 : 4;
        for (const isTapped of [false, true]) {
          if (isTapped) await tap(finger, await pinned());
          for (let i = 0; i < swipes; i++) {
            const from = await freePlace(page, draw, i === 0);
            const [before, top] = [await marksAt(page), await scrolled(page)];
            const by = i % 2 === 0 ? -90 : 90;
            await swipe(finger, from, { x: from.x + 12, y: from.y + by });
            await frame(page);
            expect(await marksAt(page), `${address}: a swipe from ${from.x}, ${from.y}`).toEqual(before);
            if ((await scrolled(page)) !== top) scrolls++;
            await centre(page);
          }
        }
        expect(scrolls, 'swipes that scrolled').toBeGreaterThan(swipes);

        // The mark that was tapped goes where the finger taps next.
        const before = await pinned();
        const to =
          free(key) === 'both'
            ? await freePlace(page, draw)
            : {
                x: before.x + (free(key) === 'up' ? 0 : 12),
                y: before.y + (free(key) === 'across' ? 0 : -12),
              };
        await tap(finger, to);
        await expect
          .poll(
            async () => {
              const { x, y } = await pinned();
              // Its own limits may end short of the picture's; then it says so.
              return / between .* and /.test(await said(page)) ? 0 : Math.hypot(x - to.x, y - to.y);
            },
            { timeout: 20_000, message: `${address}: from ${before.x}, ${before.y} to ${to.x}, ${to.y}` },
          )
          .toBeLessThan(free(key) === 'both' ? slackPx : 6);

        const settled = await marksAt(page);
        const from = await pinned();
        await swipe(finger, from, { x: from.x - 30, y: from.y - 30 }, { end: 'touchCancel' });
        await frame(page);
        expect(await marksAt(page), 'a drag that was broken off').toEqual(settled);
        expect(faults).toEqual([]);
        await page.close();
      },
    );

    test('[hand] every page with marks to move is in this list', () => {
      const moved = filesUnder(builtFolder).filter(
        (file) =>
          /^(calculators|practice)\/.*\.html$/.test(file) &&
          /class="[^"]*\bgrip\b/.test(readFileSync(join(builtFolder, file), 'utf8')),
      );
      expect(moved).toEqual(stages.map(({ address }) => `${address.slice(1)}index.html`).sort());
    });

    test('[hand] a shape in a drawing that only says how it wants to be touched is not followed: the browser scrolls', async () => {
      const { page, finger } = await openTouched('/calculators/level-line/');
      await page.evaluate(() => {
        const drawing = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
        drawing.innerHTML = '<circle cx="60" cy="60" r="40" />';
        document.querySelector('.calculator')?.prepend(drawing);
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(
          '#bare{display:block;touch-action:pan-y pinch-zoom}#bare circle{touch-action:none}',
        );
        document.adoptedStyleSheets.push(sheet);
        drawing.id = 'bare';
        drawing.scrollIntoView({ block: 'center', behavior: 'instant' });
        const heard: string[] = [];
        for (const name of ['pointermove', 'pointercancel'] as const)
          drawing.addEventListener(name, () => heard.push(name));
        Object.assign(window, { heard });
      });
      const spot = await page.$eval('#bare circle', (circle) => {
        const { left, top, width, height } = circle.getBoundingClientRect();
        return { x: left + width / 2, y: top + height / 2, style: getComputedStyle(circle).touchAction };
      });
      expect(spot.style).toBe('none');
      const top = await scrolled(page);
      await swipe(finger, spot, { x: spot.x, y: spot.y - 60 });
      await page.waitForFunction((before) => scrollY !== before, {}, top);
      expect(await page.evaluate(() => Reflect.get(window, 'heard'))).toContain('pointercancel');
      await page.close();
    });
  },
  ['chromium'],
);
