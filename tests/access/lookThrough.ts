import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import { look, type Rules, type Theme, wear } from './look.ts';

type Look = readonly [Theme, width: number, Rules, ('new' | 'newWidth')?];

/** Every rule in both themes at three widths. */
const whole: readonly Look[] = [1280, 390, 320].flatMap((width) =>
  (['light', 'dark'] as const).map((theme): Look => [theme, width, 'all']),
);

/**
 * The same by what can differ: no width changes a colour (a test of its own), and no theme a name, a role or
 * a size. So every rule once, colours again in the dark; elsewhere what is shown there and was not before,
 * what has lost a part, and what hangs on the width.
 */
const byDifference: readonly Look[] = [
  ['light', 1280, 'all'],
  ['dark', 1280, 'colours'],
  ['dark', 1280, 'rest', 'new'],
  ['light', 320, 'all', 'newWidth'],
  ['dark', 320, 'all', 'new'],
  ['light', 390, 'all', 'newWidth'],
  ['dark', 390, 'all', 'new'],
];

/** The short form: each page reads all of it. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Looks through a page with axe; each finding with the themes and widths in which it was found. */
export async function lookThrough(page: Page, isWhole: boolean): Promise<readonly string[]> {
  const session = await page.context().newCDPSession(page);
  // As one expression: handed over as a function its letters would be read twice.
  await session.send('Runtime.evaluate', { expression: `${axe};0` });
  await session.detach();
  const found = new Map<string, Set<string>>();
  let worn = '';
  for (const [theme, width, rules, extent] of isWhole ? whole : byDifference) {
    const where = `${theme} ${width}`;
    if (where !== worn) await wear(page, theme, width);
    worn = where;
    for (const says of await look(page, theme, rules, extent))
      found.set(says, (found.get(says) ?? new Set()).add(where));
  }
  return [...found].map(([says, places]) => `${says} (${[...places].join(', ')})`);
}
