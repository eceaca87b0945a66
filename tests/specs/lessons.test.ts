import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculators } from '#calculators/index.ts';
import { isFactId } from '#lib/catalogue.ts';
import { skills } from '#skills/index.ts';
import { workedExamples } from '#worked/index.ts';

const root = new URL('../../content/', import.meta.url);
const strands = readdirSync(new URL('lessons/', root));
const lessons = strands.flatMap((strand) =>
  readdirSync(new URL(`lessons/${strand}/`, root)).map((file) => ({
    name: `${strand}/${file}`,
    text: readFileSync(new URL(`lessons/${strand}/${file}`, root), 'utf8'),
  })),
);
const idsIn = (folder: string): ReadonlySet<string> =>
  new Set(readdirSync(new URL(folder, root)).map((file) => file.replace(/\.mdx?$/, '')));
const slugs = new Set(lessons.map(({ name }) => name.replace(/^.*\/|\.mdx$/g, '')));
const rules = idsIn('rules/');
const terms = idsIn('glossary/');

const bodyOf = (text: string) => text.split(/^---$/m).slice(2).join('---');
const listedIn = (text: string, key: string) =>
  (new RegExp(`^${key}: \\[(.*)\\]$`, 'm').exec(text)?.[1] ?? '').split(/,\s*/).filter(Boolean);
const named = (text: string, tag: string) =>
  [...text.matchAll(new RegExp(`<${tag} [^>]*?id="([^"]+)"`, 'g'))].map(([, id = '']) => id);

describe.each(lessons)('$name', ({ text }) => {
  const body = bodyOf(text);

  test('[hand] opens on a working figure', () => expect(body.trim()).toMatch(/^<Calculator id="/));

  test('[hand] holds 600 to 1,000 words', () => {
    const words = body
      .replace(/<[^>]+>/g, ' ')
      .split(/\s+/)
      .filter((word) => /\p{L}|\d/u.test(word)).length;
    expect(words).toBeGreaterThanOrEqual(600);
    expect(words).toBeLessThanOrEqual(1000);
  });

  test('[hand] has three problems that differ, a worked example, common mistakes, at most two cautions', () => {
    const problems = named(body, 'Problem');
    expect(problems.length).toBe(3);
    expect(new Set(problems).size).toBe(3);
    expect(named(body, 'Worked').length).toBeGreaterThanOrEqual(1);
    expect(body).toContain('## Common mistakes');
    expect([...body.matchAll(/<Caution /g)].length).toBeLessThanOrEqual(2);
  });

  test('[hand] names only what exists', () => {
    for (const id of named(body, 'Problem')) expect(Object.hasOwn(skills, id), id).toBe(true);
    for (const id of named(body, 'Calculator')) expect(Object.hasOwn(calculators, id), id).toBe(true);
    for (const id of named(body, 'Worked')) expect(Object.hasOwn(workedExamples, id), id).toBe(true);
    for (const id of named(body, 'Fact')) expect(isFactId(id), id).toBe(true);
    for (const id of named(body, 'Rule')) expect(rules.has(id), id).toBe(true);
    for (const id of named(body, 'Term')) expect(terms.has(id), id).toBe(true);
  });

  test('[hand] lists in its front matter only what exists', () => {
    expect(
      listedIn(text, 'skills').filter((id) => !Object.hasOwn(skills, id)),
      'skills',
    ).toEqual([]);
    expect(
      listedIn(text, 'rules').filter((id) => !rules.has(id)),
      'rules',
    ).toEqual([]);
    expect(
      listedIn(text, 'next').filter((id) => !slugs.has(id)),
      'next',
    ).toEqual([]);
  });

  test('[hand] types no digits: numbers come from facts, worked examples and figures', () => {
    expect(body.replace(/<[^>]+>/g, ' ').match(/\d/g) ?? []).toEqual([]);
  });

  test('[property] sentences are short: none over 35 words, 16 on average', () => {
    const prose = body
      .replace(/^#.*$/gm, '')
      .replace(/<[^>]+>/g, ' ')
      .replace(/[*_]/g, '');
    const lengths = prose
      .split(/(?<=[.!?:”])\s+/)
      .map((sentence) => sentence.split(/\s+/).filter(Boolean).length)
      .filter((length) => length > 0);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(35);
    expect(lengths.reduce((a, b) => a + b, 0) / lengths.length).toBeLessThanOrEqual(16);
  });
});

const cards = [...rules].map((name) => ({
  name,
  text: readFileSync(new URL(`rules/${name}.mdx`, root), 'utf8'),
}));

test.each(cards)('[hand] the card $name names the lessons that list it, and no other', ({ name, text }) => {
  const listing = lessons
    .filter((lesson) => listedIn(lesson.text, 'rules').includes(name))
    .map((lesson) => lesson.name.replace(/^.*\/|\.mdx$/g, ''));
  expect(listedIn(text, 'lessons').toSorted()).toEqual(listing.toSorted());
});
