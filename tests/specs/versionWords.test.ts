import { expect, test } from 'vitest';
import { seedWords } from '#words/practice.ts';
import { linkVersionWords, otherVersionsWords } from '#words/versions.ts';

test('[hand] what is said about answers to other versions', () => {
  expect(otherVersionsWords({ earlier: 0, later: 0 })).toBe('');
  expect(otherVersionsWords({ earlier: 1, later: 0 })).toBe(
    '1 answer to an earlier version of this exercise is kept and not counted.',
  );
  expect(otherVersionsWords({ earlier: 3, later: 0 })).toBe(
    '3 answers to an earlier version of this exercise are kept and not counted.',
  );
  expect(otherVersionsWords({ earlier: 2, later: 1 })).toBe(
    '2 answers to an earlier version of this exercise and 1 answer to a later version of this exercise are kept and not counted.',
  );
});

test('[hand] what is said about links, and how a seed is named', () => {
  expect(linkVersionWords('same')).toBe('');
  expect(linkVersionWords('earlier')).toContain('made anew');
  expect(linkVersionWords('later')).toContain('Load the page again');
  expect(linkVersionWords('unreadable')).toContain('cannot be read');
  expect(seedWords(345, 1)).toBe('Seed 345.');
  expect(seedWords(345, 2)).toBe('Seed 345, version 2.');
});
