import type { Page } from 'puppeteer-core';

/** Brings a part of the page into view and waits until its island has started. */
export async function wake(page: Page, selector: string): Promise<void> {
  await page.waitForSelector(selector);
  await page.evaluate((target) => document.querySelector(target)?.scrollIntoView({ block: 'center' }), selector);
  await page.waitForFunction((target) => !document.querySelector(target)?.closest('astro-island[ssr]'), {}, selector);
}

/** The visible words of the first match. */
export const wordsOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (element) => (element instanceof HTMLElement ? element.innerText : (element.textContent ?? '')).replace(/\s+/g, ' ').trim());

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
      const button = [...document.querySelectorAll<HTMLElement>(`${part} button`)].find((each) => each.innerText.trim() === label && each.checkVisibility());
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
  await page.waitForFunction((target, source) => new RegExp(source).test(document.querySelector(target)?.textContent ?? ''), { timeout: 20_000 }, selector, pattern.source);
  return wordsOf(page, selector);
}

/** Follows a link and waits for its page. */
export async function follow(page: Page, selector: string): Promise<void> {
  await page.waitForSelector(selector);
  const arrived = page.waitForNavigation({ waitUntil: 'load' });
  await page.$eval(selector, (link) => (link instanceof HTMLElement ? link.click() : undefined));
  await arrived;
}
