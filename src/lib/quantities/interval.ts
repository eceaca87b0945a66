/** A closed interval around a value; `k` is the coverage factor that made it. */
export type Interval = Readonly<{
  value: number;
  lo: number;
  hi: number;
  standardUncertainty: number;
  k: number;
}>;

/** value ± k·u (GUM, JCGM 100:2008, 6.2.1). */
export function intervalAround(value: number, standardUncertainty: number, k: number): Interval {
  const half = k * standardUncertainty;
  return { value, lo: value - half, hi: value + half, standardUncertainty, k };
}

/** True when zero lies inside the interval: the difference is not shown to be real. */
export function includesZero({ lo, hi }: Interval): boolean {
  return lo <= 0 && hi >= 0;
}
