import { attribute, elementsOf, lineOf, textOf } from '../builtPages.ts';
import type { Fault, Gate, OpenGate } from './fault.ts';

/**
 * Every page says what it is: one h1, a title of its own, a description, a language, headings that skip no
 * level.
 */
export const pagesAreNamed: OpenGate = () => {
  const titles = new Map<string, string>();
  const read: Gate['read'] = (page) => {
    const faults: Fault[] = [];
    const says = (line: number, text: string) => faults.push({ file: page.file, line, says: text });
    const elements = [...elementsOf(page)];
    const headings = elements
      .filter(({ tagName }) => /^h[1-6]$/.test(tagName))
      .filter((heading) => textOf(heading).trim() !== '');
    const firsts = headings.filter(({ tagName }) => tagName === 'h1');
    if (firsts.length !== 1)
      says(firsts[1] ? lineOf(firsts[1]) : 1, `the page has ${firsts.length} h1 headings; it needs one`);
    const title = elements
      .filter(({ tagName, parentNode }) => tagName === 'title' && parentNode?.nodeName === 'head')
      .map(textOf)[0]
      ?.trim();
    if (!title) says(1, 'the page has no title');
    else if (titles.has(title)) says(1, `the title “${title}” is also that of ${titles.get(title)}`);
    else titles.set(title, page.file);
    const description = elements.find(
      (element) => element.tagName === 'meta' && attribute(element, 'name') === 'description',
    );
    if (!description || (attribute(description, 'content') ?? '').trim().length < 10)
      says(description ? lineOf(description) : 1, 'the page has no description');
    if (!elements.some((element) => element.tagName === 'html' && attribute(element, 'lang')))
      says(1, 'the page names no language');
    headings.slice(1).forEach((heading, index) => {
      const before = Number(headings[index]?.tagName[1]);
      const here = Number(heading.tagName[1]);
      if (here > before + 1)
        says(lineOf(heading), `“${textOf(heading).trim().slice(0, 50)}” jumps from h${before} to h${here}`);
    });
    return faults;
  };
  return { read };
};
