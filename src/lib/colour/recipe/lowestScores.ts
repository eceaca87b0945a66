/**
 * Hears scores one by one and knows what so many of them do not exceed: an upper bound of the `count`-th
 * lowest, Infinity at first. Scores are sorted only when twice as many have gathered.
 */
export function lowestScores(count: number) {
  const gathered = new Float64Array(2 * count);
  let size = 0;
  let bound = Infinity;
  return {
    bound: () => bound,
    /** True where the bound has fallen. */
    add: (score: number): boolean => {
      if (score >= bound) return false;
      gathered[size++] = score;
      if (size < 2 * count) return false;
      gathered.sort();
      size = count;
      bound = gathered[count - 1] ?? Infinity;
      return true;
    },
  };
}
