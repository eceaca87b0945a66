import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Color from 'colorjs.io';
import type { Page } from 'puppeteer-core';
import { afterAll, expect, test } from 'vitest';
import { type Colour, drawnPng } from '#tests/tools/drawnPng.ts';
import { retype, wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const folder = mkdtempSync(join(tmpdir(), 'photo-'));
afterAll(() => rmSync(folder, { recursive: true }));

const desk = '.calculator.photo';
const says = `${desk} .says`;
const skin = { l: 58, a: 11, b: 18 };
/** A yellow, dim lamp: each channel of the light times so much. */
const lamp = [0.95, 0.85, 0.75] as const;
const coded = (linear: number) =>
  Math.round(255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055));
const lit = (linear: readonly number[], times: number): Colour => [
  coded((linear[0] ?? 0) * lamp[0] * times),
  coded((linear[1] ?? 0) * lamp[1] * times),
  coded((linear[2] ?? 0) * lamp[2] * times),
];
const skinLinear = new Color('lab-d65', [skin.l, skin.a, skin.b]).to('srgb-linear').coords.map(Number);

/**
 * 400 by 300: left a card of 18 %, right skin with a burnt-out spot in its corner. `falls`: how much of the
 * light is lost from left to right.
 */
const picture = (falls: number) =>
  drawnPng(400, 300, (x, y) => {
    const times = 1 - (falls * x) / 400;
    if (x >= 360 && y < 60) return [255, 255, 255];
    return x < 200 ? lit([0.18, 0.18, 0.18], times) : lit(skinLinear, times);
  });

async function choose(page: Page, name: string, content: Buffer | string): Promise<void> {
  const file = join(folder, name);
  writeFileSync(file, content);
  const box = await page.waitForSelector('[data-photo] input[type=file]');
  if (!box) throw new Error('The page has no box for pictures.');
  await (await box.toElement('input')).uploadFile(file);
}

async function tap(page: Page, across: number, down: number): Promise<void> {
  const box = await page.$eval(`${desk} .photo-stage svg`, async (stage) => {
    await document.fonts.ready;
    stage.scrollIntoView({ block: 'center', behavior: 'instant' });
    const { left, top, width, height } = stage.getBoundingClientRect();
    return { left, top, width, height };
  });
  await page.mouse.click(box.left + across * box.width, box.top + down * box.height);
}

const numbersOf = (sentence: string) =>
  /L\* ([\d.]+), a\* ([\d.]+), b\* ([\d.]+)\./.exec(sentence)?.slice(1).map(Number) ?? [];

withBrowsers('a photo with a grey card', ({ open, site }) => {
  test('[library] the skin of a drawn picture is read through a yellow lamp: by taps, by arrow keys, by typing; nothing is fetched before, nothing sent', async () => {
    const { page, faults } = await open(390, 844);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(`${request.method()} ${request.url()}`));
    await page.goto(`${site().origin}/calculators/skin-reading/`, { waitUntil: 'networkidle0' });
    expect(
      asked.filter(
        (line) => /showPhoto|photo/i.test(line.replace(/startPhoto/, '')) && !/PhotoReading/.test(line),
      ),
    ).toEqual([]);
    await choose(page, 'skin.png', picture(0));
    expect(await waitForWords(page, says, /./)).toMatch(
      /point at the grey card.*Without a grey card no colour of skin is read/,
    );

    await tap(page, 0.3, 0.5);
    await waitForWords(page, says, /point at the skin/);
    await tap(page, 0.7, 0.5);
    const [l = 0, a = 0, b = 0] = numbersOf(await waitForWords(page, says, /By the card/));
    // Whole steps of card and skin: half a step each.
    expect(Math.abs(l - skin.l), `L* ${l}`).toBeLessThan(0.6);
    expect(Math.abs(a - skin.a), `a* ${a}`).toBeLessThan(1);
    expect(Math.abs(b - skin.b), `b* ${b}`).toBeLessThan(1);
    expect(await wordsOf(page, says)).toMatch(/Hue angle .*typology angle .*lies between/i);
    expect(await page.$('.photo .says-caution'), 'even light').toBeNull();

    // By keys: from the middle of the skin to the burnt-out corner and back.
    await page.evaluate(() => document.querySelector<SVGElement>('.photo-square.skin')?.focus());
    await page.keyboard.down('Shift');
    for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowUp');
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.up('Shift');
    await waitForWords(page, says, /Refused.*the skin is too bright or too dark/);
    await page.waitForFunction(() =>
      /^Skin beside the brow: 9[45]\.\d % across, (9|10)\.\d % down\. Arrow keys move it\.$/.test(
        document.querySelector('.photo-square.skin')?.getAttribute('aria-label') ?? '',
      ),
    );

    // By typing: the skin again, the card on skin, a place that is none.
    await retype(page, '#photo-skin-y', '70,5');
    await waitForWords(page, says, /By the card/);
    await retype(page, '#photo-card-x', '60');
    await waitForWords(page, says, /not grey enough/);
    await retype(page, '#photo-card-x', '120');
    await waitForWords(page, `${desk} .field-error`, /between 0 and 100/);
    await retype(page, '#photo-card-x', '20');
    // The same squares, the same numbers.
    await waitForWords(
      page,
      says,
      new RegExp(`L\\* ${l.toFixed(1)}, a\\* ${a.toFixed(1)}, b\\* ${b.toFixed(1)}\\.`),
    );
    // Y of the skin times 36/18.
    await retype(page, '#photo-reflects', '36');
    await page.waitForFunction(
      (part, wanted) =>
        Math.abs(
          Number(/L\* ([\d.]+),/.exec(document.querySelector(part)?.textContent ?? '')?.[1]) - wanted,
        ) < 0.8,
      {},
      says,
      (skin.l + 16) * Math.cbrt(2) - 16,
    );

    await choose(page, 'uneven.png', picture(0.5));
    await waitForWords(page, says, /point at the grey card/);
    await tap(page, 0.2, 0.5);
    await waitForWords(page, says, /point at the skin/);
    await tap(page, 0.7, 0.5);
    expect(await waitForWords(page, says, /uneven/)).toMatch(/falls across the card.*L\* too dark/);
    expect(asked.filter((line) => !line.startsWith('GET '))).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a file that is no picture, an empty, a tiny and a huge one are answered at the field, and what is shown stays', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/calculators/skin-reading/`);
    await wake(page, '.calculator .says');
    await choose(page, 'skin.png', picture(0));
    await page.waitForSelector(desk);
    for (const [name, content, sentence] of [
      ['words.png', '<svg onload=alert(1)>', /not a picture/],
      ['head.jpg', Buffer.from('ffd8ffe000104a46494600', 'hex'), /not a picture/],
      ['empty.jpg', '', /empty/],
      ['tiny.png', drawnPng(39, 60, () => [90, 90, 90]), /at least 40 dots/],
      ['huge.jpg', Buffer.alloc(40_000_001), /larger than 40 MB/],
    ] as const) {
      await choose(page, name, content);
      await waitForWords(page, '#photo-error', sentence);
    }
    expect(await page.$$(desk)).toHaveLength(1);
    await choose(page, 'again.png', picture(0));
    await page.waitForFunction(() => document.querySelector('#photo-error')?.textContent === '');
    expect(faults).toEqual([]);
    await page.close();
  });
});
