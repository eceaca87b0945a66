import type { Page } from '@playwright/test';
import axe from 'axe-core';
import { look, type Rules, type Theme, wear } from './look.ts';

type Look = readonly [Theme, width: number, Rules, 'new'?];

/** Every rule in both themes at three widths. */
const whole: readonly Look[] = (['light', 'dark'] as const).flatMap((theme) =>
  [1280, 390, 320].map((width): Look => [theme, width, 'all']),
);

/**
 * The same by what can differ: no width changes a colour (a test of its own), and no theme a name, a role or
 * a size. So every rule once, all but colours again at the narrowest, colours again in the dark; elsewhere
 * only what is shown there and was not before.
 */
const byDifference: readonly Look[] = [
  ['light', 320, 'rest'],
  ['light', 1280, 'all'],
  ['dark', 1280, 'colours'],
  ['dark', 1280, 'rest', 'new'],
  ['dark', 320, 'colours', 'new'],
  ['dark', 320, 'rest', 'new'],
  ['light', 320, 'colours', 'new'],
  ['light', 390, 'colours', 'new'],
  ['light', 390, 'rest', 'new'],
  ['dark', 390, 'colours', 'new'],
  ['dark', 390, 'rest', 'new'],
];

/** Looks through a page with axe; each finding with the themes and widths in which it was found. */
export async function lookThrough(page: Page, isWhole: boolean): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const found = new Map<string, Set<string>>();
  let worn = '';
  for (const [theme, width, rules, onlyNew] of isWhole ? whole : byDifference) {
    const where = `${theme} ${width}`;
    if (where !== worn) await wear(page, theme, width);
    worn = where;
    for (const says of await look(page, theme, rules, onlyNew === 'new'))
      found.set(says, (found.get(says) ?? new Set()).add(where));
  }
  return [...found].map(([says, places]) => `${says} (${[...places].join(', ')})`);
}
