import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linkVersion, versionInLink } from '#lib/practice/linkVersion.ts';
import { otherVersions } from '#lib/practice/otherVersions.ts';
import { mergeProgress, newAnswers, progressSchema, readProgress } from '#lib/practice/progress.ts';
import type { Answered, Progress } from '#lib/practice/progress.ts';
import { standingIn } from '#lib/practice/standing.ts';
import { addToStored } from '#lib/practice/stored.ts';
import { cleanAnswer as answer } from './cleanAnswer.ts';

const progressOf = (answers: readonly Answered[]): Progress => ({ schema: progressSchema, answers });
const some = fc.array(
  fc
    .record({
      version: fc.integer({ min: 1, max: 3 }),
      atMs: fc.integer({ min: 0, max: 20 }),
      solved: fc.boolean(),
      rung: fc.constantFrom('last-blank', 'bare', 'mixed', 'review'),
    })
    .map((part): Answered => ({
      ...answer,
      ...part,
      rung:
        part.rung === 'last-blank'
          ? 'last-blank'
          : part.rung === 'bare'
            ? 'bare'
            : part.rung === 'mixed'
              ? 'mixed'
              : 'review',
    })),
  { maxLength: 12 },
);

/** A copy as the site saved it before exercises had versions, written out by hand. */
const schema1 = `{
 "schema": 1,
 "answers": [
  { "skill": "tilt", "seed": 616, "day": "2026-03-01", "atMs": 1772352000000, "rung": "last-blank", "credit": 1, "tries": 1, "hints": 0, "solved": true },
  { "skill": "tilt", "seed": 12, "day": "2026-03-01", "atMs": 1772352060000, "rung": "two-blank", "credit": 0.5, "tries": 2, "hints": 1, "solved": true, "slip": "swapped" }
 ]
}`;

test('[hand] a copy from before there were versions is read: its answers are of the first, and adding it twice adds nothing', () => {
  const read = readProgress(JSON.parse(schema1));
  if (!read.ok) throw new Error(read.reason);
  expect(read.dropped).toBe(0);
  expect(read.progress.schema).toBe(2);
  expect(read.progress.answers.map(({ seed, version, slip }) => ({ seed, version, slip }))).toEqual([
    { seed: 616, version: 1, slip: undefined },
    { seed: 12, version: 1, slip: 'swapped' },
  ]);
  expect(standingIn(read.progress, { id: 'tilt', version: 1 })).toMatchObject({ done: 2, right: 2 });
  const stored = addToStored(JSON.parse(schema1), read.progress);
  expect(stored).toEqual({ ok: true, stored: read.progress });
});

test('[hand] an answer of the same seed and moment in two versions is two answers', () => {
  const both = mergeProgress(progressOf([answer]), progressOf([{ ...answer, version: 2 }]));
  expect(both.answers).toHaveLength(2);
  expect(newAnswers(progressOf([answer]), both)).toBe(1);
});

test("[hand] answers to an earlier version count for nothing of today's: not done, not right, not due, no rung", () => {
  const climbed = progressOf([1, 2, 3].map((atMs) => ({ ...answer, atMs })));
  expect(standingIn(climbed, { id: 'tilt', version: 1 })).toMatchObject({
    done: 3,
    right: 3,
    rung: 'mixed',
    review: { stage: 0 },
  });
  expect(standingIn(climbed, { id: 'tilt', version: 2 })).toEqual({ rung: 'last-blank', done: 0, right: 0 });
  expect(otherVersions(climbed, { id: 'tilt', version: 2 })).toEqual({ earlier: 3, later: 0 });
  expect(otherVersions(climbed, { id: 'tilt', version: 1 })).toEqual({ earlier: 0, later: 0 });
});

test("[property] a standing is that of its own version's answers alone, and every answer is either counted or said to be kept", () => {
  fc.assert(
    fc.property(some, fc.integer({ min: 1, max: 3 }), (answers, version) => {
      const progress = mergeProgress(progressOf(answers), progressOf([]));
      const skill = { id: 'tilt', version };
      const standing = standingIn(progress, skill);
      expect(standing).toEqual(
        standingIn(progressOf(progress.answers.filter((one) => one.version === version)), skill),
      );
      const { earlier, later } = otherVersions(progress, skill);
      expect(standing.done + earlier + later).toBe(progress.answers.length);
    }),
    { seed: 11 },
  );
});

test('[property] versions come back through a text file', () => {
  fc.assert(
    fc.property(some, (answers) => {
      const progress = mergeProgress(progressOf(answers), progressOf([]));
      expect(readProgress(JSON.parse(JSON.stringify(progress)))).toEqual({ ok: true, progress, dropped: 0 });
    }),
    { seed: 12 },
  );
});

test("[hand] a link without a version is of the first; what it was made for is said against today's", () => {
  expect([null, '1', '2', '3'].map((text) => linkVersion(text, 2))).toEqual([
    'earlier',
    'earlier',
    'same',
    'later',
  ]);
  expect([null, '1', '2'].map((text) => linkVersion(text, 1))).toEqual(['same', 'same', 'later']);
  for (const text of ['', '0', '-1', '1.5', '01', 'x', '1000', ' 1'])
    expect(linkVersion(text, 1), text).toBe('unreadable');
});

test("[property] a link made today is read as today's, and in the first version it is written as it always was", () => {
  expect(versionInLink(1)).toBe('');
  for (let version = 1; version < 1000; version++) {
    const link = new URLSearchParams(`seed=3${versionInLink(version)}`);
    expect(linkVersion(link.get('version'), version)).toBe('same');
    expect(linkVersion(link.get('version'), version + 1)).toBe('earlier');
  }
});
