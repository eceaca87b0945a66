import { expect, test } from 'vitest';
import { restOrRaised } from '#skills/mapping/restOrRaised.ts';
import { restOrRaisedWords } from '#words/skills/restOrRaised.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const correctOf = (given: Parameters<typeof restOrRaised.answer>[0]): string => {
  const answer = restOrRaised.answer(given);
  if (answer.kind !== 'choice') throw new Error('not a choice');
  return answer.correct;
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(restOrRaised, restOrRaisedWords, seed);
});

test('[hand] the right reading is the one whose three words are all good; news of moving brows outranks it', () => {
  for (const seed of seeds) {
    const given = restOrRaised.given(seed);
    const good = given.readings.flatMap(({ pose, posture, skin }, i) => ((pose === 'rest' || pose === 'eyes-closed') && posture === 'sitting' && skin === 'normal' ? [`reading-${i + 1}`] : []));
    expect(good.length, `seed ${seed}`).toBeLessThanOrEqual(1);
    const expected = given.news === 'toxin' || given.news === 'dropped' ? 'not-yet' : (good[0] ?? 'read-again');
    expect(correctOf(given), `seed ${seed}`).toBe(expected);
  }
});

test('[property] each of the five answers comes often, and the brows nearest to equal are often the wrong ones to map', () => {
  const counts = new Map<string, number>();
  let tempting = 0;
  for (const seed of seeds) {
    const given = restOrRaised.given(seed);
    const correct = correctOf(given);
    counts.set(correct, (counts.get(correct) ?? 0) + 1);
    const apart = given.readings.map(({ rightMm, leftMm }) => Math.abs(leftMm - rightMm));
    if (correct !== `reading-${apart.indexOf(Math.min(...apart)) + 1}`) tempting++;
  }
  for (const code of ['reading-1', 'reading-2', 'reading-3', 'read-again', 'not-yet']) expect(counts.get(code) ?? 0, code).toBeGreaterThan(100);
  expect(tempting).toBeGreaterThan(600);
});

test('[property] heights are those of faces', () => {
  for (const seed of seeds) for (const { rightMm, leftMm } of restOrRaised.given(seed).readings) {
    expect(Math.min(rightMm, leftMm)).toBeGreaterThan(13);
    expect(Math.max(rightMm, leftMm)).toBeLessThan(28.5);
  }
});
