import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Pages that somebody may need within seconds of a first visit: the front page, the rules and urgent cards, the page for a missing address. */
const isAskedFirst = (file: string): boolean =>
  file === 'index.html' || file === '404.html' || file.startsWith('rules/');
const isSearch = (file: string): boolean => file.startsWith('pagefind/');
const holdsNames = /\.(html|css|js)$/;
const names = /[\w./-]+\.(?:css|js|woff2|svg|webmanifest)\b/g;

/**
 * Of the files that are kept offline those of the first step: these pages, the search, and every style, face and
 * script that they or their scripts name.
 */
export function firstStep(folder: string, files: readonly string[]): ReadonlySet<string> {
  const known = new Set(files);
  const chosen = new Set(files.filter((file) => isAskedFirst(file) || isSearch(file)));
  for (const file of chosen) {
    if (!holdsNames.test(file) || isSearch(file) || !existsSync(join(folder, file))) continue;
    for (const [name] of readFileSync(join(folder, file), 'utf8').matchAll(names)) {
      const path = new URL(name, `http://localhost/${file}`).pathname.slice(1);
      if (known.has(path)) chosen.add(path);
    }
  }
  return chosen;
}
