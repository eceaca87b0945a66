/**
 * The unknowns of as many linear equations, by Gauss with the largest pivot of each column. Rows hold the coefficients;
 * undefined where they do not settle every unknown.
 */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] | undefined {
  const size = right.length;
  const rows = matrix.map((row, i) => Float64Array.from([...row, right[i] ?? NaN]));
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let i = column + 1; i < size; i++) if (Math.abs(at(rows, i, column)) > Math.abs(at(rows, best, column))) best = i;
    const [pivot, other] = [rows[best], rows[column]];
    if (!pivot || !other || !(Math.abs(pivot[column] ?? 0) > 1e-13)) return undefined;
    rows[best] = other;
    rows[column] = pivot;
    for (let i = column + 1; i < size; i++) {
      const row = rows[i];
      const factor = at(rows, i, column) / (pivot[column] ?? 1);
      if (row && factor !== 0) for (let j = column; j <= size; j++) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0);
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let rest = at(rows, i, size);
    for (let j = i + 1; j < size; j++) rest -= at(rows, i, j) * (found[j] ?? 0);
    found[i] = rest / at(rows, i, i);
  }
  return found;
}

function at(rows: readonly Float64Array[], row: number, column: number): number {
  return rows[row]?.[column] ?? 0;
}
