import type { View } from '#components/calculator/fields/MarkStage.tsx';

/** Picture units to a millimetre of the brow: large enough for fingers. */
export const underScale = 2.5;

/** Across the picture: the outline's front stands at 15. */
export function underX(alongMm: number): number {
  return 15 + underScale * alongMm;
}

/** One brow and the rows under it, picture units, y down. */
export const underView: View = { x: 0, y: -64, width: 130, height: 77 };
