import { expect, test } from 'vitest';
import { greenTrap } from '#skills/colour/greenTrap.ts';
import { trapCases, trapDoses, trapMixes } from '#skills/colour/trapCases.ts';
import { trapCasesOfModel } from '#tests/tools/colourCases.ts';
import { greenTrapWords, type GreenTrapGiven } from '#words/skills/greenTrap.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const rightOf = (given: GreenTrapGiven) => {
  const answer = greenTrap.answer(given);
  return answer.kind === 'choice' ? answer.correct : '';
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(greenTrap, greenTrapWords, seed);
});

test('[property] the changes kept with the cases are those of the model, to a tenth', () => {
  expect(trapCasesOfModel()).toEqual(trapCases);
});

test('[property] yellow alone never makes grey-blue green, equal drops of yellow and iron black do on light to tan skin and on no deeper one', () => {
  for (const { old, skin, today, moves } of trapCases.filter((one) => one.old === 'grey-blue')) {
    const lowest = (mix: (typeof trapMixes)[number]) =>
      Math.min(...(moves[trapMixes.indexOf(mix)] ?? []).map(([a]) => today[1] + a));
    expect(lowest('yellow'), `${old}, L* ${skin[0]}`).toBeGreaterThan(0);
    expect(lowest('equal-black') < 0, `${old}, L* ${skin[0]}`).toBe(skin[0] >= 54);
    expect(lowest('with-orange'), `${old}, L* ${skin[0]}`).toBeGreaterThan(lowest('equal-black'));
  }
});

test('[property] skins come equally often, "none" in a fair share, and every mix but one is right now and then', () => {
  const givens = seeds.map((seed) => greenTrap.given(seed));
  for (const l of [72, 63, 54, 45, 36])
    expect(givens.filter(({ skin }) => skin[0] === l).length, `L* ${l}`).toBeGreaterThan(150);
  const rights = givens.map(rightOf);
  expect(rights.filter((right) => right === 'none').length).toBeGreaterThan(180);
  expect(rights.filter((right) => right === 'none').length).toBeLessThan(330);
  for (const id of ['little-black', 'equal-black', 'much-black'] as const)
    expect(rights.filter((right) => right === id).length, id).toBeGreaterThan(20);
  expect(rights).toContain('yellow');
  for (const { mixes } of givens)
    expect(mixes.every(({ dose }) => trapDoses.some((one) => one === dose))).toBe(true);
});

test('[hand] 0.3 − 0.4 = −0.1 is green; 0.3 + 0.9 and 0.3 − 0.2 are not', () => {
  const given: GreenTrapGiven = {
    client: 'weaver',
    old: 'grey-blue',
    skin: [63, 10, 19],
    today: [46, 0.3, -2],
    mixes: [
      { id: 'yellow', dose: 0.4, move: [0.9, 5] },
      { id: 'equal-black', dose: 0.2, move: [-0.2, 2] },
      { id: 'much-black', dose: 0.6, move: [-0.4, 1] },
    ],
  };
  expect(rightOf(given)).toBe('much-black');
  expect(greenTrap.steps(given)[0]?.values['sums']).toBe(
    '0.3 + 0.9 = 1.2; 0.3 − 0.2 = 0.1; 0.3 − 0.4 = −0.1',
  );
  expect(rightOf({ ...given, mixes: given.mixes.slice(0, 2) })).toBe('none');
});
