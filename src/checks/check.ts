import type { SourceId } from '#lib/evidence/bibliography.ts';
import type { PrintedUnit } from '#words/units.ts';

/**
 * One comparison with something outside the project, as data: the Evidence pages compute it at build and the
 * same rows run in Node, Chromium and Firefox.
 * kind: `table` (a printed value), `library` (an independent implementation), `hand` (worked out by hand from
 * a printed rule).
 * `ours` takes a factor that scales the constant or formula under test (1 = as it is): a test calls it
 * with 1.01 and 0.99 and expects the row to turn red, so a check that cannot fail is found.
 */
export type Check = Readonly<{
  id: string;
  kind: 'table' | 'library' | 'hand';
  source: SourceId;
  where: string;
  /** What is compared, in a few plain words. */
  what: string;
  printed: number;
  unit: PrintedUnit;
  tolerance: number;
  because: string;
  ours: (factor?: number) => number;
}>;

/** True when our value lies within the tolerance of the printed one. */
export function holds(check: Check, factor = 1): boolean {
  return Math.abs(check.ours(factor) - check.printed) <= check.tolerance;
}

export type CheckRow = Check & Readonly<{ value: number; difference: number; holds: boolean }>;

/** The row as the Evidence pages show it: printed, ours, difference. */
export function rowOf(check: Check): CheckRow {
  const value = check.ours();
  return { ...check, value, difference: value - check.printed, holds: holds(check) };
}
