import { expect, test } from 'vitest';
import { inkLabel } from '#skills/colour/inkLabel.ts';
import { inkLabelWords, labelLines, type InkLabelGiven } from '#words/skills/inkLabel.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const right = (given: InkLabelGiven) => {
  const answer = inkLabel.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(inkLabel, inkLabelWords, seed);
});

test('[property] all five answers come often, and the last month itself is often today’s', () => {
  const givens = seeds.map((seed) => inkLabel.given(seed));
  for (const answer of ['none', 'no-use', 'no-lot', 'no-list', 'past'])
    expect(givens.filter((given) => right(given) === answer).length, answer).toBeGreaterThan(150);
  const inItsLast = givens.filter(
    ({ label: { last }, today }) => last.year === today.year && last.month === today.month,
  );
  expect(inItsLast.length).toBeGreaterThan(300);
  for (const given of inItsLast) expect(right(given)).not.toBe('past');
  for (const given of givens) expect(given.fault).toBe(right(given));
});

test('[hand] item number for a lot; praise for a list; the end of March on 30 March and on 1 April', () => {
  const label = { saysUse: true, hasLot: true, listsIngredients: true, last: { year: 2027, month: 3 } };
  const base: InkLabelGiven = {
    label,
    today: { year: 2027, month: 3, day: 30 },
    number: 'K1234',
    pigments: ['77492', '77499', '77491'],
    badge: '“Vegan”',
    fault: 'none',
  };
  expect(right(base)).toBe('none');
  expect(right({ ...base, today: { year: 2027, month: 4, day: 1 } })).toBe('past');
  expect(right({ ...base, label: { ...label, hasLot: false } })).toBe('no-lot');
  expect(labelLines({ ...base, label: { ...label, hasLot: false } })[2]?.text).toBe('Item no. K1234');
  expect(labelLines(base)[3]?.text).toBe('Ingredients: water, glycerol, CI 77492, CI 77499, CI 77491');
});
