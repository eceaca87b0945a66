import { attribute, elementsOf, lineOf } from '../builtPages.ts';
import type { Fault, Gate, OpenGate } from './fault.ts';

/** A link to an id, looked up once every page has been read. */
type ToId = Readonly<{ fault: Fault; path: string; id: string }>;

/**
 * Every link and every loaded file inside the site leads to something that was built, with the id it names.
 */
export const linksLead: OpenGate = ({ origin, files }) => {
  const idsByAddress = new Map<string, ReadonlySet<string>>();
  const waiting: ToId[] = [];
  const isPage = (path: string) => files.has(`${path.slice(1)}index.html`) && path.endsWith('/');

  const read: Gate['read'] = (page) => {
    const faults: Fault[] = [];
    const ids = new Set<string>();
    for (const element of elementsOf(page)) {
      const id = attribute(element, 'id');
      if (id !== undefined) ids.add(id);
      for (const name of ['href', 'src', 'content'] as const) {
        const link = attribute(element, name);
        const isAddress = name !== 'content' || link?.startsWith(`${origin}/`);
        if (link === undefined || !isAddress || /^(mailto|tel|data|blob):/.test(link)) continue;
        const fault = (reason: string): Fault => ({
          file: page.file,
          line: lineOf(element),
          says: `${name}="${link}": ${reason}`,
        });
        if (!URL.canParse(link, origin + page.address)) {
          faults.push(fault('not an address'));
          continue;
        }
        const url = new URL(link, origin + page.address);
        if (url.origin !== origin) continue;
        const path = decodeURIComponent(url.pathname);
        if (!isPage(path) && !files.has(path.slice(1)))
          faults.push(fault(isPage(`${path}/`) ? 'write the slash at its end' : 'no such page or file'));
        else if (url.hash.length > 1)
          waiting.push({
            fault: fault('that page has no such id'),
            path,
            id: decodeURIComponent(url.hash.slice(1)),
          });
      }
    }
    idsByAddress.set(page.address, ids);
    return faults;
  };

  // A link into a file that is no page, such as a drawing, is not looked into.
  const end = () =>
    waiting.filter(({ path, id }) => idsByAddress.get(path)?.has(id) === false).map(({ fault }) => fault);
  return { read, end };
};
