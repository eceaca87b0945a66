import { drawFrom } from '../../quantities/seed.ts';
import type { ExampleBrow } from './exampleBrow.ts';

export type Spot = readonly [xMm: number, yMm: number];
/** A stroke as a curve: start, handle, end. */
export type DrawnStroke = readonly [Spot, Spot, Spot];

/**
 * The stroke round a place in the brow: `rise` is how much of the thickness it climbs; its slope makes up the
 * length. Held in, it does not reach past the front.
 */
function strokeAt(
  { lengthMm, thicknessMm, middleMm }: ExampleBrow,
  along: number,
  across: number,
  rise: number,
  strokeMm: number,
  lean: number,
  isHeldIn: boolean,
): DrawnStroke {
  const climbMm = Math.min(strokeMm, rise * thicknessMm(along));
  const climb = climbMm / Math.max(0.01, thicknessMm(along));
  const runMm = Math.sqrt(strokeMm ** 2 - climbMm ** 2);
  const half = Math.min(0.5, runMm / lengthMm / 2);
  const middle = Math.min(1 - half, isHeldIn ? Math.max(half, along) : along);
  const spot = (part: number): Spot => {
    const s = middle + lean * part * half;
    return [s * lengthMm, middleMm(s) + thicknessMm(s) * (across + (part * climb) / 2)];
  };
  const [start, mid, end] = [spot(-1), spot(0), spot(1)];
  return [start, [2 * mid[0] - (start[0] + end[0]) / 2, 2 * mid[1] - (start[1] + end[1]) / 2], end];
}

/**
 * Strokes in rows that never cross, spread over the brow as its area is: as many rows as the length leaves
 * room for.
 */
export function strokesApart(brow: ExampleBrow, count: number, strokeMm: number): readonly DrawnStroke[] {
  const rows = Math.max(1, Math.ceil((0.95 * brow.thicknessMm(0.3)) / strokeMm - 0.2));
  return Array.from({ length: count }, (_, i) => {
    const row = i % rows;
    return strokeAt(
      brow,
      brow.alongAtShare((i + 0.5) / count),
      (row + 0.5) / rows - 0.5,
      0.95 / rows,
      strokeMm,
      1,
      false,
    );
  });
}

/** Strokes that lie as chance has it, from a seed: some lean back and cross the others. */
export function strokesCrossing(
  brow: ExampleBrow,
  count: number,
  strokeMm: number,
  seed: number,
): readonly DrawnStroke[] {
  const draw = drawFrom(seed);
  return Array.from({ length: count }, () => {
    const along = brow.alongAtShare(draw());
    const rise =
      Math.min(0.9, (strokeMm / Math.max(0.1, brow.thicknessMm(along))) * 0.95) * (0.5 + 0.5 * draw());
    return strokeAt(brow, along, (draw() - 0.5) * (1 - rise), rise, strokeMm, draw() < 0.3 ? -1 : 1, true);
  });
}

/** Dots set as chance has it, from a seed. */
export function dotsAtRandom(brow: ExampleBrow, count: number, seed: number): readonly Spot[] {
  const draw = drawFrom(seed);
  return Array.from({ length: count }, () => {
    const along = brow.alongAtShare(draw());
    return [along * brow.lengthMm, brow.middleMm(along) + brow.thicknessMm(along) * (draw() - 0.5)];
  });
}
