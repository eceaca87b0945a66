import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  attribute,
  type BuiltPage,
  builtPages,
  type Element,
  elementsOf,
  filesUnder,
  textOf,
} from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';

const pages = builtPages(builtFolder);
const classesOf = (element: Element) => (attribute(element, 'class') ?? '').split(/\s+/);

/** An element and all it stands in. */
function* upFrom(start: Element): Generator<Element> {
  for (
    let here: Element | undefined = start;
    here;
    here = here.parentNode && 'tagName' in here.parentNode ? here.parentNode : undefined
  )
    yield here;
}

/**
 * What a reader without scripts would miss of a page: its heading, its words, or the sign that a control of
 * no use is hidden.
 */
function missing(page: BuiltPage): readonly string[] {
  const elements = [...elementsOf(page)];
  const heading = elements.find(({ tagName }) => tagName === 'h1');
  const html = elements.find(({ tagName }) => tagName === 'html');
  const main = elements.find(({ tagName }) => tagName === 'main');
  const isPutAway = (element: Element) =>
    [...upFrom(element)].some(
      (holder) =>
        holder.tagName === 'template' ||
        holder.tagName === 'noscript' ||
        attribute(holder, 'hidden') !== undefined ||
        classesOf(holder).some(
          (name) => name === 'needs-js' || name === 'js-only' || name === 'visually-hidden',
        ),
    );
  return [
    ...(heading && textOf(heading).trim() && !isPutAway(heading)
      ? []
      : [`${page.address} has no heading in sight`]),
    ...(main && textOf(main).replace(/\s+/g, ' ').trim().length > 20 && !isPutAway(main)
      ? []
      : [`${page.address} has no words`]),
    ...(html && attribute(html, 'data-js') === undefined
      ? []
      : [`${page.address} says that scripts run before any has`]),
  ];
}

test('[hand] every page holds its heading and its words in its file, not behind what only scripts open', () => {
  expect(pages.flatMap(missing)).toEqual([]);
});

test('[hand] what needs scripts is hidden on every page until one says that they run, and no rule shows it sooner', () => {
  const styles = new Map(
    filesUnder(builtFolder)
      .filter((file) => file.endsWith('.css'))
      .map((file) => [`/${file}`, readFileSync(join(builtFolder, file), 'utf8')]),
  );
  const hides = (style = '') => /(^|\})\.needs-js\{display:none!important\}/.test(style);
  const wrong = pages.filter(
    (page) =>
      ![...elementsOf(page)].some(
        (element) =>
          element.tagName === 'link' &&
          attribute(element, 'rel') === 'stylesheet' &&
          hides(styles.get(attribute(element, 'href') ?? '')),
      ),
  );
  expect(wrong.map(({ address }) => address)).toEqual([]);
  const rules = [...styles.values()].flatMap((style) => [
    ...style.matchAll(/([^{}]*\.needs-js[^{}]*)\{([^{}]*)\}/g),
  ]);
  expect(rules.length).toBeGreaterThan(1);
  const shows = rules
    .filter(([, , does = '']) => /(^|;)(display:(?!none)|visibility:visible)/.test(does))
    .flatMap(([, selectors = '']) => selectors.split(','));
  expect(shows.filter((selector) => !selector.trim().startsWith('[data-js] '))).toEqual([]);
});
