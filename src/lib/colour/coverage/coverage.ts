/**
 * A patch of brow and what was drawn into it. Widths and diameters are as they look when judged: fresh, or
 * spread.
 */
export type Strokes = Readonly<{ count: number; lengthMm: number; widthMm: number; areaMm2: number }>;
export type Dots = Readonly<{ perMm2: number; diameterMm: number }>;

/** Share of skin covered by strokes laid side by side that never cross, n·l·w/A, at most 1. */
export function shareApart({ count, lengthMm, widthMm, areaMm2 }: Strokes): number {
  return areaMm2 > 0 ? Math.min(1, (count * lengthMm * widthMm) / areaMm2) : 0;
}

/** Share of skin covered by strokes that cross as chance has it: 1 − e^(−n·l·w/A) (Boolean model). */
export function shareAtRandom({ count, lengthMm, widthMm, areaMm2 }: Strokes): number {
  return areaMm2 > 0 ? -Math.expm1(-(count * lengthMm * widthMm) / areaMm2) : 0;
}

/** Share of skin covered by dots set as chance has it: 1 − e^(−λ π d²/4). */
export function shareOfDots({ perMm2, diameterMm }: Dots): number {
  return -Math.expm1((-perMm2 * Math.PI * diameterMm * diameterMm) / 4);
}

/**
 * How many strokes of this size give a share, side by side, rounded up; undefined for shares no count gives.
 */
export function strokesForShare(
  share: number,
  { lengthMm, widthMm, areaMm2 }: Omit<Strokes, 'count'>,
): number | undefined {
  const one = lengthMm * widthMm;
  return share >= 0 && share <= 1 && one > 0 && areaMm2 > 0
    ? Math.max(0, Math.ceil((share * areaMm2) / one - 1e-9))
    : undefined;
}
