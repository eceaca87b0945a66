/** The depths looked at, mm of the model: 0.06 to 0.30 in hundredths. */
export const depthsLookedAt: readonly number[] = Array.from({ length: 25 }, (_, i) => (6 + i) / 100);

/** Losses looked at, as times the assumed one: 1 is as assumed, 2 loses twice as often over (assumed). */
export const lossesLookedAt = [0.5, 0.75, 1, 1.5, 2] as const;

/** How many doses are looked at between the two ends. */
export const dosesLookedAt = 15;

/**
 * Doses from `lo` to `hi`, both above 0, each the same share above the last: a colour follows shares of a
 * dose, not steps.
 */
export function dosesBetween(lo: number, hi: number): readonly number[] {
  return Array.from({ length: dosesLookedAt }, (_, i) => lo * (hi / lo) ** (i / (dosesLookedAt - 1)));
}
