import { elementsOf, lineOf } from '../builtPages.ts';
import type { OpenGate } from './fault.ts';

/**
 * The content policy blocks `style=` and `on…=` attributes, silently for the reader: neither may be written.
 */
export const noInlineStyle: OpenGate = () => ({
  read: (page) =>
    [...elementsOf(page)].flatMap((element) =>
      element.attrs
        .filter(({ name }) => name === 'style' || /^on[a-z]+$/.test(name))
        .map(({ name, value }) => ({
          file: page.file,
          line: lineOf(element),
          says: `<${element.tagName} ${name}="${value.slice(0, 40)}">: the content policy blocks this attribute; use a class or an SVG attribute`,
        })),
    ),
});
