import type { Page } from '@playwright/test';

export type Theme = 'light' | 'dark';
/** `colours`: the rules whose answer hangs on colours. `rest`: all others. */
export type Rules = 'all' | 'colours' | 'rest';

const colourRules = ['color-contrast', 'link-in-text-block'];

/** Sets the theme and the width of the window. */
export async function wear(page: Page, theme: Theme, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await page.evaluate((name) => {
    document.documentElement.dataset['theme'] = name;
  }, theme);
}

/**
 * What axe finds by these rules on the page as it stands; with `onlyNew`, on what none of these rules have
 * seen yet in this theme.
 */
export function look(page: Page, theme: Theme, rules: Rules, onlyNew = false): Promise<readonly string[]> {
  return page.evaluate(
    async ({ theme, rules, onlyNew, colourRules }) => {
      const lookedAt = (window.lookedAt ??= new Map<string, Set<Element>>());
      const keys = [
        ...(rules === 'rest' ? [] : [`colours ${theme}`]),
        ...(rules === 'colours' ? [] : ['rest']),
      ];
      const shown = [...document.body.querySelectorAll('*')].filter(
        (element) =>
          element.checkVisibility({
            opacityProperty: true,
            visibilityProperty: true,
          }) &&
          element.getClientRects().length > 0 &&
          getComputedStyle(element).clipPath === 'none',
      );
      const fresh = new Set(shown.filter((element) => keys.some((key) => !lookedAt.get(key)?.has(element))));
      for (const key of keys) lookedAt.set(key, new Set([...(lookedAt.get(key) ?? []), ...shown]));
      const include = [...fresh].filter(
        (element) => !element.parentElement || !fresh.has(element.parentElement),
      );
      if (onlyNew && include.length === 0) return [];
      const results = await window.axe.run(onlyNew ? { include } : document, {
        resultTypes: ['violations'],
        ...(rules === 'colours'
          ? { runOnly: { type: 'rule', values: colourRules } }
          : {
              rules: {
                'target-size': { enabled: true },
                ...(rules === 'rest' &&
                  Object.fromEntries(colourRules.map((rule) => [rule, { enabled: false }]))),
              },
            }),
      });
      return results.violations.flatMap(({ id, nodes }) =>
        nodes.map(
          ({ target, failureSummary }) =>
            `${id}: ${target.join(' ')} ${failureSummary?.split('\n')[1]?.trim() ?? ''}`,
        ),
      );
    },
    { theme, rules, onlyNew, colourRules },
  );
}
