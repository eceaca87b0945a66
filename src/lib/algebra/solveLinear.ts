/** A pivot no larger settles nothing. */
const leastPivot = 1e-13;

/**
 * The unknowns of as many linear equations, by Gauss with the largest pivot of each column. Rows hold the
 * coefficients; undefined where they do not settle every unknown.
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined {
  const size = right.length;
  const rows = matrix.map((row, i) => Float64Array.from([...row, right[i] ?? NaN]));
  const pivots: Float64Array[] = [];
  for (let column = 0; column < size; column++) {
    const first = (row: Float64Array) => row[column] ?? 0;
    rows.sort((one, other) => Math.abs(first(other)) - Math.abs(first(one)));
    const pivot = rows.shift();
    if (!pivot || !(Math.abs(first(pivot)) > leastPivot)) return undefined;
    for (const row of rows) {
      const factor = first(row) / first(pivot);
      // Most rows of a curve's conditions have nothing of an unknown.
      if (factor !== 0)
        for (let j = column; j <= size; j++) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0);
    }
    pivots.push(pivot);
  }
  // From the last unknown to the first: each row holds its own and those after it.
  return pivots.reduceRight<readonly number[]>((found, pivot, own) => {
    const rest = found.reduce((sum, value, i) => sum - (pivot[own + 1 + i] ?? 0) * value, pivot[size] ?? 0);
    return [rest / (pivot[own] ?? 1), ...found];
  }, []);
}
