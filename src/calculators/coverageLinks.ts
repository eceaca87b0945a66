import { strokesForShare } from '#lib/colour/coverage.ts';
import { strokeValues } from '#lib/colour/strokes/strokeValues.ts';

const { exampleStrokeMm: lengthMm, exampleAreaMm2: areaMm2, strokeSpreadMm: widthMm } = strokeValues;

/** How many strokes of the example brow, once spread, cover so many per cent; and the page that draws them. */
export function strokesFor(coverage: number): Readonly<{ count: number; address: string }> {
  const count = strokesForShare(coverage / 100, { lengthMm, widthMm, areaMm2 }) ?? 0;
  return { count, address: `/calculators/strokes-and-dots/?count=${count}` };
}

/** The mix with a share (0 to 1) of skin covered, held to what that page takes: 5 to 100 %. */
export function mixAddress(share: number): string {
  return `/calculators/mix-by-drops/?coverage=${Math.round(Math.min(100, Math.max(5, 100 * share)))}`;
}
