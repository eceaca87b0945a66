import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type DefaultTreeAdapterTypes, defaultTreeAdapter, parse } from 'parse5';

export type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

/** One page of the built site: its file, the address a reader sees, and its tree with line numbers. */
export type BuiltPage = Readonly<{ file: string; address: string; document: Node }>;

/** Every file under a folder, as paths with forward slashes, sorted. */
export function filesUnder(folder: string): readonly string[] {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name).slice(folder.length).replaceAll('\\', '/').replace(/^\//, ''),
    )
    .sort();
}

/**
 * Parses the pages of a built folder one after the other: a tree is some megabytes, and thousands do not fit
 * into memory.
 */
export function* eachBuiltPage(folder: string): Generator<BuiltPage> {
  for (const file of filesUnder(folder)) {
    if (!file.endsWith('.html')) continue;
    yield {
      file,
      address: `/${file.replace(/(^|\/)index\.html$/, '$1')}`,
      document: parse(readFileSync(join(folder, file), 'utf8'), { sourceCodeLocationInfo: true }),
    };
  }
}

/** Every page of a built folder at once. */
export const builtPages = (folder: string): readonly BuiltPage[] => [...eachBuiltPage(folder)];

/** Every node below one node, in document order, the insides of templates too. */
export function* nodesUnder(start: Node): Generator<Node> {
  const waiting: Node[] = [start];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    yield node;
    if ('childNodes' in node) waiting.push(...node.childNodes.toReversed());
    if ('content' in node) waiting.push(node.content);
  }
}

/** Every element of a page, in document order. */
export function* elementsOf(page: BuiltPage): Generator<Element> {
  for (const node of nodesUnder(page.document)) if (defaultTreeAdapter.isElementNode(node)) yield node;
}

/** The value of one attribute, if it is there. */
export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find((attr) => attr.name === name)?.value;
}

/** The text inside a node, without scripts and styles. */
export function textOf(node: Node): string {
  let text = '';
  for (const inner of nodesUnder(node)) {
    if (!defaultTreeAdapter.isTextNode(inner)) continue;
    const holder = inner.parentNode?.nodeName;
    if (holder !== 'script' && holder !== 'style') text += inner.value;
  }
  return text;
}

/** The line a node starts on; 0 where the parser made the node up. */
export function lineOf(node: Node): number {
  return node.sourceCodeLocation?.startLine ?? 0;
}
