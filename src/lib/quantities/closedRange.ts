/**
 * The accepted answers, both ends included, as whole numbers of 10^-decimals: 31.4 to 31.6 is { lo: 314, hi: 316, decimals: 1 }.
 * Whole numbers, because |x − a| ≤ tol in floating point rejects answers that lie exactly on the edge.
 */
export type ClosedRange = Readonly<{ lo: number; hi: number; decimals: number }>;
