import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { attribute, type BuiltPage, type Element, elementsOf } from './builtPages.ts';
import { scriptHash } from './scriptHash.ts';

const inlineKinds = { 'script-src': 'script', 'style-src': 'style' } as const;

/** What a browser hashes: the text of a script or style that stands within the page. */
function inlineText(element: Element): string {
  return element.childNodes.map((child) => ('value' in child ? child.value : '')).join('');
}

/**
 * A content policy without the hashes of what `page` does not hold. The framework writes the hash of every inline script it knows into
 * every page: they allow more than the page needs, and hashes cannot be packed (0.4 kB on a page of words).
 */
export function narrowed(policy: string, page: BuiltPage): string {
  const elements = [...elementsOf(page)];
  const held = (tag: string) =>
    new Set(
      elements
        .filter(({ tagName }) => tagName === tag)
        .filter((element) => attribute(element, 'src') === undefined)
        .map((element) => `'${scriptHash(inlineText(element))}'`),
    );
  return policy
    .split(';')
    .map((part) => {
      const [name = '', ...values] = part.trim().split(/\s+/);
      const tag = Object.entries(inlineKinds).find(([directive]) => directive === name)?.[1];
      if (tag === undefined) return part.trim();
      const hashes = held(tag);
      return [name, ...values.filter((value) => !value.startsWith("'sha") || hashes.has(value))].join(' ');
    })
    .join(';');
}

/** Writes the narrower policy into a built page's file. */
export function writePolicy(folder: string, { file }: BuiltPage, before: string, after: string): void {
  if (before === after) return;
  const text = readFileSync(join(folder, file), 'utf8');
  const parts = text.split(`content="${before}"`);
  if (parts.length !== 2)
    throw new Error(`${file}: its content policy is not written once, as the framework does.`);
  writeFileSync(join(folder, file), parts.join(`content="${after}"`));
}
