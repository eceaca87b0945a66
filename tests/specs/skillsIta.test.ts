import { expect, test } from 'vitest';
import { ita as itaOf } from '#lib/colour/spaces/ita.ts';
import { ita } from '#skills/colour/ita.ts';
import { itaWords, type ItaGiven } from '#words/skills/ita.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(ita, itaWords, seed);
});

test('[property] deep and fair skins come alike', () => {
  const lightness = seeds.map((seed) => ita.given(seed).skinL);
  expect(Math.min(...lightness)).toBeLessThan(37);
  expect(Math.max(...lightness)).toBeGreaterThan(72);
  expect(lightness.filter((l) => l < 50).length).toBeGreaterThan(250);
  expect(lightness.filter((l) => l > 50).length).toBeGreaterThan(250);
});

test('[hand] the violinist, 62 over 10 over 17: arctan(12/17) = 35.2°, and every slip', () => {
  const given: ItaGiven = { client: 'violinist', skinL: 62, skinA: 10, skinB: 17 };
  const value = (id: string) => Number(ita.slips.find((slip) => slip.id === id)?.value(given));
  const answer = ita.answer(given);
  expect(answer.kind === 'number' && answer.exact).toBeCloseTo(35.2176, 4);
  expect(answer.kind === 'number' && answer.unit).toBe('°');
  expect(value('forgot-fifty')).toBeCloseTo(74.6667, 4);
  expect(value('used-red')).toBeCloseTo(50.1944, 4);
  expect(value('upside-down')).toBeCloseTo(54.7824, 4);
  expect(value('no-angle')).toBeCloseTo(0.7059, 4);
  expect(value('hue-angle')).toBeCloseTo(59.5345, 4);
});

test('[hand] the answer of every seed is the library’s angle', () => {
  for (const seed of seeds) {
    const given = ita.given(seed);
    const [answer, ours] = [ita.answer(given), itaOf({ l: given.skinL, b: given.skinB })];
    expect(
      answer.kind === 'number' && ours.ok && Math.abs(answer.exact - ours.deg) < 1e-9,
      `seed ${seed}`,
    ).toBe(true);
  }
});
