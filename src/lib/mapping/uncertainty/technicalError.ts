/** Two readings of the same thing, mm. */
export type Repeat = Readonly<{ firstMm: number; secondMm: number }>;
export type TechnicalError =
  | Readonly<{ ok: true; temMm: number; pairs: number }>
  | Readonly<{ ok: false; reason: 'no-repeats' }>;

/** Bland & Altman's factor: two readings differ by less than 1.96 √2 s_w in 95 of 100 cases. */
export const repeatabilityFactor = 2.77;

/**
 * Technical error of measurement, √(Σd²/2N) (Dahlberg 1940), d the difference between two readings of one
 * thing, N pairs.
 * It is the spread of a single reading. Two or three pairs do not fix it: use a practice sheet of 20 or more.
 */
export function technicalError(repeats: readonly Repeat[]): TechnicalError {
  if (repeats.length === 0) return { ok: false, reason: 'no-repeats' };
  const squares = repeats.reduce((sum, { firstMm, secondMm }) => sum + (firstMm - secondMm) ** 2, 0);
  return { ok: true, temMm: Math.sqrt(squares / (2 * repeats.length)), pairs: repeats.length };
}

/** Repeatability, 2.77 s_w (Bland & Altman 1996): 95 of 100 pairs of readings differ by less, mm. */
export function repeatabilityMm(temMm: number): number {
  return repeatabilityFactor * temMm;
}
