import { readdirSync, readFileSync } from 'node:fs';
import { h, type ComponentType } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { colourFacts } from '#lib/colour/facts.ts';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { practiceFacts } from '#lib/practice/facts.ts';
import { reviewGapsDays } from '#lib/practice/schedule.ts';
import { itemSeed } from '#lib/practice/itemSeed.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import { skillIslands } from '#build/skillIslands.ts';
import type { ProblemSettings } from '#components/practice/bound.ts';
import { islandName } from '#components/practice/islandName.ts';
import { skillList, skills } from '#skills/index.ts';
import { pinFault, pinned, pinOf, readPin } from '#tests/tools/skillPins.ts';
import { tied } from '#words/skills/say.ts';

test('[library] the hash and the stream, recomputed from the published algorithms in Python', () => {
  // FNV-1a with MurmurHash3's finaliser; xoroshiro128+ (24, 16, 37), 26 and 27 low bits of two draws for each
  // number.
  expect(seedFrom('draw', 0)).toBe(3534138833);
  expect(seedFrom('class-a', 'learner-7', 'tilt', 0)).toBe(3505771162);
  expect(seedFrom('é', 1)).toBe(2136665321);
  expect(itemSeed('practice', '', 'midline-from-pairs', 0)).toBe(616);
  const vectors = {
    0: [0.33722756188182035, 0.31560637985593776, 0.46679898701117106],
    1: [0.9452317541758904, 0.875653010925646, 0.9807443316159942],
    999: [0.5889812105715059, 0.31197680480820034, 0.06599379688311524],
  } as const;
  for (const [seed, numbers] of Object.entries(vectors)) {
    const draw = drawFrom(Number(seed));
    expect(numbers.map(() => draw())).toEqual(numbers);
  }
});

/** Pins, not truths (`tests/specs/pins`): a change deals new numbers under every key that was ever printed. Only a new version may. */
test('[property] the numbers and right answers of every skill are those of its version, for every seed', () => {
  expect(pinned.flatMap((skill) => pinFault(skill.id, readPin(skill.id), pinOf(skill)) ?? [])).toEqual([]);
  const files = readdirSync(new URL('pins/', import.meta.url)).map((name) => name.replace('.json', ''));
  expect(files.sort(), 'a pin whose skill is gone, or a skill without its own').toEqual(
    pinned.map(({ id }) => id).sort(),
  );
});

test('[hand] a pin that does not agree says what changed and what to do; only one version further it may be written anew', () => {
  const pin = { version: 1, givens: [1, 2], everyGiven: 3, everyAnswer: 4 };
  expect(pinFault('tilt', pin, pin)).toBeUndefined();
  expect(pinFault('tilt', undefined, pin)).toBe(
    '"tilt" is new and has no pin. Write it: node tests/tools/pinSkill.ts tilt',
  );
  expect(pinFault('tilt', pin, { ...pin, everyAnswer: 5 })).toMatch(
    /^"tilt" changed what is right for them, and its version is still 1: .* count its version up to 2, then: node tests\/tools\/pinSkill\.ts tilt$/,
  );
  expect(pinFault('tilt', pin, { ...pin, givens: [1, 3] })).toContain(
    'changed the numbers that its seeds deal, and its version is still 1',
  );
  expect(pinFault('tilt', pin, { ...pin, everyGiven: 0, everyAnswer: 0 })).toContain(
    'changed the numbers that its seeds deal and what is right for them',
  );
  expect(pinFault('tilt', pin, { ...pin, version: 2, everyAnswer: 5 })).toBe(
    '"tilt" is version 2, its pin is of version 1. Write the new one: node tests/tools/pinSkill.ts tilt',
  );
  expect(pinFault('tilt', pin, { ...pin, version: 3 })).toContain('versions count up by one');
  expect(pinFault('tilt', { ...pin, version: 2 }, pin)).toContain('versions count up by one');
});

test('[hand] ids agree everywhere, every cited fact exists, the list says each skill once', () => {
  expect(skillList.map(({ id }) => id)).toEqual(Object.keys(skills));
  const known = new Set([...Object.keys(mappingFacts), ...Object.keys(colourFacts)]);
  for (const [id, skill] of Object.entries(skills)) {
    expect(skill.id).toBe(id);
    for (const fact of skill.facts) expect(known, `${id} cites ${fact}`).toContain(fact);
  }
  for (const { name, summary } of skillList) expect(name.length > 0 && summary.endsWith('.')).toBe(true);
});

const camel = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

test('[hand] every skill stands in the folder of its strand', () => {
  const folders: Readonly<Record<string, string>> = {
    Mapping: 'mapping',
    'Colour theory': 'colour',
    'Skin healing': 'skin',
  };
  const files = new Set(
    Object.values(folders).flatMap((folder) =>
      readdirSync(new URL(`../../src/skills/${folder}/`, import.meta.url)).map((name) => `${folder}/${name}`),
    ),
  );
  expect(
    skillList
      .filter(({ id, strand }) => !files.has(`${folders[strand]}/${camel(id)}.ts`))
      .map(({ id }) => id),
  ).toEqual([]);
});

const islands = import.meta.glob<Readonly<{ default: ComponentType<ProblemSettings> }>>(
  '../../components/practice/islands/*.tsx',
);
const islandFile = (id: string) => `../../components/practice/islands/${islandName(id)}.tsx`;

test('[hand] every island is of a skill', () => {
  expect(Object.keys(islands).sort()).toEqual(Object.keys(skills).map(islandFile).sort());
});

test.each(Object.values(skills))(
  '[hand] the island of $id asks its own question beside a picture that has words',
  async ({ id, given, words }) => {
    const island = await islands[islandFile(id)]?.();
    if (!island) throw new Error(`There is no ${islandFile(id)}.`);
    const seed = 3;
    const html = renderToString(h(island.default, { at: 'p', level: 3, seed }));
    const text = html
      .replace(/<[^>]*>/g, ' ')
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, '&')
      .replace(/&lt;/g, '<');
    expect(text).toContain(tied(words.question(given(seed) as never)));
    expect(html).toMatch(/<svg [^>]*role="img"/);
  },
);

test('[hand] the component that shows a skill by its id names every skill with its own island, and a missing one', () => {
  const shown = new Map(
    [
      ...skillIslands().matchAll(/\{id === '([\w-]+)' && <(\w+) \{\.\.\.settings\} client:visible \/>\}/g),
    ].map(([, id, name]) => [id, name] as const),
  );
  expect([...shown.keys()]).toEqual(Object.keys(skills));
  expect(shown.get('which-mark-not-to-trust')).toBe('WhichMarkNotToTrust');
  expect(shown.get('ita')).toBe('Ita');
  expect(() => skillIslands(['tilt', 'hair-growth'], (name) => name === 'Tilt')).toThrow(
    'No picture and island: "hair-growth" wants components/practice/islands/HairGrowth.tsx.',
  );
});

test('[hand] every skill is run over all its seeds', () => {
  const root = new URL('./', import.meta.url);
  const specs = readdirSync(root)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(new URL(name, root), 'utf8'))
    .join('');
  expect(
    Object.keys(skills)
      .filter((id) => !specs.includes(`checkSeed(${camel(id)},`))
      .map((id) => `no file of tests/specs runs checkSeed(${camel(id)}, …)`),
  ).toEqual([]);
});

test('[property] no two skills share a generator', () => {
  const all = Object.values(skills);
  expect(new Set(all.map(({ given }) => given)).size).toBe(all.length);
  for (let seed = 0; seed < 50; seed++) {
    expect(new Set(all.map(({ given }) => JSON.stringify(Object.keys(given(seed)).sort()))).size).toBe(
      all.length,
    );
  }
});

test('[hand] the review days are the facts of the library', () => {
  expect(reviewGapsDays[0]).toBe(practiceFacts['first-review-days'].value);
  expect(reviewGapsDays.at(-1)).toBe(practiceFacts['last-review-days'].value);
});
