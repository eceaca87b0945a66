import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readProgress } from '#lib/practice/progress.ts';
import type { Progress } from '#lib/practice/progress.ts';
import { addToStored } from '#lib/practice/stored.ts';
import { cleanAnswer as answer } from './cleanAnswer.ts';

const progressOf = (...atMs: readonly number[]): Progress => ({
  schema: 2,
  answers: atMs.map((at) => ({ ...answer, atMs: at })),
});

test('[hand] empty storage, then a second tab adds its own', () => {
  const first = addToStored(undefined, progressOf(1));
  if (!first.ok) throw new Error('refused');
  expect(first.stored).toEqual(progressOf(1));
  expect(addToStored(first.stored, progressOf(2))).toEqual({ ok: true, stored: progressOf(1, 2) });
});

test('[hand] newer contents are refused, whatever is added', () => {
  expect(addToStored({ schema: 9, answers: 'unknown' }, progressOf(1))).toEqual({
    ok: false,
    reason: 'newer-schema',
    schema: 9,
  });
});

test('[hand] half-written contents: the good entries count, the whole is kept aside once', () => {
  const spoilt = { schema: 1, answers: [answer, { skill: 'ti' }] };
  const once = addToStored(spoilt, progressOf(8));
  if (!once.ok) throw new Error('refused');
  expect(once.stored).toEqual({ ...progressOf(5, 8), aside: [spoilt] });
  expect(addToStored(once.stored, progressOf(9))).toEqual({
    ok: true,
    stored: { ...progressOf(5, 8, 9), aside: [spoilt] },
  });
});

test('[property] whatever was there is still there, and what was added can be read back', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (found) => {
      const result = addToStored(found, progressOf(1));
      if (!result.ok) return;
      const read = readProgress(result.stored);
      expect(read.ok && read.dropped === 0 && read.progress.answers.length >= 1).toBe(true);
      const isKept =
        found === null ||
        readProgress(found).ok ||
        (result.stored.aside ?? []).some((kept) => JSON.stringify(kept).length > 0);
      expect(isKept).toBe(true);
    }),
    { seed: 4, numRuns: 5000 },
  );
});
