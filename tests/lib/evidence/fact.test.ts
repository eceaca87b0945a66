import { expect, test } from 'vitest';
import { assumed, commonPractice, computed, published } from '#lib/evidence/backing.ts';
import { statuses, weakestStatus, type Backing, type Fact } from '#lib/evidence/fact.ts';

const factOn = (backing: Backing): Fact => ({ value: 1, unit: 'mm', backing, reviewed: '2026-11-30' });
const kinds: readonly Backing[] = [
  published('sharma-2005', 'Table 1', 'a quotation'),
  computed('worked out', 'one-fact', 'another-fact'),
  commonPractice('a habit'),
  { status: 'from-memory', note: 'not looked up' },
  assumed('a start'),
];

test('[hand] five kinds of backing, each with what stands behind it, strongest first', () => {
  expect(kinds).toEqual([
    { status: 'published', source: 'sharma-2005', where: 'Table 1', quote: 'a quotation' },
    { status: 'computed', from: ['one-fact', 'another-fact'], note: 'worked out' },
    { status: 'common-practice', note: 'a habit' },
    { status: 'from-memory', note: 'not looked up' },
    { status: 'assumed', note: 'a start' },
  ]);
  expect(statuses).toEqual(kinds.map(({ status }) => status));
});

test('[hand] facts together are as weak as the weakest of them, in any order; no fact at all is as strong as any', () => {
  for (const [i, one] of kinds.entries())
    for (const [j, other] of kinds.entries())
      expect(weakestStatus([factOn(one), factOn(other)])).toBe(kinds[Math.max(i, j)]?.status);
  expect(weakestStatus([])).toBe('published');
});
