/**
 * The accepted answers, both ends included, as whole numbers of 10^-decimals: 31.4 to 31.6 is { lo: 314, hi:
 * 316, decimals: 1 }.
 * Whole numbers, because |x − a| ≤ tol in floating point rejects answers that lie exactly on the edge.
 */
export type ClosedRange = Readonly<{ lo: number; hi: number; decimals: number }>;

/** Typed digits beyond the range's own decimals that still count exactly. */
const finerDigits = 6;

function scaled(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals);
}

/**
 * The value rounded to `decimals`, as a whole number of 10^-decimals; halves go away from zero.
 * It is first rounded six digits finer, so that 31.25, held as 31.249999999999996, still counts as a half.
 */
export function roundScaled(value: number, decimals: number): number {
  const fine = Math.abs(scaled(value, decimals + finerDigits)) / 10 ** finerDigits;
  const whole = Math.round(fine);
  return value < 0 && whole !== 0 ? -whole : whole;
}

/**
 * The exact value rounded to `decimals`, give or take the tolerance, both ends right. The exact value lies
 * inside.
 */
export function rangeAround(exact: number, tolerance: number, decimals: number): ClosedRange {
  const middle = roundScaled(exact, decimals);
  const half = scaled(tolerance, decimals);
  return { lo: middle - half, hi: middle + half, decimals };
}

/** True when the value lies in the range or on either end of it; false for anything not finite. */
export function isInRange({ lo, hi, decimals }: ClosedRange, value: number): boolean {
  const finer = scaled(value, decimals + finerDigits);
  const step = 10 ** finerDigits;
  return finer >= lo * step && finer <= hi * step;
}

/** The two ends and half the width as ordinary numbers, for printing and export. */
export function rangeEnds({
  lo,
  hi,
  decimals,
}: ClosedRange): Readonly<{ lo: number; hi: number; tolerance: number }> {
  const unit = 10 ** decimals;
  return { lo: lo / unit, hi: hi / unit, tolerance: (hi - lo) / 2 / unit };
}
