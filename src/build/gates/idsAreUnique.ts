import { attribute, elementsOf, lineOf } from '../builtPages.ts';
import type { Fault, OpenGate } from './fault.ts';

const listsOfIds = [
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'aria-owns',
  'aria-errormessage',
  'for',
  'list',
  'headers',
] as const;

/** Each id is there once, and every label, description and SVG reference points to an id on its own page. */
export const idsAreUnique: OpenGate = () => ({
  read: (page) => {
    const faults: Fault[] = [];
    const ids = new Map<string, number>();
    const elements = [...elementsOf(page)];
    for (const element of elements) {
      const id = attribute(element, 'id');
      if (id === undefined) continue;
      const first = ids.get(id);
      if (first === undefined) ids.set(id, lineOf(element));
      else
        faults.push({
          file: page.file,
          line: lineOf(element),
          says: `id="${id}" is already on line ${first}`,
        });
    }
    for (const element of elements) {
      const named = listsOfIds.flatMap(
        (name) => attribute(element, name)?.split(/\s+/).filter(Boolean) ?? [],
      );
      const painted = element.attrs.flatMap(({ value }) =>
        [...value.matchAll(/url\(['"]?#([^)'"]+)/g)].map((hit) => hit[1] ?? ''),
      );
      const used =
        element.tagName === 'use'
          ? [attribute(element, 'href') ?? '']
              .filter((href) => href.startsWith('#'))
              .map((href) => href.slice(1))
          : [];
      for (const id of [...named, ...painted, ...used]) {
        if (!ids.has(id))
          faults.push({
            file: page.file,
            line: lineOf(element),
            says: `<${element.tagName}> refers to id "${id}", which is not on this page`,
          });
      }
    }
    return faults;
  },
});
