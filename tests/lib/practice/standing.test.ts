import { expect, test } from 'vitest';
import type { Answered } from '#lib/practice/progress.ts';
import { standingIn } from '#lib/practice/standing.ts';
import { cleanAnswer as clean } from './cleanAnswer.ts';

const after = (...answers: readonly Partial<Answered>[]) =>
  standingIn(
    { schema: 2, answers: answers.map((answer, i) => ({ ...clean, atMs: i, ...answer })) },
    { id: 'tilt', version: 1 },
  );

test('[hand] clean is solved at once, whole and without a hint; anything less stays, not solved steps down', () => {
  expect(after({}).rung).toBe('mixed');
  expect(after({ hints: 1 }).rung).toBe('bare');
  expect(after({ credit: 0.5 }).rung).toBe('bare');
  expect(after({ solved: false }).rung).toBe('two-blank');
  expect(after({ solved: false, credit: 0 }).rung).toBe('two-blank');
  expect(after({}, { solved: false }, { hints: 1 })).toMatchObject({ done: 3, right: 2 });
});

test('[hand] reviews begin with a clean answer on any unaided rung, a day later; a wrong one begins them again', () => {
  for (const rung of ['bare', 'mixed', 'review'] as const)
    expect(after({ rung }).review, rung).toEqual({ stage: 0, due: '2026-03-02' });
  for (const rung of ['worked', 'last-blank', 'two-blank'] as const)
    expect(after({ rung }).review, rung).toBeUndefined();
  expect(after({ hints: 1 }).review).toBeUndefined();
  // Due on the second: right then, three days on; wrong then, tomorrow.
  expect(after({}, { day: '2026-03-02' }).review).toEqual({ stage: 1, due: '2026-03-05' });
  expect(after({}, { day: '2026-03-02' }, { day: '2026-03-05', solved: false }).review).toEqual({
    stage: 0,
    due: '2026-03-06',
  });
  expect(after({}, { day: '2026-03-02', hints: 1 }).review).toEqual({ stage: 0, due: '2026-03-03' });
});
