import { linearLight } from '../spaces/srgbToLab.ts';

/**
 * How the light on a flat card changes, as a part of its mean, a dot to the right and a dot down; `off`: the
 * standard error of either.
 */
export type LightSlope = Readonly<{ across: number; down: number; off: number }>;

/** The light of one dot, 0 to 1 (IEC 61966-2-1). */
const lightAt = (dots: ArrayLike<number>, at: number) =>
  0.2126390059 * linearLight((dots[at] ?? 0) / 255) +
  0.7151686788 * linearLight((dots[at + 1] ?? 0) / 255) +
  0.0721923154 * linearLight((dots[at + 2] ?? 0) / 255);

/**
 * A plane through the light of a square patch by least squares. `side`: dots along its edge, two at least.
 * Undefined for a black patch or one of another size.
 */
export function lightSlope(dots: ArrayLike<number>, side: number): LightSlope | undefined {
  const count = side * side;
  if (side < 2 || dots.length !== 4 * count) return undefined;
  const middle = (side - 1) / 2;
  let [sum, squares, across, down] = [0, 0, 0, 0];
  for (let dot = 0; dot < count; dot++) {
    const light = lightAt(dots, 4 * dot);
    sum += light;
    squares += light * light;
    across += ((dot % side) - middle) * light;
    down += (Math.floor(dot / side) - middle) * light;
  }
  if (sum === 0) return undefined;
  // Squares of the distances from the middle: the same along both edges.
  const reach = (count * (side * side - 1)) / 12;
  const left = squares - sum ** 2 / count - (across ** 2 + down ** 2) / reach;
  const mean = sum / count;
  return {
    across: across / reach / mean,
    down: down / reach / mean,
    off: Math.sqrt(Math.max(0, left) / count / reach) / mean,
  };
}

/**
 * Light at a place may not fall below a twentieth of the card's: a straight line knows nothing so far out.
 */
const leastTimes = 0.05;
const sureFrom = 3;

/**
 * How much lighter skin reads than it is because it stands in more light than the card, in L*; 0 where the
 * slope is no larger than its own error.
 * `toSkin`: dots from the middle of the card to the middle of the skin. The slope is taken to go on as it
 * begins.
 */
export function lightnessTooHigh(
  lightness: number,
  { across, down, off }: LightSlope,
  toSkin: Readonly<{ across: number; down: number }>,
): number {
  const change = across * toSkin.across + down * toSkin.down;
  if (Math.abs(change) <= sureFrom * off * Math.hypot(toSkin.across, toSkin.down)) return 0;
  return (lightness + 16) * (1 - Math.max(leastTimes, 1 + change) ** (-1 / 3));
}
