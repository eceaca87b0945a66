import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { attribute, builtPages, type Element, elementsOf } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';

/** Every id of the page while all evidence stood on it: links to `/evidence/#…` that must keep working. */
const oldIds: readonly string[] = JSON.parse(
  readFileSync(new URL('../fixtures/evidence-on-one-page.json', import.meta.url), 'utf8'),
);
/** Told on the entry page as before, now with links to the parts. */
const stayed = /^(outside-checks|sources|status-[a-z-]+)$/;
const mostEntryBytes = 90_000;
const mostPartBytes = 200_000;

const pages = builtPages(builtFolder);
const entry = pages.find(({ address }) => address === '/evidence/');
const parts = pages.filter(({ address }) => /^\/evidence\/[^/]+\/$/.test(address));
const anchors = new Map(
  (entry ? [...elementsOf(entry)] : []).map((element) => [attribute(element, 'id'), element] as const),
);
const idsOf = (elements: Iterable<Element>) =>
  [...elements].flatMap((element) => attribute(element, 'id') ?? []);
const idsOfPart = new Map(parts.map((page) => [page.address, new Set(idsOf(elementsOf(page)))]));

/** The nearest element, from this one upwards, of which something is true. */
function closest(start: Element, isIt: (element: Element) => boolean): Element | undefined {
  for (
    let here: Element | undefined = start;
    here;
    here = here.parentNode && 'tagName' in here.parentNode ? here.parentNode : undefined
  )
    if (isIt(here)) return here;
  return undefined;
}
const linksIn = (element: Element): readonly string[] => [
  ...(element.tagName === 'a' ? [attribute(element, 'href') ?? ''] : []),
  ...element.childNodes.flatMap((child) => ('tagName' in child ? linksIn(child) : [])),
];
const linksAround = (anchor: Element, ...tags: readonly string[]): readonly string[] => {
  const around = closest(anchor, ({ tagName }) => tags.includes(tagName));
  return around ? linksIn(around) : [];
};

/** What is wrong where an old link ends; nothing when it leads to what it led to. */
function fault(id: string): string | undefined {
  const anchor = anchors.get(id);
  if (!anchor) return 'the entry page has no such id';
  if (stayed.test(id))
    return linksAround(anchor, 'div', 'section').some((link) => idsOfPart.has(link.replace(/#.*$/, '')))
      ? undefined
      : 'no link to a part beside it';
  // With scripts: components/evidence/leadOn.ts goes to the page that the anchor's part names.
  const holder = closest(anchor, (element) => attribute(element, 'data-part') !== undefined);
  const path = (holder && attribute(holder, 'data-part')) ?? '';
  if (!idsOfPart.get(path)?.has(id)) return 'no part holds it';
  // Without: a name is itself the link; checks and sources end at a line that leads to their list.
  const list = id.startsWith('check-') ? 'outside-checks' : id.startsWith('source-') ? 'sources' : id;
  return linksAround(anchor, 'li', 'p').includes(`${path}#${list}`) ? undefined : 'no link beside it';
}

test('[property] every link to /evidence/#… from when all stood on one page arrives, with scripts and without', () => {
  expect(oldIds).toHaveLength(870);
  expect(
    oldIds.flatMap((id) => {
      const wrong = fault(id);
      return wrong === undefined ? [] : [`${id}: ${wrong}`];
    }),
  ).toEqual([]);
});

test('[property] no page of the site sends its readers by an old link', () => {
  expect(entry).toBeDefined();
  const roundabout = pages.flatMap((page) =>
    [...elementsOf(page)].flatMap((element) =>
      attribute(element, 'href')?.startsWith('/evidence/#')
        ? [`${page.address}: ${attribute(element, 'href')}`]
        : [],
    ),
  );
  expect(roundabout).toEqual([]);
});

test('[property] no entry stands on two pages, and every source that a page names is listed on it', () => {
  expect(parts.length).toBeGreaterThan(1);
  const rows = parts.flatMap((page) =>
    idsOf([...elementsOf(page)].filter(({ tagName }) => tagName === 'tr')),
  );
  expect(rows.length).toBeGreaterThan(600);
  expect(rows.filter((id, at) => rows.indexOf(id) !== at)).toEqual([]);
  for (const page of parts) {
    const listed = idsOfPart.get(page.address);
    const named = [...elementsOf(page)].flatMap(
      (element) => /^#(source-.+)$/.exec(attribute(element, 'href') ?? '')?.[1] ?? [],
    );
    expect(named.length, page.address).toBeGreaterThan(0);
    expect(
      named.filter((id) => !listed?.has(id)),
      page.address,
    ).toEqual([]);
  }
});

test(`[hand] the entry page weighs at most ${mostEntryBytes} bytes before packing, a part at most ${mostPartBytes}`, () => {
  const bytesOf = (file: string) => readFileSync(join(builtFolder, file)).length;
  expect(bytesOf('evidence/index.html')).toBeLessThanOrEqual(mostEntryBytes);
  for (const { file } of parts) expect(bytesOf(file), file).toBeLessThanOrEqual(mostPartBytes);
});
