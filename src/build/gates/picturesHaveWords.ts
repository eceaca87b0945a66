import { attribute, elementsOf, lineOf, nodesUnder } from '../builtPages.ts';
import type { OpenGate } from './fault.ts';

/** Every picture has words or is marked as decoration. */
export const picturesHaveWords: OpenGate = () => ({
  read: (page) =>
    [...elementsOf(page)]
      .filter((element) => {
        if (element.tagName === 'img') return attribute(element, 'alt') === undefined;
        if (element.tagName !== 'svg' || attribute(element, 'role') !== 'img') return false;
        const isNamed = attribute(element, 'aria-label') || attribute(element, 'aria-labelledby');
        return !isNamed && ![...nodesUnder(element)].some((inner) => inner.nodeName === 'title');
      })
      .map((element) => ({
        file: page.file,
        line: lineOf(element),
        says: `<${element.tagName}> has no words: give it an alt text, an aria-label or a title`,
      })),
});
