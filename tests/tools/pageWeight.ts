import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { attribute, type BuiltPage, elementsOf } from '#build/builtPages.ts';
import { scriptsOf } from './scriptWeight.ts';

/** What a page links in its head and a browser fetches at once: styles, first parts of typefaces, its icon. */
const fetched = ['stylesheet', 'preload', 'modulepreload', 'icon'];

/**
 * Every file that a first visit asks for until the page's first `islands` are awake, as paths in the built
 * folder: the page, the styles, faces and icon its head names, its own scripts, and those of its first
 * islands with all that they import. Left out is what comes later or only on request: import() of a part, the
 * worker that keeps the site offline, an icon for a home screen.
 */
export function requestsOf(page: BuiltPage, folder: string, islands: number): readonly string[] {
  const linked = [...elementsOf(page)].flatMap((element) =>
    element.tagName === 'link' && fetched.includes(attribute(element, 'rel') ?? '')
      ? (attribute(element, 'href') ?? [])
      : [],
  );
  return [...new Set([page.file, ...linked, ...scriptsOf(page, folder, islands)])];
}

/** The weight of all of them, in bytes as sent: text with gzip, typefaces as they are. */
export function pageWeight(page: BuiltPage, folder: string, islands: number): number {
  return requestsOf(page, folder, islands).reduce((sum, file) => {
    const content = readFileSync(join(folder, file));
    return sum + (file.endsWith('.woff2') ? content.length : gzipSync(content, { level: 9 }).length);
  }, 0);
}
