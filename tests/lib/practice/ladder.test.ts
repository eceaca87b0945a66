import { expect, test } from 'vitest';
import { entryRung, nextRung, rungs, stepsShown } from '#lib/practice/ladder.ts';
import type { Rung } from '#lib/practice/ladder.ts';

test('[hand] the way up: worked, last step blank, two blank, bare, mixed', () => {
  const way: Rung[] = ['worked'];
  for (let i = 0; i < 5; i++) way.push(nextRung(way.at(-1) ?? 'worked', 'clean'));
  expect(way).toEqual(['worked', 'last-blank', 'two-blank', 'bare', 'mixed', 'mixed']);
});

test('[hand] a wrong answer steps down once and never under the first blank', () => {
  expect(rungs.map((rung) => nextRung(rung, 'wrong'))).toEqual([
    'last-blank',
    'last-blank',
    'last-blank',
    'two-blank',
    'bare',
    'bare',
  ]);
  expect(rungs.map((rung) => nextRung(rung, 'helped'))).toEqual([
    'last-blank',
    'last-blank',
    'two-blank',
    'bare',
    'mixed',
    'mixed',
  ]);
  expect(nextRung('review', 'clean')).toBe('mixed');
});

test('[hand] steps that stand on the page', () => {
  expect(rungs.map((rung) => stepsShown(rung, 4))).toEqual([4, 3, 2, 0, 0, 0]);
  expect(stepsShown('two-blank', 1)).toBe(0);
});

test('[hand] where to begin after three items', () => {
  expect([0, 1, 2, 3].map(entryRung)).toEqual(['worked', 'last-blank', 'two-blank', 'bare']);
});
