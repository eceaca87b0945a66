import { expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { pigmentIds } from '#lib/colour/pigment/pigments.ts';
import {
  bottlesUsed,
  compareSimplicity,
  forEachRecipe,
  isSimplestRatio,
  recipeCount,
  totalDrops,
  type Recipe,
} from '#lib/colour/recipe/recipes.ts';

test('[hand] 12 bottles, 4 used, 8 drops: 48,914 recipes, 46,993 ratios; 24, 4, 16: 20,506,264', () => {
  let [all, ratios] = [0, 0];
  forEachRecipe(12, 4, 8, (recipe) => {
    all++;
    if (isSimplestRatio(recipe)) ratios++;
  });
  expect([all, ratios]).toEqual([48_914, 46_993]);
  expect(recipeCount(12, 4, 8)).toBe(48_914);
  expect(recipeCount(24, 4, 16)).toBe(20_506_264);
});

test('[property] every recipe comes once, within its limits', () => {
  const seen = new Set<string>();
  forEachRecipe(5, 3, 4, (recipe) => {
    seen.add(recipe.join());
    expect(totalDrops(recipe)).toBeGreaterThan(0);
    expect(totalDrops(recipe)).toBeLessThanOrEqual(4);
    expect(bottlesUsed(recipe)).toBeLessThanOrEqual(3);
  });
  // By hand: 5·4 + 10·6 + 10·4 = 120.
  expect(seen.size).toBe(120);
  expect(recipeCount(5, 3, 4)).toBe(120);
  expect(recipeCount(2, 4, 3)).toBe(2 * 3 + 1 * 3);
});

test('[hand] the simpler recipe has fewer drops, then fewer bottles, then comes first in the list', () => {
  const order: readonly Recipe[] = [
    [1, 0, 0],
    [0, 1, 0],
    [2, 0, 0],
    [1, 1, 0],
    [1, 0, 1],
    [3, 0, 0],
  ];
  expect(order.toReversed().toSorted(compareSimplicity)).toEqual(order);
  expect(compareSimplicity([1, 2], [1, 2])).toBe(0);
  expect(bottlesUsed([2, 0, 1])).toBe(2);
  // One bottle is simpler than two, though it stands later in the list.
  expect(compareSimplicity([0, 2], [1, 1])).toBeLessThan(0);
  expect(compareSimplicity([1, 1], [0, 2])).toBeGreaterThan(0);
});

test('[property] the palette has twelve bottles, named once, whose shares add to 1', () => {
  expect(bottles).toHaveLength(12);
  expect(new Set(bottles.map(({ id }) => id)).size).toBe(12);
  for (const { id, shares } of bottles)
    expect(
      pigmentIds.reduce((sum, pigment) => sum + shares[pigment], 0),
      id,
    ).toBeCloseTo(1, 12);
});
