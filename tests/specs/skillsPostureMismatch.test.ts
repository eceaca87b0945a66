import { expect, test } from 'vitest';
import { postureMismatch } from '#skills/mapping/postureMismatch.ts';
import { postureMismatchWords } from '#words/skills/postureMismatch.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const correctOf = (given: Parameters<typeof postureMismatch.answer>[0]): string => {
  const answer = postureMismatch.answer(given);
  if (answer.kind !== 'choice') throw new Error('not a choice');
  return answer.correct;
};
const rest = { pose: 'rest', posture: 'sitting', skin: 'normal' } as const;
const lying = { ...rest, posture: 'lying' } as const;

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(postureMismatch, postureMismatchWords, seed);
});

test('[hand] one lying, one sitting: refused, whatever the number; both lying: compared', () => {
  const heights = { side: 'left', thenMm: 20, nowMm: 23, realMm: 0.8 } as const;
  expect(correctOf({ ...heights, then: rest, now: lying })).toBe('posture');
  expect(correctOf({ ...heights, then: lying, now: rest, nowMm: 20.1 })).toBe('posture');
  expect(correctOf({ ...heights, then: lying, now: lying })).toBe('moved');
  expect(correctOf({ ...heights, then: lying, now: lying, nowMm: 19.3 })).toBe('not-shown');
  expect(correctOf({ ...heights, then: lying, now: lying, nowMm: 19.1 })).toBe('moved');
  expect(correctOf({ ...heights, then: rest, now: { ...rest, pose: 'frown' } })).toBe('pose');
  expect(correctOf({ ...heights, then: { ...rest, skin: 'swollen' }, now: rest })).toBe('skin');
});

test('[hand] worked from what stands on the page, the answer is the same', () => {
  for (const seed of seeds) {
    const given = postureMismatch.given(seed);
    const parts = (['pose', 'posture', 'skin'] as const).filter(
      (part) => given.then[part] !== given.now[part],
    );
    expect(parts.length, `seed ${seed}`).toBeLessThanOrEqual(1);
    const size = Math.abs(Number((given.nowMm - given.thenMm).toFixed(1)));
    expect(size, `seed ${seed}`).toBeGreaterThan(0);
    expect(Math.abs(size - given.realMm), `seed ${seed}`).toBeGreaterThan(0.1);
    expect(correctOf(given), `seed ${seed}`).toBe(parts[0] ?? (size > given.realMm ? 'moved' : 'not-shown'));
  }
});

test('[property] all five answers come often; sets that are alike but not at rest are among those compared', () => {
  const counts = new Map<string, number>();
  let alikeElsewhere = 0;
  for (const seed of seeds) {
    const given = postureMismatch.given(seed);
    const correct = correctOf(given);
    counts.set(correct, (counts.get(correct) ?? 0) + 1);
    if ((correct === 'moved' || correct === 'not-shown') && given.then.posture === 'lying') alikeElsewhere++;
  }
  for (const code of ['moved', 'not-shown', 'pose', 'posture', 'skin'])
    expect(counts.get(code) ?? 0, code).toBeGreaterThan(90);
  expect(alikeElsewhere).toBeGreaterThan(50);
});
