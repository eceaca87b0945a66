import { expect, test } from 'vitest';
import { builtPages } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';
import { scriptWeight } from '#tests/tools/scriptWeight.ts';

const kinds = [
  { kind: 'rule card', address: /^\/rules\/[^/]+\/$/, most: 5000 },
  { kind: 'page of words', address: /^\/(glossary|evidence|limits|cautions|accessibility)\/$/, most: 5000 },
  { kind: 'lesson', address: /^\/lessons\/[^/]+\/[^/]+\/$/, most: 20_000 },
  { kind: 'calculator', address: /^\/calculators\/[^/]+\/$/, most: 25_000 },
] as const;

const pages = builtPages(builtFolder);

test.each(kinds)('[hand] the scripts of every $kind weigh at most $most bytes, as sent', ({ address, most }) => {
  const weights = pages.filter((page) => address.test(page.address)).map((page) => ({ page: page.address, bytes: scriptWeight(page, builtFolder) }));
  expect(weights.length).toBeGreaterThan(0);
  expect(weights.filter(({ bytes }) => bytes > most)).toEqual([]);
});
