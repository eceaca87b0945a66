import { readdirSync, readFileSync } from 'node:fs';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import { describe, expect, test } from 'vitest';
import { calculatorSchema } from '#build/calculatorSchema.ts';
import { typedDigits } from '#build/typedDigits.ts';
import { calculators, isCalculatorId } from '#calculators/index.ts';
import { isToldId, toldNumbers } from '#calculators/toldNumbers.ts';
import { sayingParts } from '#components/lesson/sayingParts.ts';
import { factOf, isFactId } from '#lib/catalogue.ts';
import { isSheetId } from '#words/sheets.ts';
import { spelt } from '#words/spelt.ts';

const root = new URL('../../content/', import.meta.url);
const namesIn = (folder: string) =>
  new Set(readdirSync(new URL(folder, root)).map((file) => file.replace(/\.mdx?$/, '')));
const entries = [...namesIn('calculators/')].map((name) => {
  const text = readFileSync(new URL(`calculators/${name}.mdx`, root), 'utf8');
  const { frontmatter, content } = parseFrontmatter(text);
  return { name, body: content, ...calculatorSchema.parse(frontmatter) };
});
const known: Readonly<Record<string, (id: string) => boolean>> = {
  Fact: isFactId,
  Told: isToldId,
  WhileMended: isCalculatorId,
  OnceMended: isCalculatorId,
  Rule: (id) => namesIn('rules/').has(id),
  Term: (id) => namesIn('glossary/').has(id),
  Urgent: (id) => namesIn('urgent/').has(id),
};

const spoken = (says: string) =>
  sayingParts(says)
    .map(({ text }) => text)
    .join('');
/** Its words without formulas, headings, tags and the numbers of a list. */
const proseOf = (body: string) =>
  body
    .replace(/\$\$[^]*?\$\$|\$[^$]*\$/g, '')
    .replace(/^(?:#|<h2).*$/gm, '')
    .replace(/^\d+\. /gm, '')
    .replace(/\]\([^)]*\)|<[^>]+>/g, ' ');
const lengthsOf = (texts: readonly string[]) =>
  texts
    .flatMap((text) => text.split(/(?<=[.!?:”])\s+/))
    .map((sentence) => sentence.split(/\s+/).filter((word) => /\p{L}|\d/u.test(word)).length)
    .filter((length) => length > 0);

test('[hand] every calculator has its words, and no words are of another', () => {
  expect(entries.map(({ id }) => id).toSorted()).toEqual(Object.keys(calculators).toSorted());
});

describe.each(entries)('$id', ({ body, sheet, assumes, doesNotCheck }) => {
  const says = [...assumes.map((assumption) => assumption.says), ...doesNotCheck];

  test('[hand] names only what exists', () => {
    for (const [, tag = '', id = ''] of body.matchAll(/<([A-Z]\w*)[^>]*? id="([^"]+)"/g))
      expect(known[tag]?.(id), `<${tag} id="${id}">`).toBe(true);
    for (const { fact } of assumes) if (fact !== undefined) expect(isFactId(fact), fact).toBe(true);
    if (sheet !== undefined) expect(isSheetId(sheet), sheet).toBe(true);
    for (const one of says) expect(() => spoken(one), one).not.toThrow();
  });

  test('[hand] types no digits: numbers come from facts and sums', () => {
    expect(typedDigits(proseOf(body))).toEqual([]);
  });

  test('[property] sentences are short: none over 35 words, 16 on average', () => {
    const lengths = lengthsOf([...proseOf(body).split(/\n\n+/), ...says.map(spoken)]);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(35);
    expect(lengths.reduce((a, b) => a + b, 0) / lengths.length).toBeLessThanOrEqual(16);
  });

  test('[hand] says every formula in words below it, and parts its words by headings', () => {
    const after = body.split(/^\$\$\n[^]*?\n\$\$\n/gm).slice(1);
    expect(after.filter((text) => !text.startsWith('\nIn words: '))).toEqual([]);
    expect(body.trim()).toMatch(/^(?:## |<h2 id=")/);
    expect(body).not.toMatch(/^#(?:#{2,})? /m);
  });
});

describe('front matter', () => {
  const good = { id: 'pose', doesNotCheck: ['Whether she agreed to a picture.'] };
  const messagesOf = (front: object) =>
    calculatorSchema.safeParse(front).error?.issues.map(({ message }) => message) ?? [];

  test.each([
    ['nothing that is not checked', { id: 'pose' }, /Say under doesNotCheck/],
    ['an empty list', { ...good, doesNotCheck: [] }, /at least one thing/],
    [
      'a colon without quotes',
      { ...good, doesNotCheck: [{ Look: 'first' }] },
      /in quotes where it holds a colon/,
    ],
    ['half a sentence', { ...good, doesNotCheck: ['Whether she agreed'] }, /End the sentence/],
    ['a typed digit', { ...good, doesNotCheck: ['From 3 m on it is far.'] }, /Type no digit/],
    [
      'an unknown grade',
      { ...good, assumes: [{ says: 'It is so, always.', grade: 'sure' }] },
      /assumed or computed/,
    ],
    [
      'a grade beside a fact',
      { ...good, assumes: [{ says: 'It is so, always.', grade: 'assumed', fact: 'few-see-mm' }] },
      /not both/,
    ],
    ['a key by another name', { ...good, doesNotChek: [] }, /doesNotChek/],
  ])('[hand] with %s is refused in words', (_, front, message) => {
    expect(messagesOf(front).join('\n')).toMatch(message);
  });

  test('[hand] a whole one passes, with numbers by id and names that hold digits', () => {
    expect(messagesOf({ ...good, assumes: [{ says: 'From {camera-far-m} m on, in D65.' }] })).toEqual([]);
  });
});

test('[hand] every number that may be told is told somewhere', () => {
  const texts = entries.map(({ body, assumes, doesNotCheck }) =>
    JSON.stringify([body, assumes, doesNotCheck]),
  );
  expect(
    Object.keys(toldNumbers).filter(
      (id) => !texts.some((text) => text.includes(`{${id}}`) || text.includes(`<Told id=\\"${id}\\"`)),
    ),
  ).toEqual([]);
});

test('[hand] a name in braces is a number, a number in words, or leads to a calculator', () => {
  expect(spoken('Under {cover-counts-below in words}, or {coverage-brows}.')).toBe('Under three, or 2,000.');
  expect(sayingParts('See {hair-and-bone}.')).toEqual([
    { text: 'See ' },
    { text: 'What lies under the shape', address: '/calculators/hair-and-bone/' },
    { text: '.' },
  ]);
  expect(() => sayingParts('See {nowhere}.')).toThrow('"{nowhere}" names no fact');
});

test('[hand] whole numbers up to twenty are spelt, others refused', () => {
  expect([0, 4, 13, 20].map(spelt)).toEqual(['nought', 'four', 'thirteen', 'twenty']);
  for (const value of [-1, 0.5, 21, NaN]) expect(() => spelt(value)).toThrow('has no word');
});

test('[hand] the mean age that is told is that of the study, to the next year', () => {
  const fact = factOf('unequal-at-front-mm');
  const [, years = ''] = /mean age (\d+\.\d+)/.exec(('caveat' in fact && fact.caveat) || '') ?? [];
  expect(toldNumbers['unequal-mean-age-years']).toBe(Math.ceil(Number(years)));
});
