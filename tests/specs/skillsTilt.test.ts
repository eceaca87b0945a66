import { expect, test } from 'vitest';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { tilt } from '#skills/mapping/tilt.ts';
import { tiltWords } from '#words/skills/tilt.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(tilt, tiltWords, seed);
});

test('[hand] the sum on the page, 0.01745 for each degree, gives the same answer to half the tolerance', () => {
  for (const seed of seeds) {
    const given = tilt.given(seed);
    const answer = tilt.answer(given);
    if (answer.kind !== 'number') throw new Error('not a number');
    const byHand =
      given.asks === 'height'
        ? given.spanMm * 0.01745 * given.tiltDeg
        : given.heightMm / given.spanMm / 0.01745;
    expect(Math.abs(byHand - answer.exact), `seed ${seed}`).toBeLessThan(0.05);
    expect(answer.unit).toBe(given.asks === 'height' ? 'mm' : '°');
  }
});

test('[hand] half the span is half the height and twice the tilt; the whole sum of a degree over 82 mm is the fact', () => {
  const value = (id: string, given: Parameters<typeof tilt.answer>[0]) =>
    Number(tilt.slips.find((slip) => slip.id === id)?.value(given));
  const height = { between: 'arches', spanMm: 82, asks: 'height', tiltDeg: 1 } as const;
  const answer = tilt.answer(height);
  expect(answer.kind === 'number' && answer.exact).toBeCloseTo(mappingFacts['tilt-1-deg-fakes-mm'].value, 2);
  expect(value('half-span', height)).toBeCloseTo(0.7156, 3);
  expect(value('doubled', height)).toBeCloseTo(2.862, 3);
  expect(value('per-cent', height)).toBeCloseTo(0.82, 10);
  expect(value('as-it-stands', height)).toBe(1);
  expect(value('radians', height)).toBeCloseTo(82 * 0.841471, 4);
  const back = { between: 'arches', spanMm: 100, asks: 'tilt', heightMm: 3.49 } as const;
  const angle = tilt.answer(back);
  expect(angle.kind === 'number' && angle.exact).toBeCloseTo(2, 3);
  expect(value('half-span', back)).toBeCloseTo(4.002, 2);
  expect(value('doubled', back)).toBeCloseTo(1, 3);
  expect(value('per-cent', back)).toBeCloseTo(3.49, 10);
  expect(value('as-it-stands', back)).toBe(3.49);
  expect(value('radians', back)).toBeCloseTo(0.0349, 4);
});

test('[property] both ways are asked often, over all three spans', () => {
  const count = (is: (given: ReturnType<typeof tilt.given>) => boolean) =>
    seeds.filter((seed) => is(tilt.given(seed))).length;
  expect(count(({ asks }) => asks === 'tilt')).toBeGreaterThan(200);
  expect(count(({ asks }) => asks === 'height')).toBeGreaterThan(400);
  for (const between of ['fronts', 'arches', 'tails'])
    expect(count((given) => given.between === between)).toBeGreaterThan(100);
});
