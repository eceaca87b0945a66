import { expect, test } from 'vitest';
import { browAfterFirstPass } from '#lib/mapping/again/afterFirstPass.ts';
import { acrossFrom } from '#lib/mapping/again/shortOfOutline.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { afterTheFirstPass } from '#skills/mapping/afterTheFirstPass.ts';
import {
  type AfterTheFirstPassGiven,
  afterTheFirstPassWords,
  nextSteps,
} from '#words/skills/afterTheFirstPass.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const stepOf = (given: AfterTheFirstPassGiven) => {
  const answer = afterTheFirstPass.answer(given);
  return answer.kind === 'choice' ? answer.correct : 'not a choice';
};

test('[property] every seed 0 to 999 has one right answer, every other choice is named, and says so', () => {
  for (const seed of seeds) checkSeed(afterTheFirstPass, afterTheFirstPassWords, seed);
});

test('[hand] upper and lower edges, swollen skin, another position, with the edge across on its line', () => {
  const onLine = { approvedMm: 27, pigmentMm: 27.1 };
  const base = {
    mark: 'archTop',
    approvedMm: 33,
    pigmentMm: 31.5,
    across: onLine,
    realFromMm: 0.7,
    chaseFromMm: 1,
    now: { pose: 'rest', posture: 'sitting', skin: 'swollen' },
  } as const;
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

test('[hand] 33.0 reads 31.5 and 27.0 reads 25.8: both moved, read again; 30.6 over 26.1: filled, the brow would be 6.9 where 6.0 was approved', () => {
  const base = {
    mark: 'archTop',
    approvedMm: 33,
    pigmentMm: 31.5,
    across: { approvedMm: 27, pigmentMm: 25.8 },
    realFromMm: 0.7,
    chaseFromMm: 1,
    now: { pose: 'rest', posture: 'sitting', skin: 'swollen' },
  } as const;
  expect(stepOf(base)).toBe('measure-again');
  expect(
    stepOf({
      ...base,
      mark: 'archLower',
      approvedMm: 27,
      pigmentMm: 25.8,
      across: { approvedMm: 33, pigmentMm: 31.5 },
    }),
  ).toBe('measure-again');
  expect(stepOf({ ...base, pigmentMm: 30.6, across: { approvedMm: 27, pigmentMm: 26.1 } })).toBe(
    'stop-thicker',
  );
  expect(afterTheFirstPassWords.option('measure-again', base)).toContain('level first');
  expect(afterTheFirstPassWords.slips['added-it']?.(base, 'Add here').text).toContain(
    'Both edges read lower',
  );
  expect(afterTheFirstPassWords.right(base, 'Read again')).not.toContain('two answers');
  expect(afterTheFirstPassWords.option('add-here', { ...base, mark: 'archLower' })).not.toContain('up to');
});

test('[property] the answer is the library’s for the whole brow, for every seed', () => {
  const reading = { temMm: 1, readings: 1, budgetMm: 0 };
  for (const seed of seeds) {
    const given = afterTheFirstPass.given(seed);
    // Error chosen so that 1.96 √2 of it is what the problem calls real.
    const temMm = given.realFromMm / (1.959963984540054 * Math.SQRT2);
    const across = acrossFrom(given.mark);
    const brow = (which: 'approvedMm' | 'pigmentMm'): Brow =>
      forBrowMarks((mark) => ({
        uMm: 0,
        vMm: mark === given.mark ? given[which] : mark === across ? given.across[which] : 0,
      }));
    const again = browAfterFirstPass(
      brow('approvedMm'),
      brow('pigmentMm'),
      { approved: { pose: 'rest', posture: 'sitting', skin: 'normal' }, now: given.now },
      { reading: { ...reading, temMm }, comparisons: 1, chaseFromMm: given.chaseFromMm },
    );
    const step = again.ok ? again.marks[given.mark].step : undefined;
    expect(stepOf(given), String(seed)).toBe(
      step === undefined || step.do === 'read-again'
        ? 'measure-again'
        : step.do === 'add-here'
          ? 'add-here'
          : `stop-${step.because}`,
    );
  }
});

test('[property] each of the six right answers comes on at least one seed in ten; hiding it never', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds)
    counts.set(
      stepOf(afterTheFirstPass.given(seed)),
      (counts.get(stepOf(afterTheFirstPass.given(seed))) ?? 0) + 1,
    );
  for (const code of nextSteps.filter((step) => step !== 'hide-it'))
    expect(counts.get(code), code).toBeGreaterThan(100);
  expect(counts.get('hide-it')).toBeUndefined();
});

test('[property] half of the readings to take again are of a place that moved as a whole, taken as she was when she approved', () => {
  const again = seeds
    .map((seed) => afterTheFirstPass.given(seed))
    .filter((given) => stepOf(given) === 'measure-again');
  const moved = again.filter(({ now }) => now.pose === 'rest' && now.posture === 'sitting');
  expect(moved.length).toBeGreaterThan(100);
  expect(again.length - moved.length).toBeGreaterThan(100);
});

test('[property] no degenerate picture: gaps of 0.1 to 3 mm, and a brow of 4 to 11 mm before and after', () => {
  for (const seed of seeds) {
    const { mark, approvedMm, pigmentMm, across } = afterTheFirstPass.given(seed);
    const isUpper = mark === 'archTop' || mark === 'frontTop';
    for (const thickness of [approvedMm - across.approvedMm, pigmentMm - across.pigmentMm].map((mm) =>
      isUpper ? mm : -mm,
    )) {
      expect(thickness, `seed ${seed}`).toBeGreaterThan(3);
      expect(thickness, `seed ${seed}`).toBeLessThan(11);
    }
    expect(Math.abs(approvedMm - pigmentMm)).toBeGreaterThan(0.05);
    expect(Math.abs(approvedMm - pigmentMm)).toBeLessThan(3);
  }
});
