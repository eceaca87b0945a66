import type { Bottle } from './bottles.ts';
import { healedColour, type Setting } from './healedColour.ts';
import type { Lab } from './lab.ts';
import { spectrumToLab } from './observe.ts';
import { mixLayer, type Shares } from './pigments.ts';
import type { SkinOptics } from './skinOptics.ts';

/** A change of colour in L*, a* and b*. */
export type Move = Readonly<{ l: number; a: number; b: number }>;

/** What one small dose of a bottle does, and how well its direction takes the old hue away. */
export type BottleMove = Readonly<{ id: string; move: Move; cosine: number | undefined }>;

const between = (from: Lab, to: Lab): Move => ({ l: to.l - from.l, a: to.a - from.a, b: to.b - from.b });

/**
 * The cosine of the angle between two moves in the a*b* plane: 1 for the same direction, 0 for square to it, −1 for the
 * opposite. Lightness does not count. Undefined where one of the two goes nowhere.
 */
export function hueCosine(one: Move, other: Move): number | undefined {
  const size = Math.hypot(one.a, one.b) * Math.hypot(other.a, other.b);
  return size > 1e-12 ? (one.a * other.a + one.b * other.b) / size : undefined;
}

/**
 * Where one small dose of each bottle moves a skin with old pigment in it, and the cosine of that with the way back to the
 * bare skin beside it. Best first. This finds the hue that neutralises; which recipe reaches a target is another question.
 * `left` is what remains of each pigment at the time of interest.
 */
export function bottleMoves(skin: SkinOptics, bare: Lab, bottles: readonly Bottle[], dose: number, setting: Setting, left: Shares): readonly BottleMove[] {
  const today = spectrumToLab(skin.reflectance);
  const way = between(today, bare);
  return bottles
    .map(({ id, shares }) => {
      const move = between(today, healedColour(skin, mixLayer(shares, dose, left), setting));
      return { id, move, cosine: hueCosine(move, way) };
    })
    .toSorted((one, other) => (other.cosine ?? -2) - (one.cosine ?? -2));
}

const halvings = 40;

/**
 * The lowest dose from which a* lies below zero, where colour turns from red to green, or that it never does up to `most`.
 * `aAt` gives a* at a dose. Looked for at `steps` even doses and then by halving: a dip between two doses is not seen.
 */
export function greenFrom(aAt: (dose: number) => number, most: number, steps = 80): Readonly<{ ok: true; dose: number }> | Readonly<{ ok: false; reason: 'never-green' }> {
  for (let i = 1; i <= steps; i++) {
    let [low, high] = [((i - 1) / steps) * most, (i / steps) * most];
    if (!(aAt(high) < 0)) continue;
    for (let round = 0; round < halvings; round++) {
      const middle = (low + high) / 2;
      if (aAt(middle) < 0) high = middle;
      else low = middle;
    }
    return { ok: true, dose: high };
  }
  return { ok: false, reason: 'never-green' };
}
