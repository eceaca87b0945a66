/**
 * The cube root of CIELAB with its straight line near black, drawn on below 0: rising and bending down
 * everywhere.
 */
export function labRoot(ratio: number): number {
  return ratio > 216 / 24389 ? Math.cbrt(ratio) : ((24389 / 27) * ratio + 16) / 116;
}
