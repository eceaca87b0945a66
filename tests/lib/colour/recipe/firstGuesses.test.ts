import { expect, test } from 'vitest';
import { bottleOf } from '#lib/colour/pigment/bottles.ts';
import { mixWidth } from '#lib/colour/recipe/bandRows.ts';
import { addUp, firstGuesses } from '#lib/colour/recipe/firstGuesses.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const [black, red, white] = [
  bottleOf('black', { '77499': 1 }),
  bottleOf('red', { '77491': 1 }),
  bottleOf('white', { '77891': 1 }),
];
const base: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
  bottles: [black, red],
  ageing: startAgeing,
  doses: [0.1],
  times: [0],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 2,
  mostDrops: 1,
  mostWhiteShare: 1,
};
type Asked = Readonly<{ recipe: string; drops: number; dose: number; isRough: boolean }>;

/** Every recipe asked for and every score heard, where `score` says how far a recipe stays. */
function climb(
  task: Partial<RecipeTask>,
  score: (recipe: readonly number[], drops: number, dose: number, isRough: boolean) => number,
) {
  const asked: Asked[] = [];
  const heard: number[][] = [];
  firstGuesses(
    { ...base, ...task },
    (recipe, drops, dose, isRough) => {
      asked.push({ recipe: recipe.join(' '), drops, dose, isRough });
      return score(Array.from(recipe), drops, dose, isRough);
    },
    (...told) => heard.push(told),
  );
  const told = asked.filter(({ isRough }) => !isRough).map(({ recipe, dose }) => `${dose}: ${recipe}`);
  return { asked, heard, told, rough: asked.filter(({ isRough }) => isRough).map(({ recipe }) => recipe) };
}

test('[hand] each bottle is tried for the drop, then each drop in another bottle, until none of these is nearer', () => {
  // Scored by the drops of the first bottle alone: the more the nearer.
  expect(climb({ mostDrops: 2 }, ([first = 0]) => 10 - first)).toMatchObject({
    rough: ['1 0', '0 1', '0 1', '2 0', '1 1', '1 1'],
    told: ['0: 1 0', '0: 2 0'],
    heard: [
      [1, 1, 9],
      [2, 1, 8],
    ],
  });
  // The more of the second the nearer; from there the exchange back is asked for once, and climbing ends.
  expect(climb({}, ([, second = 0]) => 10 - second)).toMatchObject({
    rough: ['1 0', '0 1', '1 0'],
    told: ['0: 0 1'],
  });
  // Of equals the first is kept.
  expect(climb({}, () => 4)).toMatchObject({
    rough: ['1 0', '0 1', '0 1'],
    told: ['0: 1 0'],
    heard: [[1, 1, 4]],
  });
});

test('[hand] drops change bottles where that helps, and what is heard is the score in full', () => {
  // One drop is best in the first bottle, two in the second and the third: the first must be given up.
  const score = (
    [first = 0, second = 0, third = 0]: readonly number[],
    drops: number,
    _: number,
    isRough: boolean,
  ) =>
    (isRough ? 0 : 100) + (drops === 1 ? 10 - first : 10 + first - Math.min(second, 1) - Math.min(third, 1));
  expect(climb({ bottles: [black, red, white], mostDrops: 2 }, score)).toMatchObject({
    told: ['0: 1 0 0', '0: 0 1 1'],
    heard: [
      [1, 1, 109],
      [2, 2, 108],
    ],
  });
});

test('[hand] twelve exchanges at most: where thirteen would be needed, one drop stays behind', () => {
  // Even numbers of drops want all in the first bottle, odd ones in the second. From 0 and 13 a drop comes to
  // the first, and twelve more follow.
  const { told } = climb({ mostDrops: 14 }, ([first = 0, second = 0], drops) =>
    drops % 2 === 0 ? second : first,
  );
  expect(told.slice(11)).toEqual(['0: 12 0', '0: 0 13', '0: 13 1']);
});

test('[hand] only what the limits on bottles and on white allow is asked for; each dose starts anew', () => {
  // White is nearest, but at most half of the drops.
  const { asked, told } = climb(
    { bottles: [black, white], mostDrops: 4, mostWhiteShare: 0.5, doses: [0.1, 0.2] },
    ([, second = 0]) => 10 - second,
  );
  expect(told).toEqual(['0: 1 0', '0: 1 1', '0: 2 1', '0: 2 2', '1: 1 0', '1: 1 1', '1: 2 1', '1: 2 2']);
  expect(asked.filter(({ recipe }) => ['0 1', '0 2', '1 2', '0 3', '1 3', '0 4'].includes(recipe))).toEqual(
    [],
  );
  expect(
    asked.every(
      ({ recipe, drops }) => recipe.split(' ').reduce((sum, count) => sum + Number(count), 0) === drops,
    ),
  ).toBe(true);
  const single = climb({ mostBottles: 1, mostDrops: 3 }, ([first = 0]) => 10 - first);
  expect(single.asked.some(({ recipe }) => ['1 1', '2 1', '1 2'].includes(recipe))).toBe(false);
  expect(single.told).toEqual(['0: 1 0', '0: 2 0', '0: 3 0']);
  expect(climb({ bottles: [white], mostWhiteShare: 0.9, mostDrops: 3 }, () => 1)).toMatchObject({
    asked: [],
    heard: [],
  });
});

test('[hand] a mix is the sum of its bottles’ units, from the place of their time on, and nothing of what stood there', () => {
  const units = Float64Array.from(
    { length: 4 * mixWidth },
    (_, i) => 1000 * Math.floor(i / mixWidth) + (i % mixWidth),
  );
  const mix = new Float64Array(mixWidth).fill(7);
  addUp([2, 1], units, 2 * mixWidth, mix);
  mix.forEach((value, i) => expect(value).toBe(2 * (2000 + i) + 3000 + i));
  addUp([0, 3], units, 0, mix);
  mix.forEach((value, i) => expect(value).toBe(3 * (1000 + i)));
});
