import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSeed, itemSeed } from '#lib/practice/itemSeed.ts';
import { mergeProgress, newAnswers, noProgress, readProgress } from '#lib/practice/progress.ts';
import type { Answered, Progress } from '#lib/practice/progress.ts';
import { standingIn } from '#lib/practice/standing.ts';
import { cleanAnswer as answer } from './cleanAnswer.ts';

const tilt = { id: 'tilt', version: 1 };
const at = (atMs: number, more: Partial<Answered> = {}): Answered => ({ ...answer, atMs, ...more });
const progressOf = (...answers: readonly Answered[]): Progress => ({ schema: 2, answers });

test('[property] merging is a union: either order, any grouping, twice is once', () => {
  const some = fc
    .array(
      fc.integer({ min: 0, max: 12 }).map((n) => at(n, { seed: n % 3 })),
      { maxLength: 8 },
    )
    .map((list) => progressOf(...list));
  fc.assert(
    fc.property(some, some, some, (a, b, c) => {
      const union = mergeProgress(mergeProgress(a, b), c);
      expect(mergeProgress(c, mergeProgress(b, a))).toEqual(union);
      expect(mergeProgress(union, union)).toEqual(union);
      expect(newAnswers(union, a)).toBe(0);
    }),
    { seed: 9 },
  );
});

test('[hand] what was written comes back through a text file', () => {
  const progress = progressOf(at(1), at(2, { slip: 'used-the-nose', credit: 0.5, tries: 2 }));
  expect(readProgress(JSON.parse(JSON.stringify(progress)))).toEqual({ ok: true, progress, dropped: 0 });
});

test('[hand] newer data is left alone, anything else is not taken for progress', () => {
  expect(readProgress({ schema: 3, answers: [] })).toEqual({ ok: false, reason: 'newer-schema', schema: 3 });
  for (const value of [
    null,
    undefined,
    3,
    'x',
    [],
    {},
    { schema: 0, answers: [] },
    { schema: 1 },
    { schema: -1 },
    { schema: 'one' },
  ]) {
    expect(readProgress(value)).toEqual({ ok: false, reason: 'not-progress' });
  }
});

test('[hand] spoilt entries are dropped and counted, good ones kept', () => {
  const spoilt: readonly unknown[] = [
    { ...answer, credit: 2 },
    { ...answer, credit: Number.NaN },
    { ...answer, day: '2026-02-30' },
    { ...answer, rung: 'sky' },
    { ...answer, skill: '<img>' },
    { ...answer, seed: 1000 },
    { ...answer, seed: 1.5 },
    { ...answer, version: 0 },
    { ...answer, version: 1.5 },
    { ...answer, version: '2' },
    { ...answer, version: 1000 },
    { ...answer, slip: 7 },
    { ...answer, solved: 'yes' },
    null,
  ];
  const read = readProgress({ schema: 2, answers: [answer, ...spoilt] });
  expect(read).toEqual({ ok: true, progress: progressOf(answer), dropped: spoilt.length });
});

test('[property] 100,000 hostile values: no throw, and what is accepted is whole', () => {
  const hostile = fc.oneof(
    fc.anything(),
    fc.record({ schema: fc.constantFrom(0, 1, 2, 3), answers: fc.array(fc.anything(), { maxLength: 2 }) }),
    fc.record({
      schema: fc.constantFrom(1, 2),
      answers: fc.array(
        fc.record({
          skill: fc.constantFrom('tilt', '__proto__'),
          version: fc.constantFrom(undefined, 1, 2, 0, 1.5, 'x'),
          seed: fc.integer({ min: -2, max: 1002 }),
          day: fc.constantFrom('2026-03-01', 'x'),
          atMs: fc.double(),
          rung: fc.constantFrom('bare', 'top'),
          credit: fc.double({ min: -1, max: 2 }),
          tries: fc.nat(),
          hints: fc.nat(3),
          solved: fc.boolean(),
        }),
        { maxLength: 2 },
      ),
    }),
  );
  fc.assert(
    fc.property(hostile, (value) => {
      const read = readProgress(value);
      if (read.ok)
        for (const { credit, seed, version } of read.progress.answers)
          expect(credit >= 0 && credit <= 1 && seed < 1000 && (version === 1 || version === 2)).toBe(true);
    }),
    { seed: 1, numRuns: 100_000 },
  );
});

test('[hand] standing: three clean answers climb to bare, then review begins', () => {
  const climb = progressOf(at(1, { rung: 'last-blank' }), at(2, { rung: 'two-blank' }));
  expect(standingIn(climb, tilt)).toEqual({ rung: 'bare', done: 2, right: 2 });
  const bare = mergeProgress(climb, progressOf(at(3)));
  expect(standingIn(bare, tilt)).toEqual({
    rung: 'mixed',
    done: 3,
    right: 3,
    review: { stage: 0, due: '2026-03-02' },
  });
  const failed = mergeProgress(
    bare,
    progressOf(at(4, { rung: 'mixed', day: '2026-03-02', credit: 0, solved: false })),
  );
  expect(standingIn(failed, tilt)).toEqual({
    rung: 'bare',
    done: 4,
    right: 3,
    review: { stage: 0, due: '2026-03-03' },
  });
  expect(standingIn(failed, { ...tilt, id: 'other' })).toEqual({ rung: 'last-blank', done: 0, right: 0 });
  expect(standingIn(noProgress, tilt, 'bare').rung).toBe('bare');
});

test('[hand] a helped first answer opens no review', () => {
  expect(standingIn(progressOf(at(1, { hints: 1 })), tilt)).toEqual({ rung: 'bare', done: 1, right: 1 });
});

test('[property] item seeds stay in the tested range and spread over it', () => {
  const seeds = Array.from({ length: 4000 }, (_, i) => itemSeed('class-a', 'learner-7', 'tilt', i));
  expect(Math.min(...seeds)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...seeds)).toBeLessThan(1000);
  expect(new Set(seeds).size).toBeGreaterThan(950);
  expect(itemSeed('class-a', 'learner-7', 'tilt', 3)).toBe(seeds[3]);
});

test('[hand] seeds in an address', () => {
  expect(['0', '7', '999', '1000', '-1', '1.5', '', 'x', null].map(readSeed)).toEqual([
    0,
    7,
    999,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
