import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { isOutOfReach } from '#lib/colour/recipe/outOfReach.ts';
import { findRecipe } from '#lib/colour/recipe/findRecipe.ts';
import { colourerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

const skin = skinOptics({ l: 61, a: 10, b: 18 });
if (!skin.ok) throw new Error(skin.reason);
const task: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
  bottles,
  ageing: startAgeing,
  doses: [0.1, 0.3],
  times: [0, 2],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 2,
  mostDrops: 4,
  mostWhiteShare: 0.1,
};

test.each([
  [{ l: 47, a: 10, b: 13 }, false],
  [{ l: 20, a: 10, b: 13 }, true],
  [{ l: 47, a: 38, b: 13 }, true],
  [{ l: 74, a: 5, b: 8 }, true],
] as const)(
  '[property] out of reach is said only where the nearest recipe stays away: %o',
  (target, isBeyond) => {
    expect(isOutOfReach({ ...task, target }, 3)).toBe(isBeyond);
    const found = findRecipe({ ...task, target });
    if (!found.ok) throw new Error(found.reason);
    if (isBeyond) expect(found.best.score).toBeGreaterThan(3);
    expect(isOutOfReach({ ...task, target }, 0)).toBe(true);
    expect(isOutOfReach({ ...task, target }, found.best.score + 0.001)).toBe(false);
  },
);

test('[hand] a lighter colour lies within reach of white, but not where white is not allowed', () => {
  const white = { ...task, doses: [0.65], times: [0], mostBottles: 1, mostDrops: 1 };
  const [target] = colourerOf(white)(
    bottles.map(({ id }) => (id === 'white' ? 1 : 0)),
    0.65,
  );
  if (!target) throw new Error('no colour');
  expect(target.l).toBeGreaterThan(61);
  expect(isOutOfReach({ ...white, target, mostWhiteShare: 1 }, 3)).toBe(false);
  expect(isOutOfReach({ ...white, target, mostWhiteShare: 0 }, 3)).toBe(true);
});
