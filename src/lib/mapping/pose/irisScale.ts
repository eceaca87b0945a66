/** A picture's scale taken from a visible iris: its usual width and how much people differ, mm. */
export type IrisScale = Readonly<{ irisMm: number; spreadMm: number }>;

/** Picture units to millimetres: the iris measures `irisUnits` in the picture. */
export function mmPerUnit(irisUnits: number, { irisMm }: IrisScale): number {
  return irisMm / irisUnits;
}

/**
 * What the scale alone leaves open, ± mm at a coverage factor k: every length carries the same share, k ·
 * spread / width, so a small difference is hardly touched and a whole length is spoilt.
 */
export function scaleDoubtMm(lengthMm: number, { irisMm, spreadMm }: IrisScale, k: number): number {
  return (Math.abs(lengthMm) * k * spreadMm) / irisMm;
}
