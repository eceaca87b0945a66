/** The middle of so many timings, after as many to warm up. */
export function middleMs(count: number, run: () => unknown): number {
  for (let i = 0; i < count; i++) run();
  return middle(
    Array.from({ length: count }, () => {
      const from = performance.now();
      run();
      return performance.now() - from;
    }),
  );
}

export function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}
