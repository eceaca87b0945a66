import { xyzToLab, type Lab } from './lab.ts';
import { screenWhite } from './srgb.ts';

/** Red, green and blue, each 0 to 1. */
export type Rgb = Readonly<{ r: number; g: number; b: number }>;

/** Coded to linear light (IEC 61966-2-1). */
export function linearLight(coded: number): number {
  return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
}

/** Linear light to CIELAB against the screen's own white: equal parts are grey, one of each is L* 100. */
export function linearToLab({ r, g, b }: Rgb): Lab {
  return xyzToLab(
    {
      x: 100 * (0.4123907993 * r + 0.3575843394 * g + 0.1804807884 * b),
      y: 100 * (0.2126390059 * r + 0.7151686788 * g + 0.0721923154 * b),
      z: 100 * (0.0193308187 * r + 0.1191947798 * g + 0.9505321522 * b),
    },
    screenWhite,
  );
}

/** What a coded colour of a screen or a picture is in CIELAB under D65. */
export function srgbToLab({ r, g, b }: Rgb): Lab {
  return linearToLab({ r: linearLight(r), g: linearLight(g), b: linearLight(b) });
}
