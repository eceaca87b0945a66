/**
 * Numbers of strokes and dots that pages begin with, where a source or an assumption stands behind them: see
 * facts/strokes.ts.
 */
export const strokeValues = {
  /** Width of a stroke once it has spread, mm (assumed), and how far off that may be in 95 of 100 cases. */
  strokeSpreadMm: 0.35,
  /** Diameter of a dot once it has spread, mm (assumed), and how far off that may be. */
  dotSpreadMm: 0.3,
  spreadOffMm: 0.08,
  /** The example of the pages: how long its strokes are, mm, and its brow's area, mm² (invented). */
  exampleStrokeMm: 8,
  exampleAreaMm2: 287.6,
} as const;
