import { expect, test } from 'vitest';
import { flippedSelfie } from '#skills/mapping/flippedSelfie.ts';
import { flippedSelfieWords, type FlippedSelfieGiven } from '#words/skills/flippedSelfie.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const right = (given: FlippedSelfieGiven) => {
  const answer = flippedSelfie.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(flippedSelfie, flippedSelfieWords, seed);
});

test('[property] both sides, mirrored and not, "nobody can tell" and widths all come often', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const given = flippedSelfie.given(seed);
    const key = `${right(given)}${given.signSide === given.signHalf ? ' mirrored' : ''}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  for (const key of ['left', 'right', 'left mirrored', 'right mirrored', 'cannot-tell', 'no-widths'])
    expect(counts.get(key) ?? 0, key).toBeGreaterThan(80);
});

test('[hand] the ferry pilot: her nose leans to her left; in the picture it leans left, so the picture is mirrored', () => {
  const given: FlippedSelfieGiven = {
    client: 'ferry pilot',
    thing: 'higher',
    thingHalf: 'left',
    amountMm: 1.8,
    sign: 'nose',
    signSide: 'left',
    signHalf: 'left',
  };
  expect(right(given)).toBe('left');
  expect(right({ ...given, thingHalf: 'right' })).toBe('right');
  expect(right({ ...given, signHalf: 'right' })).toBe('right');
  expect(right({ ...given, signHalf: 'right', thingHalf: 'right' })).toBe('left');
  expect(right({ ...given, signSide: 'not-written' })).toBe('cannot-tell');
  expect(right({ ...given, thing: 'longer' })).toBe('no-widths');
  expect(flippedSelfieWords.right(given, 'Her left brow is higher')).toBe(
    'Her left brow is higher. In her record her nose leans to her own left. In the picture the nose leans towards the left half. So the left half is her left: the picture is mirrored.',
  );
});
