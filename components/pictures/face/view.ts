import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { BrowSpots } from '#lib/face/landmarks.ts';

/** What part of a face a picture shows. `midline` runs from above the brows to below the chin. */
export type FaceView = 'whole' | 'midline' | 'band' | Side;

/**
 * x, y, width and height in the picture's millimetres, y DOWN: an SVG view box. Marks are drawn in it at (x,
 * -y).
 */
export type ViewBox = readonly [left: number, top: number, width: number, height: number];

export const fixedViewBoxes = {
  whole: [-104, -142, 208, 281],
  midline: [-76, -48, 152, 174],
  band: [-64, -34, 128, 50],
} as const satisfies Readonly<Record<Exclude<FaceView, Side>, ViewBox>>;

/** The view's box; a single brow's box follows its marks, given upright on its own side. */
export function viewBoxOf(view: FaceView, brows: Readonly<Record<Side, BrowSpots>>): ViewBox {
  if (view !== 'right' && view !== 'left') return fixedViewBoxes[view];
  const { frontLower, archTop, tail } = brows[view];
  const from = frontLower[0] - 5;
  const width = tail[0] + 5 - from;
  const height = archTop[1] - Math.min(frontLower[1], tail[1]) + 13;
  return [view === 'right' ? -from - width : from, -archTop[1] - 7, width, height];
}
