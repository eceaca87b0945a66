/**
 * Upper 2.5 % points of Student's t: between −t and t lie 95 %. Rows 1 to 30 stand in order, then 40, 60, 100 and no end.
 * Table 8, "Upper critical values of Student's t distribution", column 0.025, reprinted from the NIST/SEMATECH
 * e-Handbook of Statistical Methods, 1.3.6.7.2 (source `nist-t-table`). Printed to three decimals.
 */
export const studentT975: readonly (readonly [degreesOfFreedom: number, t: number])[] = [
  [1, 12.706], [2, 4.303], [3, 3.182], [4, 2.776], [5, 2.571], [6, 2.447], [7, 2.365], [8, 2.306], [9, 2.262], [10, 2.228],
  [11, 2.201], [12, 2.179], [13, 2.16], [14, 2.145], [15, 2.131], [16, 2.12], [17, 2.11], [18, 2.101], [19, 2.093], [20, 2.086],
  [21, 2.08], [22, 2.074], [23, 2.069], [24, 2.064], [25, 2.06], [26, 2.056], [27, 2.052], [28, 2.048], [29, 2.045], [30, 2.042],
  [40, 2.021], [60, 2], [100, 1.984], [Infinity, 1.96],
];
