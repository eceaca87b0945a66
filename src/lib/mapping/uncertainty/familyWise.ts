import { normalUpperPoint } from '../../quantities/normal.ts';

/**
 * The share of false alarms that is accepted, and the coverage factor that goes with it for a single
 * comparison.
 */
export const acceptedFalseAlarms = 0.05;

/**
 * The chance of at least one false alarm in m comparisons of things that do not differ: 1 − (1 − α)^m, if the
 * comparisons are independent. Differences on one face share a midline, so the true figure is near this, not
 * equal to it.
 */
export function falseAlarmRate(comparisons: number, each: number = acceptedFalseAlarms): number {
  return 1 - (1 - each) ** comparisons;
}

/**
 * The coverage factor k that keeps the chance of any false alarm in m comparisons at `overall`: each is
 * tested at 1 − (1 − α)^(1/m), two-sided (Šidák, J. Am. Stat. Assoc. 62:626, 1967). k(1) = 1.960, k(10) =
 * 2.80.
 * Comparisons below 1 count as 1.
 */
export function familyCoverageFactor(comparisons: number, overall: number = acceptedFalseAlarms): number {
  const each = 1 - (1 - overall) ** (1 / (comparisons > 1 ? comparisons : 1));
  return normalUpperPoint(each / 2);
}
