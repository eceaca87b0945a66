import type { Answered } from '#lib/practice/progress.ts';

/** An answer that was right at once, without a hint. */
export const cleanAnswer: Answered = {
  skill: 'tilt',
  version: 1,
  seed: 4,
  day: '2026-03-01',
  atMs: 5,
  rung: 'bare',
  credit: 1,
  tries: 1,
  hints: 0,
  solved: true,
};
