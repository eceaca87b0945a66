/**
 * One source of error that reading again does not shrink; any value within ± halfWidthMm is as likely as
 * another.
 */
export type BudgetLine = Readonly<{ halfWidthMm: number }>;

/**
 * Standard uncertainty of a half-width a, each value within it as likely: a/√3 (GUM, JCGM 100:2008, 4.3.7).
 */
export function rectangularMm({ halfWidthMm }: BudgetLine): number {
  return halfWidthMm / Math.sqrt(3);
}

/**
 * The budget's lines together, root sum of squares (GUM 5.1.2), mm. Half-widths 0.25, 0.05 and 0.25 give
 * 0.206.
 */
export function budgetMm(lines: readonly BudgetLine[]): number {
  return Math.hypot(...lines.map(rectangularMm));
}

/**
 * How a mark was read: technical error of one reading, readings averaged, and the budget's standard
 * uncertainty, mm.
 */
export type Reading = Readonly<{ temMm: number; readings: number; budgetMm: number }>;

/** Standard uncertainty of one mark, √(TEM²/n + u_B²), mm. Averaging shrinks the first part only. */
export function markUncertaintyMm({ temMm, readings, budgetMm: restMm }: Reading): number {
  return Math.sqrt((temMm * temMm) / (readings > 1 ? readings : 1) + restMm * restMm);
}

/**
 * Standard uncertainty of left minus right, sides read alike: √2 u, mm. The midline's own part is not in it:
 * see propagate.
 */
export function differenceUncertaintyMm(reading: Reading): number {
  return Math.SQRT2 * markUncertaintyMm(reading);
}

/** The smallest difference that counts as real, k·√(2(TEM²/n + u_B²)), mm. */
export function smallestRealDifferenceMm(reading: Reading, k: number): number {
  return k * differenceUncertaintyMm(reading);
}

export type ReadingsNeeded =
  | Readonly<{ ok: true; readings: number }>
  | Readonly<{ ok: false; reason: 'budget-alone-is-wider' }>;

/**
 * The fewest readings a side with which a difference of `wantedMm` counts as real: TEM² / ((wanted/k)²/2 −
 * u_B²), rounded up.
 * Refused where the budget alone is wider: no number of readings is enough.
 */
export function readingsNeeded(
  wantedMm: number,
  { temMm, budgetMm: restMm }: Omit<Reading, 'readings'>,
  k: number,
): ReadingsNeeded {
  const room = (wantedMm / k) ** 2 / 2 - restMm * restMm;
  if (!(room > 0)) return { ok: false, reason: 'budget-alone-is-wider' };
  return { ok: true, readings: Math.max(1, Math.ceil((temMm * temMm) / room)) };
}
