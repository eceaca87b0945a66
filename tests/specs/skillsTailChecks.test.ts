import { vec2 } from 'gl-matrix';
import { expect, test } from 'vitest';
import { tailChecks } from '#skills/mapping/tailChecks.ts';
import { tailChecksWords } from '#words/skills/tailChecks.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const correctOf = (given: ReturnType<typeof tailChecks.given>) => {
  const answer = tailChecks.answer(given);
  if (answer.kind !== 'choice') throw new Error('not a choice');
  return answer.correct;
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(tailChecks, tailChecksWords, seed);
});

test('[library] the answers follow from the numbers by another way: vectors for the line, plain differences for the rest', () => {
  for (const seed of seeds) {
    const given = tailChecks.given(seed);
    const { wing, corner, tail, frontLower, frontTop, otherLengthMm } = given;
    const from = vec2.fromValues(wing.outMm, wing.upMm);
    // The point of the line at the tip's height, by mixing wing and corner.
    const at = vec2.lerp(
      vec2.create(),
      from,
      vec2.fromValues(corner.outMm, corner.upMm),
      (tail.upMm - wing.upMm) / (corner.upMm - wing.upMm),
    );
    const failed = [
      tail.outMm - (at[0] ?? 0) >= 1 ? 'past-line' : '',
      frontLower.upMm - tail.upMm >= 1 ? 'too-low' : '',
      tail.upMm - frontTop.upMm >= 1 ? 'too-high' : '',
      tail.outMm - frontLower.outMm - otherLengthMm >= 1 ? 'longer' : '',
    ].filter(Boolean);
    expect(failed.length, `seed ${seed}`).toBeLessThanOrEqual(1);
    expect(correctOf(given), `seed ${seed}`).toBe(failed[0] ?? 'passes');
  }
});

test('[property] every answer comes often; no seed is a close call; the tail lies outside the eye', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const given = tailChecks.given(seed);
    counts.set(correctOf(given), (counts.get(correctOf(given)) ?? 0) + 1);
    const over = given.tail.upMm - given.frontLower.upMm;
    const longer = given.tail.outMm - given.frontLower.outMm - given.otherLengthMm;
    for (const room of [over, given.frontTop.upMm - given.tail.upMm, -longer])
      expect(Math.abs(room + 1)).toBeGreaterThan(0.29);
    expect(given.tail.outMm).toBeGreaterThan(given.corner.outMm - 2);
  }
  expect(counts.size).toBe(5);
  for (const count of counts.values()) expect(count).toBeGreaterThan(130);
});

test('[hand] line from (20, −40) to (50, 0): 57.5 out at 10 up; each check at its own limit', () => {
  const at = (outMm: number, upMm: number) => ({ outMm, upMm });
  const given = {
    side: 'right',
    wing: at(20, -40),
    corner: at(50, 0),
    frontLower: at(16, 9),
    frontTop: at(17, 16),
    tail: at(56, 10),
    otherLengthMm: 40,
    limitMm: 1,
  } as const;
  expect(correctOf(given)).toBe('passes');
  expect(correctOf({ ...given, tail: at(58.5, 10), otherLengthMm: 42.5 })).toBe('past-line');
  expect(correctOf({ ...given, tail: at(58.4, 10), otherLengthMm: 42.5 })).toBe('passes');
  expect(correctOf({ ...given, tail: at(55, 8), otherLengthMm: 39 })).toBe('too-low');
  expect(correctOf({ ...given, tail: at(55, 8.1), otherLengthMm: 39 })).toBe('passes');
  expect(correctOf({ ...given, tail: at(56, 17) })).toBe('too-high');
  expect(correctOf({ ...given, tail: at(56, 16.9) })).toBe('passes');
  expect(correctOf({ ...given, otherLengthMm: 39 })).toBe('longer');
  expect(correctOf({ ...given, otherLengthMm: 39.1 })).toBe('passes');
  // A shorter brow breaks nothing here: the other one is the longer.
  expect(correctOf({ ...given, otherLengthMm: 43 })).toBe('passes');
});
