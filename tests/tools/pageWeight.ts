import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { attribute, type BuiltPage, elementsOf } from '#build/builtPages.ts';
import { scriptsOf } from './scriptWeight.ts';

/** What a page links in its head and a browser fetches at once: styles, first parts of typefaces, its icon. */
const fetched = ['stylesheet', 'preload', 'icon'];

/** Everything a first visit fetches until the page's first islands are awake, in bytes as sent: text with gzip, typefaces as they are. */
export function pageWeight(page: BuiltPage, folder: string, islands: number): number {
  const linked = [...elementsOf(page)].flatMap((element) =>
    element.tagName === 'link' && fetched.includes(attribute(element, 'rel') ?? '')
      ? (attribute(element, 'href') ?? [])
      : [],
  );
  const files = new Set([page.file, ...linked, ...scriptsOf(page, folder, islands)]);
  return [...files].reduce((sum, file) => {
    const content = readFileSync(join(folder, file));
    return sum + (file.endsWith('.woff2') ? content.length : gzipSync(content, { level: 9 }).length);
  }, 0);
}
