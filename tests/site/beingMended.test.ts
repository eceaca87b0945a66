import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { attribute, builtPages, elementsOf, textOf } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';
import { falseAdviceIn } from '#tests/tools/falseAdvice.ts';
import { mendedIds, mendedWords, type MendedKind } from '#words/beingMended.ts';

const content = new URL('../../content/', import.meta.url);
const tags = { calculators: 'Calculator', skills: 'Problem', worked: 'Worked' } as const;
const lessons = readdirSync(new URL('lessons/', content), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => file.replaceAll('\\', '/').replace(/\.mdx$/, ''));

/** What a page must show: its own notice, then one for each part that its lesson names. */
function wantedOn(address: string): readonly string[] {
  const own = (kind: MendedKind, under: string) =>
    mendedIds[kind].filter((id) => address === `/${under}/${id}/`).map((id) => `${kind}/${id}`);
  const lesson = lessons.find((name) => address === `/lessons/${name}/`);
  const text = lesson ? readFileSync(new URL(`lessons/${lesson}.mdx`, content), 'utf8') : '';
  const parts = (['calculators', 'skills', 'worked'] as const).flatMap((kind) =>
    mendedIds[kind].filter((id) => text.includes(`<${tags[kind]} id="${id}"`)).map((id) => `${kind}/${id}`),
  );
  return [
    ...own('calculators', 'calculators'),
    ...own('skills', 'practice'),
    ...own('rules', 'rules'),
    ...own('lessons', 'lessons'),
    ...parts,
  ].toSorted();
}

const plain = (text: string) => text.replace(/[\u00a0\s]+/g, ' ').trim();
const blocks = new Set([
  'p',
  'li',
  'h1',
  'h2',
  'h3',
  'h4',
  'th',
  'td',
  'dd',
  'dt',
  'summary',
  'legend',
  'label',
  'option',
]);
const pages = builtPages(builtFolder).map((page) => {
  const elements = [...elementsOf(page)];
  return {
    address: page.address,
    elements,
    notices: elements.filter((element) => attribute(element, 'data-mended') !== undefined),
    said: elements.filter(({ tagName }) => blocks.has(tagName)).map((element) => plain(textOf(element))),
    description: elements
      .filter((element) => attribute(element, 'name') === 'description')
      .map((element) => attribute(element, 'content') ?? '')
      .join(),
  };
});
const pageAt = (address: string) => pages.find((page) => page.address === address);

test('[hand] every place on the list shows the notice, and no other place does', () => {
  for (const { address, notices } of pages) {
    expect(notices.map((notice) => attribute(notice, 'data-mended')).toSorted(), address).toEqual(
      wantedOn(address),
    );
    for (const notice of notices)
      for (const sentence of [mendedWords.title, mendedWords.why, mendedWords.instead])
        expect(plain(textOf(notice)), address).toContain(sentence);
  }
  expect(pages.filter(({ address }) => wantedOn(address).length > 0).length).toBeGreaterThanOrEqual(13);
});

describe('what is being mended', () => {
  const hasClass = (name: string) => (element: (typeof pages)[number]['elements'][number]) =>
    (attribute(element, 'class') ?? '').split(' ').includes(name);

  test.each(mendedIds.calculators)(
    '[hand] the calculator %s: the notice comes before its answer, and its answer begins with it',
    (id) => {
      const shown = pages.filter(({ address }) => wantedOn(address).includes(`calculators/${id}`));
      expect(shown.length).toBeGreaterThanOrEqual(2);
      for (const { address, elements } of shown) {
        const at = elements.findIndex((element) => attribute(element, 'data-mended') === `calculators/${id}`);
        const says = elements.slice(at).find(hasClass('says'));
        expect(says && plain(textOf(says)), address).toMatch(new RegExp(`^${mendedWords.title}`));
        const whole = elements.slice(0, at).filter(hasClass('calculator'));
        const opened = whole.at(-1);
        expect(
          opened &&
            [...elementsOf({ file: '', address, document: opened })]
              .slice(0, 3)
              .some((element) => attribute(element, 'data-mended') !== undefined),
          address,
        ).toBe(true);
      }
    },
  );

  test.each(mendedIds.skills)(
    '[hand] the skill %s keeps its page, with the notice instead of a problem, and says so in the list',
    (id) => {
      const page = pageAt(`/practice/${id}/`);
      expect(page?.description.startsWith(mendedWords.title)).toBe(true);
      expect(page?.said.join(' ')).toContain(mendedWords.skill);
      expect(
        page?.elements.some((element) => hasClass('prac')(element) || element.tagName === 'astro-island'),
      ).toBe(false);
      const row = pageAt('/practice/')?.elements.find(
        (element) => attribute(element, 'href') === `/practice/${id}/`,
      );
      expect(row && plain(textOf(row))).toContain(mendedWords.mark);
      for (const { address, elements } of pages)
        expect(
          elements.some((element) => (attribute(element, 'id') ?? '').startsWith(`problem-${id}-`)),
          address,
        ).toBe(false);
    },
  );

  test('[hand] is left out of no list: Home, lessons, rules, calculators and practice lead there as before', () => {
    const targets = [
      ...mendedIds.calculators.map((id) => ['/calculators/', `/calculators/${id}/`]),
      ...mendedIds.skills.map((id) => ['/practice/', `/practice/${id}/`]),
      ...mendedIds.rules.map((id) => ['/rules/', `/rules/${id}/`]),
      ...mendedIds.lessons.flatMap((id) => ['/', '/lessons/'].map((from) => [from, `/lessons/${id}/`])),
    ];
    for (const [from = '', to] of targets)
      expect(
        pageAt(from)?.elements.some((element) => attribute(element, 'href') === to),
        `${from} to ${to}`,
      ).toBe(true);
    expect(
      pageAt('/lessons/colour/mixing-by-drops/')?.elements.some(
        (element) => attribute(element, 'href') === '/lessons/colour/neutralise-or-darken/',
      ),
    ).toBe(true);
    expect(
      pageAt('/lessons/colour/neutralise-or-darken/')?.elements.some(
        (element) => attribute(element, 'href') === '/lessons/colour/one-lamp-two-years/',
      ),
    ).toBe(true);
  });
});

test('[hand] no built page advises black over grey-blue or orange, yellow alone over green or pink, or says that pigment only darkens', () => {
  const wrong = pages.flatMap(({ address, said }) =>
    [...new Set(said.flatMap((words) => falseAdviceIn(words)))].map((sentence) => `${address}: ${sentence}`),
  );
  expect(wrong).toEqual([]);
});
