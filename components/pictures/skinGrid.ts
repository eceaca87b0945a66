import type { Lab } from '#lib/colour/spaces/lab.ts';
import { lchToLab } from '#lib/colour/spaces/lch.ts';

/**
 * The grid of the grey card: lightness down the side, hue angle along the foot. Every swatch is as strong as
 * the others.
 */
export const gridLightness = [80, 75, 70, 65, 60, 55, 50, 45, 40, 35, 30] as const;
export const gridHuesDeg = [40, 45, 50, 55, 60, 65, 70, 75, 80] as const;
export const gridChroma = 19;
export const cell = { width: 34, height: 22, left: 34, top: 24 } as const;

/** The colour of one swatch, to one decimal, as a tap writes it. */
export function swatchLab(l: number, hDeg: number, c = gridChroma): Lab {
  const lab = lchToLab({ l, c, hDeg });
  return { l: lab.l, a: Math.round(lab.a * 10) / 10, b: Math.round(lab.b * 10) / 10 };
}

/**
 * Where a lightness and a hue lie on the drawing; the middle of a swatch is its own value. Held inside the
 * grid.
 */
export const across = (hDeg: number) =>
  cell.left + Math.min(gridHuesDeg.length, Math.max(0, (hDeg - 37.5) / 5)) * cell.width;
export const down = (l: number) =>
  cell.top + Math.min(gridLightness.length, Math.max(0, (82.5 - l) / 5)) * cell.height;

/** The swatch under a point of the drawing. */
export function swatchAt(x: number, y: number): Readonly<{ l: number; hDeg: number }> | undefined {
  const hDeg = gridHuesDeg[Math.floor((x - cell.left) / cell.width)];
  const l = gridLightness[Math.floor((y - cell.top) / cell.height)];
  return hDeg === undefined || l === undefined ? undefined : { l, hDeg };
}
