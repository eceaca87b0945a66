import { expect, test } from 'vitest';
import { builtPages } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';
import { pageWeight, requestsOf } from '#tests/tools/pageWeight.ts';
import { scriptWeight } from '#tests/tools/scriptWeight.ts';

// Islands start when they come into view: a lesson opens with one, its live figure, and its problems follow
// one by one.
const kinds = [
  { kind: 'rule card', address: /^\/rules\/[^/]+\/$/, islands: Infinity, most: 5000 },
  {
    kind: 'page of words',
    address: /^\/(glossary|evidence(\/[^/]+)?|limits|cautions|accessibility)\/$/,
    islands: Infinity,
    most: 5000,
  },
  { kind: 'lesson with its live figure', address: /^\/lessons\/[^/]+\/[^/]+\/$/, islands: 1, most: 20_000 },
  {
    kind: 'lesson worked through to its end',
    address: /^\/lessons\/[^/]+\/[^/]+\/$/,
    islands: Infinity,
    most: 45_000,
  },
  { kind: 'calculator', address: /^\/calculators\/[^/]+\/$/, islands: 1, most: 26_000 },
  { kind: 'practice page', address: /^\/practice\/(?!mixed\/)[^/]+\/$/, islands: 1, most: 26_000 },
  { kind: 'mixed set', address: /^\/practice\/mixed\/$/, islands: 1, most: 26_000 },
  {
    kind: 'page for placing the midline, before its drawing',
    address: /^\/practice\/place-the-midline\/$/,
    islands: 1,
    most: 22_500,
  },
  {
    kind: 'sheet for paper, before another drawing',
    address: /^\/sheets\/[^/]+\/$/,
    islands: 1,
    most: 20_000,
  },
] as const;

/** The theme switch, and the framework's few lines that wake an island. */
const mostInline = 2500;

const pages = builtPages(builtFolder);

test.each(kinds)(
  '[hand] the scripts of every $kind weigh at most $most bytes, as sent',
  ({ address, islands, most }) => {
    const weights = pages
      .filter((page) => address.test(page.address))
      .map((page) => ({ page: page.address, ...scriptWeight(page, builtFolder, islands) }));
    expect(weights.length).toBeGreaterThan(0);
    expect(weights.filter(({ filesBytes }) => filesBytes > most)).toEqual([]);
    expect(weights.filter(({ inlineBytes }) => inlineBytes > mostInline)).toEqual([]);
  },
);

const wholes = [
  { kind: 'rule card', address: /^\/rules\/[^/]+\/$/, most: 45_000 },
  { kind: 'lesson', address: /^\/lessons\/[^/]+\/[^/]+\/$/, most: 85_000 },
  { kind: 'calculator', address: /^\/calculators\/[^/]+\/$/, most: 88_000 },
  { kind: 'practice page', address: /^\/practice\/[^/]+\/$/, most: 80_000 },
] as const;

test.each(wholes)(
  '[hand] a first visit to any $kind fetches at most $most bytes before its first figure moves',
  ({ address, most }) => {
    const weights = pages
      .filter((page) => address.test(page.address))
      .map((page) => ({ page: page.address, bytes: pageWeight(page, builtFolder, 1) }));
    expect(weights.length).toBeGreaterThan(0);
    expect(weights.filter(({ bytes }) => bytes > most)).toEqual([]);
  },
);

const asked = [
  { kind: 'rule card', address: /^\/rules\/[^/]+\/$/, most: 7 },
  { kind: 'lesson', address: /^\/lessons\/[^/]+\/[^/]+\/$/, most: 11 },
  { kind: 'calculator', address: /^\/calculators\/[^/]+\/$/, most: 12 },
  { kind: 'practice page', address: /^\/practice\/[^/]+\/$/, most: 12 },
  { kind: 'sheet for paper', address: /^\/sheets\/[^/]+\/$/, most: 14 },
] as const;

test.each(asked)(
  '[hand] a first visit to any $kind asks for at most $most files before its first figure moves',
  ({ address, most }) => {
    const requests = pages
      .filter((page) => address.test(page.address))
      .map((page) => ({ page: page.address, files: requestsOf(page, builtFolder, 1) }));
    expect(requests.length).toBeGreaterThan(0);
    expect(requests.filter(({ files }) => files.length > most)).toEqual([]);
  },
);
