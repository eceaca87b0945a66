import { expect, test } from 'vitest';
import { browAfterFirstPass } from '#lib/mapping/again/afterFirstPass.ts';
import type { Brow } from '#lib/mapping/brow.ts';
import { forBrowMarks } from '#lib/mapping/browRecord.ts';
import { afterTheFirstPass } from '#skills/mapping/afterTheFirstPass.ts';
import { type AfterTheFirstPassGiven, afterTheFirstPassWords, nextSteps } from '#words/skills/afterTheFirstPass.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const stepOf = (given: AfterTheFirstPassGiven) => {
  const answer = afterTheFirstPass.answer(given);
  return answer.kind === 'choice' ? answer.correct : 'not a choice';
};

test('[property] every seed 0 to 999 has one right answer, every other choice is named, and says so', () => {
  for (const seed of seeds) checkSeed(afterTheFirstPass, afterTheFirstPassWords, seed);
});

test('[hand] upper and lower edges, swollen skin, another position', () => {
  const base = { mark: 'archTop', approvedMm: 33, pigmentMm: 31.5, realFromMm: 0.7, chaseFromMm: 1, now: { pose: 'rest', posture: 'sitting', skin: 'swollen' } } as const;
  expect(stepOf(base)).toBe('add-here');
  expect(stepOf({ ...base, mark: 'archLower' })).toBe('stop-over');
  expect(stepOf({ ...base, pigmentMm: 34.5 })).toBe('stop-over');
  expect(stepOf({ ...base, mark: 'frontLower', pigmentMm: 34.5 })).toBe('add-here');
  expect(stepOf({ ...base, pigmentMm: 32.1 })).toBe('stop-swollen');
  expect(stepOf({ ...base, pigmentMm: 32.1, now: { ...base.now, skin: 'numb' } })).toBe('add-here');
  expect(stepOf({ ...base, pigmentMm: 32.5 })).toBe('stop-not-shown');
  expect(stepOf({ ...base, pigmentMm: 33.5 })).toBe('stop-not-shown');
  expect(stepOf({ ...base, now: { ...base.now, posture: 'lying' } })).toBe('measure-again');
  expect(stepOf({ ...base, now: { ...base.now, pose: 'raised' } })).toBe('measure-again');
});

test('[property] the answer is the library’s for the whole brow, for every seed', () => {
  const reading = { temMm: 1, readings: 1, budgetMm: 0 };
  for (const seed of seeds) {
    const given = afterTheFirstPass.given(seed);
    // Error chosen so that 1.96 √2 of it is what the problem calls real.
    const temMm = given.realFromMm / (1.959963984540054 * Math.SQRT2);
    const brow = (vMm: number): Brow => forBrowMarks((mark) => ({ uMm: 0, vMm: mark === given.mark ? vMm : 0 }));
    const again = browAfterFirstPass(brow(given.approvedMm), brow(given.pigmentMm), { approved: { pose: 'rest', posture: 'sitting', skin: 'normal' }, now: given.now }, { reading: { ...reading, temMm }, comparisons: 1, chaseFromMm: given.chaseFromMm });
    const step = again.ok ? again.marks[given.mark].step : undefined;
    expect(stepOf(given), String(seed)).toBe(step === undefined ? 'measure-again' : step.do === 'add-here' ? 'add-here' : `stop-${step.because}`);
  }
});

test('[property] each of the five right answers comes on at least one seed in ten; hiding it never', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) counts.set(stepOf(afterTheFirstPass.given(seed)), (counts.get(stepOf(afterTheFirstPass.given(seed))) ?? 0) + 1);
  for (const code of nextSteps.filter((step) => step !== 'hide-it')) expect(counts.get(code), code).toBeGreaterThan(100);
  expect(counts.get('hide-it')).toBeUndefined();
});

test('[property] no degenerate picture: gaps of 0.1 to 3 mm', () => {
  for (const seed of seeds) {
    const { approvedMm, pigmentMm } = afterTheFirstPass.given(seed);
    expect(Math.abs(approvedMm - pigmentMm)).toBeGreaterThan(0.05);
    expect(Math.abs(approvedMm - pigmentMm)).toBeLessThan(3);
  }
});
