import type { Draw } from '#lib/quantities/seed.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';
import { blend } from '#lib/face/spot.ts';
import { browLengthMm } from './browEdges.ts';
import { growHair, type Hair } from './growth.ts';

/**
 * Rows of strokes: place across the brow, share of the strokes, and where along the brow the row begins and
 * ends.
 */
const rows = [
  { s: 0.08, share: 0.4, fromT: 0.01, toT: 0.88 },
  { s: 0.95, share: 0.3, fromT: 0.17, toT: 0.82 },
  { s: 0.42, share: 0.2, fromT: 0.13, toT: 0.66 },
  { s: 0.7, share: 0.1, fromT: 0.24, toT: 0.6 },
] as const;

/**
 * Pigment strokes as planned: an exact count of an exact length, in rows along the growth directions. A long
 * stroke is laid flatter, never cut.
 */
export function pigmentStrokes(
  brow: BrowSpots,
  count: number,
  lengthMm: number,
  draw: Draw,
): readonly Hair[] {
  const strokes: Hair[] = [];
  for (const [i, { s, share, fromT, toT }] of rows.entries()) {
    const inRow = i === rows.length - 1 ? count - strokes.length : Math.round(count * share);
    const lastT = Math.min(toT, 1 - (lengthMm * 1.03) / browLengthMm(brow));
    for (let k = 0; k < inRow; k++) {
      const t = blend(fromT, lastT, (k + 0.5 + 0.25 * (draw() - 0.5)) / inRow);
      strokes.push(growHair(brow, { t, s, lengthMm, leastMm: lengthMm - 0.01, turnDeg: (draw() - 0.5) * 5 }));
    }
  }
  return strokes;
}
