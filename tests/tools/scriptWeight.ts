import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { attribute, type BuiltPage, elementsOf } from '#build/builtPages.ts';

const staticImport = /(?:\bimport|\bfrom)\s*["'](\.[^"']+|\/[^"']+)["']/g;

/** The scripts of a page: its own, those of its first islands, and all they import statically. */
export function scriptsOf(page: BuiltPage, folder: string, islands = Infinity): readonly string[] {
  let met = 0;
  const waiting = [...elementsOf(page)].flatMap((element) => {
    if (element.tagName === 'script') return attribute(element, 'src') ?? [];
    if (element.tagName !== 'astro-island' || met++ >= islands) return [];
    return ['component-url', 'renderer-url', 'before-hydration-url'].flatMap(
      (name) => attribute(element, name) ?? [],
    );
  });
  const found = new Set<string>();
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    const file = join(folder, path);
    if (!existsSync(file)) throw new Error(`${page.file} loads ${path}, which is not built.`);
    for (const [, target = ''] of readFileSync(file, 'utf8').matchAll(staticImport))
      waiting.push(new URL(target, `http://localhost${path}`).pathname);
  }
  return [...found].sort();
}

export type ScriptWeight = Readonly<{ filesBytes: number; inlineBytes: number }>;

/**
 * The weight of those scripts, and of the inline ones that travel within the page, in bytes as sent with
 * gzip.
 */
export function scriptWeight(page: BuiltPage, folder: string, islands = Infinity): ScriptWeight {
  const files = scriptsOf(page, folder, islands).map((path) => readFileSync(join(folder, path)));
  const inline = [...elementsOf(page)]
    .filter((element) => element.tagName === 'script' && attribute(element, 'src') === undefined)
    .map((element) => element.childNodes.map((child) => ('value' in child ? child.value : '')).join(''));
  const sent = (texts: readonly (string | Buffer)[]) =>
    texts
      .filter((text) => text.length > 0)
      .reduce((sum, text) => sum + gzipSync(text, { level: 9 }).length, 0);
  return { filesBytes: sent(files), inlineBytes: sent(inline) };
}
