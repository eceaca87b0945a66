import type { View } from '../fields/MarkStage.tsx';

/**
 * The part of the face that front and tail need: above the brows to below the nose. Picture millimetres, y
 * down.
 */
export const frontAndTailView: View = { x: -72, y: -50, width: 144, height: 100 };
