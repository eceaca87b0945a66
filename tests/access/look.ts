import type { Page } from '@playwright/test';

export type Theme = 'light' | 'dark';
/** `colours`: the rules whose answer hangs on colours. `rest`: all others. */
export type Rules = 'all' | 'colours' | 'rest';

const colourRules = ['color-contrast', 'link-in-text-block'];
/** Rules whose answer hangs on sizes, or on what stands elsewhere on the page. */
const widthRules = [
  'target-size',
  'scrollable-region-focusable',
  'heading-order',
  'page-has-heading-one',
  'landmark-one-main',
  'landmark-unique',
  'region',
];

/** Sets the theme and the width of the window. */
export async function wear(page: Page, theme: Theme, width: number): Promise<void> {
  if (page.viewportSize()?.width !== width) await page.setViewportSize({ width, height: 900 });
  await page.evaluate((name) => {
    document.documentElement.dataset['theme'] = name;
  }, theme);
}

/**
 * What axe finds by these rules on the page as it stands. `new`: on what none of these rules have seen yet in
 * this theme, and on what has lost a part since, for a name may have gone with it. `newWidth`: besides, by
 * the rules that hang on the width.
 */
export function look(
  page: Page,
  theme: Theme,
  rules: Rules,
  extent?: 'new' | 'newWidth',
): Promise<readonly string[]> {
  return page.evaluate(
    async ({ theme, rules, extent, colourRules, widthRules }) => {
      const shown = new Set(
        [...document.body.querySelectorAll('*')].filter(
          (element) =>
            element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
            element.getClientRects().length > 0 &&
            getComputedStyle(element).clipPath === 'none',
        ),
      );
      const lookedAt = (window.lookedAt ??= new Map());
      const partsSeen = (window.partsSeen ??= new Map());
      const keys = [
        ...(rules === 'rest' ? [] : [`colours ${theme}`]),
        ...(rules === 'colours' ? [] : ['rest']),
      ];
      const fresh = new Set<Element>();
      for (const key of keys) {
        const seen = lookedAt.get(key) ?? new Set<Element>();
        for (const element of shown) if (!seen.has(element)) fresh.add(element);
        if (key === 'rest')
          for (const element of shown) {
            const parts = [...element.children].map((part) => (shown.has(part) ? 1 : 0)).join('');
            const before = partsSeen.get(element) ?? new Set<string>();
            const hasLost = [...element.children].some((part) => seen.has(part) && !shown.has(part));
            if (hasLost && !before.has(parts)) fresh.add(element);
            partsSeen.set(element, before.add(parts));
          }
        lookedAt.set(key, new Set([...seen, ...shown]));
      }
      const include = [...fresh].filter((element) => {
        for (let holder = element.parentElement; holder; holder = holder.parentElement)
          if (fresh.has(holder)) return false;
        return true;
      });
      const saysOf = async (where: Element[] | Document, options: object): Promise<string[]> => {
        const { violations } = await window.axe.run(where instanceof Document ? where : { include: where }, {
          resultTypes: ['violations'],
          ...options,
        });
        return violations.flatMap(({ id, nodes }) =>
          nodes.map(
            ({ target, failureSummary }) =>
              `${id}: ${target.join(' ')} ${failureSummary?.split('\n')[1]?.trim() ?? ''}`,
          ),
        );
      };
      const runOnly = (values: readonly string[]) => ({ runOnly: { type: 'rule', values } });
      const some =
        rules === 'colours'
          ? runOnly(colourRules)
          : {
              rules: {
                'target-size': { enabled: true },
                ...(rules === 'rest' &&
                  Object.fromEntries(colourRules.map((rule) => [rule, { enabled: false }]))),
              },
            };
      if (!extent) return saysOf(document, some);
      return [
        ...new Set([
          ...(include.length > 0 ? await saysOf(include, some) : []),
          ...(extent === 'newWidth' ? await saysOf(document, runOnly(widthRules)) : []),
        ]),
      ];
    },
    { theme, rules, extent, colourRules, widthRules },
  );
}
