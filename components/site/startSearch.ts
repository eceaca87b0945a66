import { isNear, namesOneOf } from './isNear.ts';

type Result = {
  url: string;
  excerpt: string;
  meta: { title?: string; kind?: string; also?: string };
  sub_results?: { title: string; url: string; excerpt: string }[];
};
type Found = { results: { id: string; data: () => Promise<Result> }[] };
type Engine = {
  options: (options: { noWorker: boolean }) => Promise<void>;
  init: () => Promise<void>;
  preload: (words: string) => Promise<void>;
  search: (words: string, options: { filters: { urgent: 'yes' } }) => Promise<Found>;
  debouncedSearch: (words: string) => Promise<Found | null>;
};

const mostShown = 6;

let engine: Promise<Engine> | undefined;
let tell: (() => void) | undefined;

async function load(): Promise<Engine> {
  // The index exists only in the built site, so the bundler must not follow this address.
  const address = '/pagefind/pagefind.js';
  const loaded: Engine = await import(/* @vite-ignore */ address);
  // An index of this size is searched in a few milliseconds: a worker of its own would only be 12 kB more to
  // fetch.
  await loaded.options({ noWorker: true });
  await loaded.init();
  return loaded;
}

/** Excerpts arrive as text with <mark> around the hits; everything else is shown as plain text. */
function excerptNodes(excerpt: string): Node[] {
  const parsed = new DOMParser().parseFromString(excerpt, 'text/html');
  return [...parsed.body.childNodes].map((node) => {
    if (node.nodeName !== 'MARK') return document.createTextNode(node.textContent ?? '');
    const mark = document.createElement('mark');
    mark.textContent = node.textContent;
    return mark;
  });
}

/**
 * Words that occur nowhere are answered with whatever begins alike, down to one letter: a page is shown only
 * for a real likeness.
 */
function answers(asked: string, { excerpt, meta, sub_results }: Result): boolean {
  const nodes = excerptNodes(sub_results?.[0]?.excerpt ?? excerpt);
  const found = nodes.filter((node) => node.nodeName === 'MARK').map((node) => node.textContent ?? '');
  return isNear(asked, [...found, meta.title ?? ''].join(' '));
}

/** The urgent cards that what was typed is a name for: they stand first, however often others hold its words. */
async function urgentFirst(ready: Engine, words: string): Promise<Found['results']> {
  const { results } = await ready.search(words, { filters: { urgent: 'yes' } });
  const named = await Promise.all(
    results.map(async (result) => namesOneOf(words, ((await result.data()).meta.also ?? '').split(','))),
  );
  return results.filter((_, i) => named[i]);
}

function resultItem({ url, excerpt, meta, sub_results }: Result): HTMLLIElement {
  const item = document.createElement('li');
  const link = document.createElement('a');
  const best = sub_results?.[0];
  link.href = best?.url ?? url;
  const kind = document.createElement('span');
  kind.className = 'find-kind';
  kind.textContent = meta.kind ?? 'Page';
  const title = document.createElement('b');
  title.textContent = meta.title ?? url;
  const text = document.createElement('span');
  text.className = 'find-text';
  text.append(...excerptNodes(best?.excerpt ?? excerpt));
  link.append(kind, title, text);
  item.append(link);
  return item;
}

/**
 * Wires the search dialog once; the index loads at the first focus, never before. Where it does not come,
 * opening the dialog again or typing asks again.
 */
export function startSearch(dialog: HTMLDialogElement): void {
  const input = dialog.querySelector<HTMLInputElement>('#find-words');
  const list = dialog.querySelector<HTMLOListElement>('#find-list');
  const count = dialog.querySelector<HTMLElement>('#find-count');
  if (!input || !list || !count) return;
  input.focus();
  if (tell) return tell();
  dialog.dataset['ready'] = 'yes';
  const sayMissing = () => count.replaceChildren(dialog.dataset['missing'] ?? '');
  const search = async (ready: Engine) => {
    const words = input.value.trim();
    if (words.length < 2) {
      list.replaceChildren();
      count.textContent = 'Type a word, such as midline or tilt.';
      return;
    }
    // The last word may be half typed, and its endings may lie in the next file of the index: "hea" is also
    // "healed".
    await ready.preload(`${words}zz`);
    if (input.value.trim() !== words) return;
    const found = await ready.debouncedSearch(words);
    if (!found || input.value.trim() !== words) return;
    const urgent = await urgentFirst(ready, words);
    const others = found.results.filter(({ id }) => !urgent.some((result) => result.id === id));
    const loaded = await Promise.all(
      [...urgent, ...others].slice(0, mostShown).map((result) => result.data()),
    );
    if (input.value.trim() !== words) return;
    const shown = loaded.filter((result) => answers(words, result));
    list.replaceChildren(...shown.map(resultItem));
    const total = shown.length === 0 ? 0 : found.results.length - (loaded.length - shown.length);
    count.textContent =
      total === 0
        ? `Nothing found for “${words}”. Try one plain word.`
        : `${total} found${total > shown.length ? `, first ${shown.length} shown` : ''}.`;
  };
  tell = () => {
    const asked = (engine ??= load());
    asked.catch(() => (engine = undefined));
    asked.then(search).catch(sayMissing);
  };
  input.addEventListener('input', tell);
  // What was typed while this part was on its way.
  tell();
  dialog.addEventListener('close', () => document.querySelector<HTMLElement>('[data-search-open]')?.focus());
}
