import type { Page } from 'puppeteer-core';
import { parsers } from '#calculators/parsers.ts';
import type { Field, Value } from '#calculators/spec.ts';

/** A field as a test drives it: whatever its value is. */
export type AnyField = Pick<Field<Value>, 'key' | 'start' | 'read' | 'control'>;

/**
 * What “Copy link” copies now, by the keys of the fields: what differs from the start, and starts that were
 * once others.
 */
async function copied(page: Page): Promise<ReadonlyMap<string, string>> {
  const link = await page.evaluate(
    () =>
      new Promise<string>((take) => {
        Object.defineProperty(navigator, 'clipboard', {
          configurable: true,
          value: { writeText: async (text: string) => take(text) },
        });
        [...document.querySelectorAll<HTMLButtonElement>('.calc-tools button')]
          .find((button) => button.innerText.includes('Copy link'))
          ?.click();
      }),
  );
  return new Map(new URL(link).searchParams);
}

/**
 * The fields that differ from the start, read as the calculator reads them. Typing is read a moment later:
 * asked until `isThere`, for twenty seconds.
 */
export async function changed(
  page: Page,
  fields: readonly AnyField[],
  isThere: (values: Readonly<Record<string, Value>>) => boolean,
): Promise<Readonly<Record<string, Value>>> {
  for (const end = performance.now() + 20_000; ;) {
    const values: Record<string, Value> = {};
    for (const [key, text] of await copied(page)) {
      const field = fields.find((one) => one.key === key);
      const read = field?.read(text, parsers);
      if (!read?.ok) throw new Error(`The copied link holds ${key}=${text}, which the calculator refuses.`);
      if (read.value !== field?.start) values[key] = read.value;
    }
    if (isThere(values) || performance.now() > end) return values;
    await new Promise((done) => setTimeout(done, 20));
  }
}

export const backToStart = (page: Page): Promise<void> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLButtonElement>('.calc-tools button')]
      .find((button) => button.innerText.startsWith('Reset the '))
      ?.click(),
  );

/** Opens what is folded away, so that every box can be reached. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() =>
    document
      .querySelectorAll<HTMLDetailsElement>('.calculator .side details')
      .forEach((each) => (each.open = true)),
  );

/** The marks that the picture lets go of, by the names of their fields. */
export const gripKeys = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.grip')].map((grip) => grip.getAttribute('data-mark') ?? ''),
  );

/**
 * Chooses the mark in the list beside the picture, as a reader without a pointer must. False when there are
 * several marks and no such list.
 */
export const pickMark = (page: Page, key: string): Promise<boolean> =>
  page.evaluate((name) => {
    const grips = [...document.querySelectorAll('.grip')].map((grip) => grip.getAttribute('data-mark') ?? '');
    const list = [...document.querySelectorAll<HTMLSelectElement>('.calculator .side select')].find(
      ({ options }) => {
        const values = new Set([...options].map(({ value }) => value));
        return [name, ...grips].every((mark) => values.has(mark));
      },
    );
    if (!list) return grips.length === 1;
    list.value = name;
    list.dispatchEvent(new Event('change', { bubbles: true }));
    return true;
  }, key);

/** The place of a mark, picture millimetres with y up. */
export const gripPlace = (page: Page, key: string): Promise<Readonly<{ xMm: number; yMm: number }>> =>
  page.evaluate((name) => {
    const grip = document.querySelector(`.grip[data-mark="${name}"]`);
    return { xMm: Number(grip?.getAttribute('cx')), yMm: -Number(grip?.getAttribute('cy')) };
  }, key);

export const stepButtons = '.calculator .stepper button';
export const sliders = '.calculator input[type=range]';
export const countOf = (page: Page, selector: string): Promise<number> =>
  page.$$eval(selector, (found) => found.length);

/** Presses step buttons by their places, each once the page has answered the last. */
export const pressSteps = (page: Page, presses: readonly number[]): Promise<void> =>
  page.evaluate(
    async (buttons, all) => {
      for (const which of all) {
        document.querySelectorAll<HTMLButtonElement>(buttons)[which]?.click();
        await Promise.resolve();
        await Promise.resolve();
      }
    },
    stepButtons,
    presses,
  );

/** Puts the focus on a part of the calculator without moving the page. */
export const focusOn = (page: Page, selector: string, nth = 0): Promise<boolean> =>
  page.evaluate(
    (target, which) => {
      const found = document.querySelectorAll<HTMLElement | SVGElement>(target)[which];
      found?.focus({ preventScroll: true });
      if (found instanceof HTMLInputElement && found.type === 'text') found.select();
      return found !== undefined && document.activeElement === found;
    },
    selector,
    nth,
  );

/**
 * Types over what stands in a box, in one stroke: a calculator that thinks after every letter thinks once.
 * False when there is no such box.
 */
export async function typeInto(page: Page, selector: string, text: string): Promise<boolean> {
  return (
    (await focusOn(page, selector)) &&
    page.evaluate((typed) => document.execCommand('insertText', false, typed), text)
  );
}
