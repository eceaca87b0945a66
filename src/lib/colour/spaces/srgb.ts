import { labToXyz, type Lab } from './lab.ts';

/**
 * Screen red, green and blue, 0 to 1. `isClipped`: the screen cannot show this colour and shows the nearest
 * edge.
 */
export type Srgb = Readonly<{ r: number; g: number; b: number; isClipped: boolean }>;

/**
 * The white that sRGB is defined for (IEC 61966-2-1: x 0.3127, y 0.3290); the matrix below is the inverse of
 * its primaries.
 */
export const screenWhite = {
  x: (100 * 0.3127) / 0.329,
  y: 100,
  z: (100 * (1 - 0.3127 - 0.329)) / 0.329,
} as const;

/** Linear to coded light (IEC 61966-2-1). */
export function coded(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/**
 * How a screen shows a colour read under D65. Lab is taken against the screen's own white, so that white
 * stays white.
 * A screen is not a print and not a skin: swatches lie on a grey card, and the numbers stand beside them.
 */
export function labToSrgb(lab: Lab): Srgb {
  const { x, y, z } = labToXyz(lab, screenWhite);
  const linear = [
    (3.24096994 * x - 1.53738318 * y - 0.49861076 * z) / 100,
    (-0.96924364 * x + 1.8759675 * y + 0.04155506 * z) / 100,
    (0.05563008 * x - 0.20397696 * y + 1.05697151 * z) / 100,
  ] as const;
  const isClipped = linear.some((value) => value < -1e-4 || value > 1 + 1e-4);
  const [r, g, b] = [coded(held(linear[0])), coded(held(linear[1])), coded(held(linear[2]))];
  return { r, g, b, isClipped };
}

function held(value: number): number {
  return Math.min(1, Math.max(0, value));
}

/** "#a1b2c3", for an SVG fill. */
export function srgbToHex({ r, g, b }: Srgb): string {
  return `#${[r, g, b]
    .map((value) =>
      Math.round(value * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}
