import { attribute, elementsOf, lineOf } from '../builtPages.ts';
import type { Fault, Gate } from './fault.ts';

/** Every link and every loaded file inside the site leads to something that was built, with the id it names. */
export const linksLead: Gate = (pages, { origin, files }) => {
  const idsByAddress = new Map(pages.map((page) => [page.address, new Set([...elementsOf(page)].flatMap((element) => attribute(element, 'id') ?? []))]));
  return pages.flatMap((page) => {
    const faults: Fault[] = [];
    for (const element of elementsOf(page)) {
      for (const name of ['href', 'src', 'content'] as const) {
        const link = attribute(element, name);
        const isAddress = name !== 'content' || link?.startsWith(`${origin}/`);
        if (link === undefined || !isAddress || /^(mailto|tel|data|blob):/.test(link)) continue;
        const says = (reason: string) => faults.push({ file: page.file, line: lineOf(element), says: `${name}="${link}": ${reason}` });
        if (!URL.canParse(link, origin + page.address)) {
          says('not an address');
          continue;
        }
        const url = new URL(link, origin + page.address);
        if (url.origin !== origin) continue;
        const path = decodeURIComponent(url.pathname);
        const ids = idsByAddress.get(path);
        if (!ids && !files.has(path.slice(1))) says(files.has(`${path.slice(1)}/index.html`) ? 'write the slash at its end' : 'no such page or file');
        else if (ids && url.hash.length > 1 && !ids.has(decodeURIComponent(url.hash.slice(1)))) says('that page has no such id');
      }
    }
    return faults;
  });
};
