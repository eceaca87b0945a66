import type { BrowDecompositionFit } from '#lib/mapping/compare/decomposeBrows.ts';
import { fixed, signed } from './number.ts';

export type WholeBrowWords = Readonly<{
  says: string;
  lines: readonly Readonly<{ name: string; value: string }>[];
}>;

/**
 * What sets the left brow apart from the mirrored right one: place, tilt, size, and what is left of its
 * shape.
 */
export function wholeBrowSays(fit: BrowDecompositionFit): WholeBrowWords {
  if (!fit.ok)
    return { says: 'The marks of a brow lie on one point, so it has no shape to compare.', lines: [] };
  const { shiftOutMm, shiftUpMm, tiltDeg, size, residualMm } = fit;
  return {
    says: 'Take the right brow, mirror it, and lay it on the left one. It has to be moved, turned and sized by this much. What is left is a difference of shape.',
    lines: [
      { name: 'Higher by', value: `${signed(shiftUpMm)} mm` },
      { name: 'Further out by', value: `${signed(shiftOutMm)} mm` },
      { name: 'Tail turned up by', value: `${signed(tiltDeg)}°` },
      { name: 'Size', value: `${fixed(100 * size, 1)} %` },
      { name: 'Shape left over', value: `${fixed(residualMm)} mm` },
    ],
  };
}
