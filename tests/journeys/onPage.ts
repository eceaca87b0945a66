import type { Page } from 'puppeteer-core';

/** Brings a part of the page into view and waits until its island has started and has read the address. */
export async function wake(page: Page, selector: string): Promise<void> {
  await page.waitForSelector(selector);
  await page.evaluate(
    (target) => document.querySelector(target)?.scrollIntoView({ block: 'center' }),
    selector,
  );
  await page.waitForFunction(
    (target) => !document.querySelector(target)?.closest('astro-island[ssr]'),
    {},
    selector,
  );
  // Preact runs first effects a task after the next frame, or after 0.1 s where no frame comes; what they set
  // is drawn before the next task.
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const later = () => setTimeout(() => done());
        requestAnimationFrame(later);
        setTimeout(later, 250);
      }),
  );
}

/**
 * Waits until every island that is in view has started: a page that is left earlier gives up scripts that are
 * on their way, and Firefox calls that a fault.
 */
export const settle = async (page: Page): Promise<void> => {
  await page.waitForFunction(() =>
    [...document.querySelectorAll('astro-island[ssr]')].every((island) =>
      [...island.children].every((part) => {
        const { top, bottom, height } = part.getBoundingClientRect();
        return height === 0 || bottom <= 0 || top >= innerHeight;
      }),
    ),
  );
};

/** The visible words of the first match. */
export const wordsOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (element) =>
    (element instanceof HTMLElement ? element.innerText : (element.textContent ?? ''))
      .replace(/\s+/g, ' ')
      .trim(),
  );

/** Replaces what stands in a text box by typing. */
export async function retype(page: Page, selector: string, text: string): Promise<void> {
  const box = await page.waitForSelector(selector);
  await box?.click({ count: 3 });
  await page.keyboard.press('Backspace');
  await page.evaluate((target) => {
    const input = document.querySelector<HTMLInputElement>(target);
    if (input && input.value !== '') input.setSelectionRange(0, input.value.length);
  }, selector);
  await page.keyboard.type(text);
}

/** Presses the button with these words inside a part of the page. */
export async function press(page: Page, within: string, words: string): Promise<void> {
  const isPressed = await page.evaluate(
    (part, label) => {
      const button = [...document.querySelectorAll<HTMLElement>(`${part} button`)].find(
        (each) => each.innerText.trim() === label && each.checkVisibility(),
      );
      button?.click();
      return button !== undefined;
    },
    within,
    words,
  );
  if (!isPressed) throw new Error(`There is no button “${words}” in ${within}.`);
}

/** Waits until the words of a part of the page match. */
export async function waitForWords(page: Page, selector: string, pattern: RegExp): Promise<string> {
  await page.waitForFunction(
    (target, source) => new RegExp(source).test(document.querySelector(target)?.textContent ?? ''),
    {},
    selector,
    pattern.source,
  );
  return wordsOf(page, selector);
}

/** Follows a link and waits for its page. */
export async function follow(page: Page, selector: string): Promise<void> {
  await page.waitForSelector(selector);
  const arrived = page.waitForNavigation({ waitUntil: 'load' });
  await page.$eval(selector, (link) => (link instanceof HTMLElement ? link.click() : undefined));
  await arrived;
}

/** Scrolls a part of the page to the top once its faces have arrived. */
export const bringToTop = (page: Page, selector: string): Promise<void> =>
  page.evaluate(async (target) => {
    await document.fonts.ready;
    document.querySelector(target)?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, selector);

type Place = Readonly<{ xMm: number; yMm: number }>;

/** Waits until the picture has stood still for three frames. */
export const standStill = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const stage = document.querySelector('.stage');
    let before = '';
    for (let still = 0; stage && still < 3;) {
      await new Promise(requestAnimationFrame);
      const { x, y, width } = stage.getBoundingClientRect();
      const now = `${x} ${y} ${width}`;
      still = now === before ? still + 1 : 0;
      before = now;
    }
  });

/** Where two points of the picture lie on the screen. */
export const placesOf = (page: Page, from: Place, to: Place) =>
  page.evaluate(
    (start, end) => {
      const matrix = document.querySelector<SVGSVGElement>('.stage')?.getScreenCTM();
      if (!matrix) throw new Error('The page has no stage, or it is not drawn.');
      const place = ({ xMm, yMm }: { xMm: number; yMm: number }) => {
        const { x, y } = new DOMPoint(xMm, -yMm).matrixTransform(matrix);
        return { left: x, top: y };
      };
      return { start: place(start), end: place(end) };
    },
    from,
    to,
  );

/** Where two points of the picture lie on the screen, once the page has stood still. */
export async function onScreen(page: Page, from: Place, to: Place) {
  await standStill(page);
  return placesOf(page, from, to);
}
