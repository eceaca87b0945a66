import type { Lab } from './lab.ts';
import { halfTurnDeg, hueDeg, hueStepDeg } from './lch.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const cosDeg = (degrees: number) => Math.cos(radians(degrees));
const power7 = (value: number) => value ** 7;
const fade = (chroma: number) => Math.sqrt(power7(chroma) / (power7(chroma) + power7(25)));

/** Between two hues on the shorter side. Exactly opposite hues count as less than half a turn. */
function meanHueDeg(oneDeg: number, otherDeg: number): number {
  const sum = oneDeg + otherDeg;
  if (Math.abs(oneDeg - otherDeg) <= halfTurnDeg) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

/**
 * The colour difference CIEDE2000 with kL = kC = kH = 1 (ISO/CIE 11664-6), by the hue rules of Sharma, Wu &
 * Dalal 2005.
 * Both colours must be seen in the same light. Made for differences up to about 5; larger ones rank only
 * roughly.
 */
export function ciede2000(one: Lab, other: Lab): number {
  const stretch = 1 + 0.5 * (1 - fade((Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2));
  const [a1, a2] = [one.a * stretch, other.a * stretch];
  const [c1, c2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const [h1, h2] = [hueDeg(a1, one.b), hueDeg(a2, other.b)];

  const lightness = (one.l + other.l) / 2;
  const chroma = (c1 + c2) / 2;
  const hue = meanHueDeg(h1, h2);
  // Beside a grey this is 0, and no hue counts below: the printed rules for a hue that is none need no case
  // of their own.
  const hueStep = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(hueStepDeg(h1, h2) / 2));

  const t =
    1 -
    0.17 * cosDeg(hue - 30) +
    0.24 * cosDeg(2 * hue) +
    0.32 * cosDeg(3 * hue + 6) -
    0.2 * cosDeg(4 * hue - 63);
  const from50 = (lightness - 50) ** 2;
  const l = (other.l - one.l) / (1 + (0.015 * from50) / Math.sqrt(20 + from50));
  const c = (c2 - c1) / (1 + 0.045 * chroma);
  const h = hueStep / (1 + 0.015 * chroma * t);
  const turn = -Math.sin(radians(60 * Math.exp(-(((hue - 275) / 25) ** 2)))) * 2 * fade(chroma);
  return Math.sqrt(l * l + c * c + h * h + turn * c * h);
}
