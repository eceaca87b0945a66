/** Drops of each bottle, in the order of the bottles. */
export type Recipe = readonly number[];

/** All drops of a recipe. */
export function totalDrops(recipe: Recipe): number {
  return recipe.reduce((sum, drops) => sum + drops, 0);
}

/** Bottles that give at least one drop. */
export function bottlesUsed(recipe: Recipe): number {
  return recipe.filter((drops) => drops > 0).length;
}

/**
 * Calls `visit` for every recipe of whole drops: of `bottleCount` bottles at most `mostBottles` used, 1 to
 * `mostDrops` drops in all. Their number is Σⱼ C(n, j)·C(d, j): 48,914 for 12 bottles, 4 used, 8 drops. The
 * array is reused: copy it to keep it.
 */
export function forEachRecipe(
  bottleCount: number,
  mostBottles: number,
  mostDrops: number,
  visit: (recipe: Recipe) => void,
): void {
  const drops = new Array<number>(bottleCount).fill(0);
  const from = (bottle: number, used: number, left: number): void => {
    for (let next = bottle; next < bottleCount; next++) {
      if (used === mostBottles) return;
      for (let count = 1; count <= left; count++) {
        drops[next] = count;
        visit(drops);
        from(next + 1, used + 1, left - count);
      }
      drops[next] = 0;
    }
  };
  from(0, 0, mostDrops);
}

/** The number of recipes, by the sum above. */
export function recipeCount(bottleCount: number, mostBottles: number, mostDrops: number): number {
  let sum = 0;
  for (let j = 1; j <= Math.min(mostBottles, mostDrops, bottleCount); j++)
    sum += choose(bottleCount, j) * choose(mostDrops, j);
  return sum;
}

function choose(n: number, k: number): number {
  let product = 1;
  for (let i = 1; i <= k; i++) product = (product * (n - k + i)) / i;
  return Math.round(product);
}

/** True where the drops have no common divisor: 1:1 stands for 2:2 as well. */
export function isSimplestRatio(recipe: Recipe): boolean {
  return recipe.reduce(greatestCommonDivisor, 0) === 1;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/**
 * Which of two recipes of the same score is simpler: fewer drops, then fewer bottles, then earlier in the
 * list. Below zero: the first.
 */
export function compareSimplicity(one: Recipe, other: Recipe): number {
  const drops = totalDrops(one) - totalDrops(other);
  if (drops !== 0) return drops;
  const used = bottlesUsed(one) - bottlesUsed(other);
  if (used !== 0) return used;
  const at = one.findIndex((count, i) => count !== other[i]);
  return at < 0 ? 0 : (other[at] ?? 0) - (one[at] ?? 0);
}
