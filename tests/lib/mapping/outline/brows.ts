import fc from 'fast-check';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import { outlineOf, type Outline } from '#lib/mapping/outline/outline.ts';
import { real } from '../../../tools/real.ts';

export const at = (uMm: number, vMm: number): FacePoint => ({ uMm, vMm });

/** The worked example of the closed form: 287.625 mm². Its front leans in: the top is nearer the midline. */
export const example: Brow = {
  frontLower: at(15, 17),
  frontTop: at(14, 25),
  archTop: at(47, 33),
  archLower: at(46, 27),
  tail: at(64, 20),
};

/**
 * Two straight edges that climb together, level, 8 mm apart until the arch at 40; then both fall to the tail.
 */
export const bar: Brow = {
  frontLower: at(16, 10),
  frontTop: at(16, 18),
  archTop: at(40, 18),
  archLower: at(40, 10),
  tail: at(56, 10),
};

export function outlined(brow: Brow): Outline {
  const outline = outlineOf(brow);
  if (!outline.ok) throw new Error(outline.reason);
  return outline;
}

let missed = 0;
/** Nearly every drawn brow has an outline: where hundreds in a row have none, drawing on would never end. */
function hasOutline(brow: Brow): boolean {
  missed = outlineOf(brow).ok ? 0 : missed + 1;
  if (missed > 300) throw new Error('300 brows in a row without an outline.');
  return missed === 0;
}

/** Brows as people draw them, fronts leaning both ways, arches not above each other. */
export const brows: fc.Arbitrary<Brow> = fc
  .tuple(
    real(8, 20),
    real(-1.5, 1.5),
    real(38, 52),
    real(0.45, 0.75),
    real(-2, 2),
    real(6, 18),
    real(5, 9),
    real(-2, 9),
    real(3.5, 8),
    real(-4, 6),
  )
  .map(([front, lean, length, share, archLean, lowV, thickness, rise, archThickness, tailUp]) => {
    const arch = front + share * length;
    const archTopV = lowV + thickness + rise;
    return {
      frontLower: at(front, lowV),
      frontTop: at(front + lean, lowV + thickness),
      archTop: at(arch, archTopV),
      archLower: at(arch + archLean, archTopV - archThickness),
      tail: at(front + length, Math.min(lowV + tailUp, archTopV - archThickness - 0.5)),
    };
  })
  .filter(hasOutline);
