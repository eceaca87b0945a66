import type { View } from '#components/calculator/fields/MarkStage.tsx';

/**
 * The picture: the midline view of a face with room to stand off the middle, a ruler above and below.
 * Millimetres, y down.
 */
export const placeView: View = { x: -84, y: -60, width: 168, height: 200 };
/** Base lines of the two rulers. */
export const rulerTopY = -50;
export const rulerFootY = 130;
/** Heights of the two pins, y up: above the brows, below every chin. */
export const pinHeightsMm = { top: 44, foot: -125.5 } as const;
/** A pin can go this far to either side. */
export const pinReachMm = 60;
