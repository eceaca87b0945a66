import type { Lab } from '../spaces/lab.ts';

const power7 = (value: number) => value * value * value * (value * value * value) * value;
const far = power7(25);

/**
 * CIEDE2000 to one target without an angle, for colours whose b* lies above 0 like the target's. The mean hue
 * is then the direction between two unit vectors, cosines of its multiples are polynomials, ΔH′² = Δa′² +
 * Δb*² − ΔC′², and the turn of blue is left out: at 95° and more from 275° it weighs less than 1.2e-6
 * (differenceFloor.ts).
 */
export function quickDifference(target: Lab): (l: number, a: number, b: number) => number {
  const targetChroma = Math.sqrt(target.a * target.a + target.b * target.b);
  return (l, a, b) => {
    const mean7 = power7((Math.sqrt(a * a + b * b) + targetChroma) / 2);
    const stretch = 1.5 - 0.5 * Math.sqrt(mean7 / (mean7 + far));
    const a1 = a * stretch;
    const a2 = target.a * stretch;
    const c1 = Math.sqrt(a1 * a1 + b * b);
    const c2 = Math.sqrt(a2 * a2 + target.b * target.b);
    const across = a1 / c1 + a2 / c2;
    const up = b / c1 + target.b / c2;
    const long = Math.sqrt(across * across + up * up);
    const cos = across / long;
    const sin = up / long;
    const cos2 = 2 * cos * cos - 1;
    const sin2 = 2 * sin * cos;
    const cos3 = cos2 * cos - sin2 * sin;
    const sin3 = sin2 * cos + cos2 * sin;
    const cos4 = 2 * cos2 * cos2 - 1;
    const sin4 = 2 * sin2 * cos2;
    const t =
      1 -
      0.17 * (cos * cos30 + sin * sin30) +
      0.24 * cos2 +
      0.32 * (cos3 * cos6 - sin3 * sin6) -
      0.2 * (cos4 * cos63 + sin4 * sin63);
    const chroma = (c1 + c2) / 2;
    const from50 = ((l + target.l) / 2 - 50) ** 2;
    const dl = (l - target.l) / (1 + (0.015 * from50) / Math.sqrt(20 + from50));
    const dc = c1 - c2;
    const da = a1 - a2;
    const db = b - target.b;
    const dh2 = Math.max(0, da * da + db * db - dc * dc);
    const sc = 1 + 0.045 * chroma;
    const sh = 1 + 0.015 * chroma * t;
    return Math.sqrt(dl * dl + (dc * dc) / (sc * sc) + dh2 / (sh * sh));
  };
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const [cos30, sin30] = [Math.cos(radians(30)), Math.sin(radians(30))];
const [cos6, sin6] = [Math.cos(radians(6)), Math.sin(radians(6))];
const [cos63, sin63] = [Math.cos(radians(63)), Math.sin(radians(63))];
