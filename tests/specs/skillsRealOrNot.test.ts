import { expect, test } from 'vitest';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { realOrNot } from '#skills/mapping/realOrNot.ts';
import { realOrNotWords } from '#words/skills/realOrNot.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(realOrNot, realOrNotWords, seed);
});

test('[hand] the printed formula, worked out from the givens as they stand on the page, gives the same verdict', () => {
  for (const seed of seeds) {
    const { differenceMm, temMm, readings, budgetMm, kAll, mostSeeMm } = realOrNot.given(seed);
    const needed = kAll * Math.sqrt(2 * (temMm ** 2 / readings + budgetMm ** 2));
    const band = differenceMm <= needed ? 'not-shown' : differenceMm < mostSeeMm ? 'few-see' : 'most-see';
    const answer = realOrNot.answer(realOrNot.given(seed));
    if (answer.kind !== 'choice') throw new Error('not a choice');
    expect(answer.correct, `seed ${seed}`).toBe(`${band}@${needed.toFixed(2)}`);
  }
});

test('[property] all three verdicts come often, and a wrong factor often gives the wrong verdict', () => {
  const bands = { 'not-shown': 0, 'few-see': 0, 'most-see': 0 };
  let turned = 0;
  for (const seed of seeds) {
    const given = realOrNot.given(seed);
    const answer = realOrNot.answer(given);
    if (answer.kind !== 'choice') continue;
    const band =
      (['not-shown', 'few-see', 'most-see'] as const).find((name) => answer.correct.startsWith(name)) ??
      'not-shown';
    bands[band]++;
    if (
      answer.options.some(
        (option) => option !== 'equal' && !option.endsWith('@3.00') && !option.startsWith(band),
      )
    )
      turned++;
  }
  for (const count of Object.values(bands)) expect(count).toBeGreaterThan(150);
  expect(turned).toBeGreaterThan(450);
});

test('[hand] the bar of seeing is the fact of the library', () => {
  expect(realOrNot.given(0).mostSeeMm).toBe(mappingFacts['most-see-mm'].value);
});
