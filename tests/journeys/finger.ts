import type { CDPSession, Page } from 'puppeteer-core';

/** A place on the screen, pixels. */
export type Spot = Readonly<{ x: number; y: number }>;

export const scrolled = (page: Page) => page.evaluate(() => scrollY);
export const said = (page: Page) => page.$eval('.pull .hint', (hint) => hint.textContent ?? '');
/** Where every mark lies on the screen. */
export const spots = (page: Page): Promise<Readonly<Record<string, Spot>>> =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll('.stage .grip')].map((grip) => {
        const { left, top, width, height } = grip.getBoundingClientRect();
        return [grip.getAttribute('data-mark') ?? '', { x: left + width / 2, y: top + height / 2 }];
      }),
    ),
  );
/** What every mark says of itself, in millimetres: the page may scroll under it. */
export const marksAt = (page: Page) =>
  page.$$eval('.stage .grip', (grips) =>
    grips.map((grip) => ['data-mark', 'cx', 'cy'].map((name) => grip.getAttribute(name)).join(' ')),
  );
export const frame = (page: Page) =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done))));

/** A finger that goes down, moves in so many steps and is lifted, or is taken away by the device. */
export async function swipe(
  finger: CDPSession,
  from: Spot,
  to: Spot,
  { steps = 8, end = 'touchEnd' }: { steps?: number; end?: 'touchEnd' | 'touchCancel' } = {},
) {
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', spots: Spot[]) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: spots });
  await send('touchStart', [from]);
  for (let i = 1; i <= steps; i++)
    await send('touchMove', [
      { x: from.x + ((to.x - from.x) * i) / steps, y: from.y + ((to.y - from.y) * i) / steps },
    ]);
  await send(end, []);
}
export const tap = (finger: CDPSession, at: Spot) => swipe(finger, at, at, { steps: 0 });

export const press = (page: Page, label: string) =>
  page.$$eval(
    '.pull button',
    (buttons, words) =>
      [...buttons]
        .find((button) => button instanceof HTMLElement && button.innerText.trim() === words)
        ?.click(),
    label,
  );
