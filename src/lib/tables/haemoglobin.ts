/**
 * Molar extinction of haemoglobin in water, cm⁻¹/(mol/l), with and without oxygen, at the middles of 36 bands, 380 to 730 nm.
 * Source: S. Prahl's table (compiled from Gratzer and Kollias), read in two copies that agree; droumis/spectra, commit c08347cc.
 */
export const haemoglobin = {
  withOxygen: [
    109564, 167748, 266232, 466840, 480360, 246072, 102580, 62816, 44480, 33209.2, 26629.2, 23684.4,
    20932.8, 20035.2, 24202.4, 39956.8, 53236, 43016, 32613.2, 44496, 50104, 14400.8, 3200, 1506,
    942, 610, 442, 368, 319.6, 294, 277.6, 276, 290, 314, 348, 390,
  ],
  withoutOxygen: [
    145232, 167780, 223296, 303956, 407560, 528600, 413280, 103292, 23388.8, 16156.4, 14550, 16684,
    20862, 25773.6, 31589.6, 39036.4, 46592, 53412, 53788, 45072, 37020, 28324.4, 14677.2, 9443.6,
    6509.6, 5148.8, 4345.2, 3750.1, 3226.6, 2795.1, 2407.9, 2052.0, 1794.3, 1540.5, 1325.9, 1102.2,
  ],
} as const;
