import type { View } from '#components/calculator/fields/MarkStage.tsx';

/**
 * Two rows of brows: the pupils of the first lie on y = 0, of the second `rowMm` further down. Picture
 * millimetres, y down.
 */
export const readingView: View = { x: -78, y: -44, width: 156, height: 118 };
export const rowMm = 62;
/** How far out the arch of the drawn brow stands. */
export const archAcrossMm = 41.3;
