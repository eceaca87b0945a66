import { readdirSync, readFileSync } from 'node:fs';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import { describe, expect, test } from 'vitest';
import { urgentSchema } from '#build/urgentSchema.ts';
import { factOf, isFactId } from '#lib/catalogue.ts';
import { firstAidFacts } from '#lib/firstAid/facts.ts';
import { sourceOf } from '#words/evidence.ts';
import { callMeans, spokenLine, urgentLine, wakingFacts, wakingLine } from '#words/urgent.ts';

const root = new URL('../../', import.meta.url);
const filesIn = (folder: string, ending: RegExp) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .map((name) => ({ name: `${folder}${name}`, text: readFileSync(new URL(folder + name, root), 'utf8') }));

const cards = filesIn('content/urgent/', /\.mdx$/).map(({ name, text }) => {
  const { frontmatter, content } = parseFrontmatter(text);
  return { name, body: content, ...urgentSchema.parse(frontmatter) };
});
const namedIn = (body: string, tag: string) =>
  [...body.matchAll(new RegExp(`<${tag} [^>]*?id="([^"]+)"`, 'g'))].map(([, id = '']) => id);
const spoken = ({ title, lines }: (typeof cards)[number]) => [
  title,
  ...lines.map(({ say }) => spokenLine(say)),
  spokenLine(wakingLine),
];

/**
 * What no first-aid text that was read supports, or what one warns of: it may stand under "Do not", never in
 * a line.
 */
const neverSaid: Readonly<Record<string, RegExp>> = {
  faint: /loosen|knees|\bbag\b|slap|salts|sugar|nerves|drink/i,
  allergy: /loosen|antihistamine|tablet|drink|\bwait\b|door|sit up/i,
  'numbing-reaction': /nerves|sugar|water|drink|weaker|antidote|safe|\bmg\b|minutes/i,
  eye: /eye bath|\bcup\b|neutralise|saline|salt|cotton|until it stops|bandage/i,
  'stuck-or-splashed': /you are fine|\brisk\b|per cent|refuse|blame|suck it|\bdrug/i,
};

test('[hand] the five urgent cards stand in their order', () => {
  expect(cards.toSorted((a, b) => a.order - b.order).map(({ id }) => id)).toEqual([
    'faint',
    'allergy',
    'numbing-reaction',
    'eye',
    'stuck-or-splashed',
  ]);
});

describe.each(cards)('$id', (card) => {
  test('[hand] has at most six lines with the one that every card ends on, and the first says when to call or where to go', () => {
    expect(card.lines.length + 1).toBeLessThanOrEqual(6);
    expect(spokenLine(card.lines[0]?.say ?? '')).toMatch(/\b(call|go)\b/);
  });
  test('[hand] takes under half a minute to read aloud: at most 75 words with its title, at 150 words a minute', () => {
    const words = spoken(card).join(' ').split(/\s+/).length;
    expect(words, spoken(card).join('\n')).toBeLessThanOrEqual(75);
  });
  test('[property] every line has facts behind it, each a habit said as such or advice read in a source with its country', () => {
    for (const { say, facts } of [...card.lines, { say: wakingLine, facts: wakingFacts }])
      for (const id of facts) {
        if (!isFactId(id) || !Object.hasOwn(firstAidFacts, id))
          expect.unreachable(`${say} names ${id}, which is no fact of first aid`);
        else {
          const { backing } = factOf(id);
          expect(['published', 'common-practice'], id).toContain(backing.status);
          if (backing.status !== 'published') continue;
          const { place, read, readOn } = sourceOf(backing.source);
          expect(place, backing.source).toBeTruthy();
          expect(read, backing.source).not.toBe('none');
          expect(readOn, backing.source).toMatch(/^\d{4}-\d\d-\d\d$/);
        }
      }
  });
  test('[property] every line has at least one fact, and the card at least as many read as told', () => {
    const statuses = card.lines.flatMap(({ facts }) =>
      facts.map((id) => (isFactId(id) ? factOf(id).backing.status : '')),
    );
    expect(statuses.filter((status) => status === 'published').length).toBeGreaterThanOrEqual(
      statuses.filter((status) => status === 'common-practice').length,
    );
  });
  test('[hand] says nothing in its lines that no source supports', () => {
    expect(neverSaid[card.id]).toBeDefined();
    for (const line of spoken(card)) expect(line).not.toMatch(neverSaid[card.id] ?? /^/);
  });
  test('[hand] names no country’s number in its lines or under them', () => {
    for (const text of [...spoken(card), card.body])
      expect(text).not.toMatch(/\b(999|112|911|000|111)\b(?! Wales)/);
  });
  test('[hand] types no digit, and names only facts and cards that exist', () => {
    expect(card.body.replace(/<[^>]+>/g, '').replaceAll('NHS 111 Wales', '')).not.toMatch(/\d/);
    expect(namedIn(card.body, 'Fact').filter((id) => !isFactId(id))).toEqual([]);
    expect(namedIn(card.body, 'Urgent').filter((id) => !cards.some((other) => other.id === id))).toEqual([]);
    expect(card.name).toContain(`/${card.id}.mdx`);
    for (const heading of ['## Do not', '## Where bodies differ']) expect(card.body).toContain(heading);
  });
});

test('[property] every fact of first aid stands behind a line or in the text of a card', () => {
  const used = new Set([
    ...wakingFacts,
    ...cards.flatMap(({ lines, body }) => [...lines.flatMap(({ facts }) => facts), ...namedIn(body, 'Fact')]),
  ]);
  expect(Object.keys(firstAidFacts).filter((id) => !used.has(id))).toEqual([]);
});

test('[hand] the line about waking and breathing has one definition', () => {
  const holding = ['src/', 'components/', 'content/']
    .flatMap((folder) => filesIn(folder, /\.(ts|tsx|astro|mdx|md)$/))
    .filter(({ text }) => /call, floor|send for the defibrillator/i.test(text));
  expect(holding.map(({ name }) => name)).toEqual(['src/words/urgent.ts']);
  expect(spokenLine(wakingLine)).toBe(
    'Does not wake, does not breathe normally: call, floor, start CPR, send for the defibrillator.',
  );
});

test('[hand] numbers of countries stand together, as examples', () =>
  expect(callMeans).toMatch(/your own emergency number.*999.*112.*911.*000/));

test('[hand] a number comes from its fact, with its range; an unknown fact is an error', () => {
  expect(urgentLine('Wait {faint-no-better-minutes}.').replaceAll('\u00a0', ' ')).toBe(
    'Wait 1 to 2 minutes.',
  );
  expect(urgentLine('{eye-rinse-minutes}').replaceAll('\u00a0', ' ')).toBe('20 minutes');
  expect(() => urgentLine('{no-such-fact}')).toThrow('No fact is called "no-such-fact".');
});

test('[hand] a card written wrongly is told what is wrong', () => {
  const line = { say: 'Call now, and stay.', facts: ['fetch-defibrillator'] };
  const sound = {
    id: 'one',
    title: 'One',
    order: 1,
    summary: 'A card of one thing.',
    also: ['a', 'b', 'c', 'd', 'e'],
    lines: [line, line, line],
  };
  const faultsOf = (change: object) =>
    urgentSchema.safeParse({ ...sound, ...change }).error?.issues.map(({ message }) => message) ?? [];
  expect(faultsOf({})).toEqual([]);
  expect(faultsOf({ lines: Array(6).fill(line) })).toEqual([
    'Write at most five lines: the sixth, about waking and breathing, is added to every card.',
  ]);
  expect(faultsOf({ lines: [{ ...line, say: 'Lie her down flat.' }, line, line] })).toEqual([
    'The first line says when to call, or where to go.',
  ]);
  expect(faultsOf({ lines: [line, line, { ...line, facts: [] }] })).toEqual([
    'Name at least one fact that stands behind this line.',
  ]);
  expect(faultsOf({ lines: [line, line, { ...line, say: 'Call after 2 minutes.' }] })).toEqual([
    'Type no digit: write {fact-id} where a number of a fact belongs.',
  ]);
  expect(faultsOf({ also: ['a'] })).toEqual([
    'Name at least five words or phrases by which people look for this card.',
  ]);
});
