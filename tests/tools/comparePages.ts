import { defaultTreeAdapter, type DefaultTreeAdapterTypes } from 'parse5';
import { attribute, type BuiltPage, eachBuiltPage, elementsOf } from '#build/builtPages.ts';

// node tests/tools/comparePages.ts before after
// What readers would notice between two built folders: pages, words, ids, addresses. Says nothing and returns 0 when there is nothing.

const told = ['alt', 'aria-label', 'placeholder', 'title'];
const leading = ['href', 'src', 'action', 'srcset'];
/** Files of this folder carry a hash of their content in their names: another name is no other address. */
const hashed = '/_astro/';
const shownEachSide = 12;

/** What stands inside a line. The ends of anything else part words, with or without a space in the file. */
const inLine = new Set('a abbr b code em i kbd small span strong sub sup u'.split(' '));

/** The text inside a node without scripts and styles, a space around each block. */
function spacedText(node: DefaultTreeAdapterTypes.Node): string {
  if (defaultTreeAdapter.isTextNode(node)) return node.value;
  if (['script', 'style'].includes(node.nodeName)) return '';
  const insides = [
    ...('childNodes' in node ? node.childNodes : []),
    ...('content' in node ? node.content.childNodes : []),
  ];
  const text = insides.map(spacedText).join('');
  return inLine.has(node.nodeName) ? text : ` ${text} `;
}

type Noticed = Readonly<Record<'words' | 'ids' | 'addresses', readonly string[]>>;

function noticedOn(page: BuiltPage): Noticed {
  const elements = [...elementsOf(page)];
  const valuesOf = (names: readonly string[]) =>
    elements.flatMap((element) => names.flatMap((name) => attribute(element, name) ?? []));
  const description = elements
    .filter((element) => attribute(element, 'name') === 'description')
    .map((element) => attribute(element, 'content') ?? '');
  return {
    words: [spacedText(page.document), ...description, ...valuesOf(told)]
      .join(' ')
      .split(/\s+/)
      .filter(Boolean),
    ids: valuesOf(['id']),
    addresses: valuesOf(leading).filter((address) => !address.includes(hashed)),
  };
}

/** The two lists between what they share at their starts and at their ends. */
function between(
  before: readonly string[],
  after: readonly string[],
): readonly [readonly string[], readonly string[]] | undefined {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let end = 0;
  while (end < shorter - start && before.at(-1 - end) === after.at(-1 - end)) end++;
  if (start === before.length && start === after.length) return undefined;
  return [before.slice(start, before.length - end), after.slice(start, after.length - end)];
}

const shown = (list: readonly string[]): string =>
  list.length <= 2 * shownEachSide
    ? list.join(' ')
    : `${list.slice(0, shownEachSide).join(' ')} … ${list.slice(-shownEachSide).join(' ')} (${list.length})`;

/** One line for each page that is missing, new, or has other words, ids or addresses. */
function* differences(before: string, after: string): Generator<string> {
  const noticed = (folder: string) =>
    new Map([...eachBuiltPage(folder)].map((page) => [page.address, noticedOn(page)]));
  const [old, now] = [noticed(before), noticed(after)];
  for (const address of old.keys()) if (!now.has(address)) yield `${address} is gone`;
  for (const [address, page] of now) {
    const was = old.get(address);
    if (!was) {
      yield `${address} is new`;
      continue;
    }
    for (const kind of ['words', 'ids', 'addresses'] as const) {
      const parts = between(was[kind], page[kind]);
      if (parts) yield `${address} ${kind}: - ${shown(parts[0])} + ${shown(parts[1])}`;
    }
  }
}

const [before, after] = process.argv.slice(2);
if (before === undefined || after === undefined)
  throw new Error('Two built folders, please: node tests/tools/comparePages.ts before after');
for (const line of differences(before, after)) {
  console.log(line);
  process.exitCode = 1;
}
