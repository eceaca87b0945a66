import type { Bottle } from './bottles.ts';
import { hueCosine, type Move } from '../spaces/hueCosine.ts';
import { healedColour, type Setting } from '../healing/healedColour.ts';
import type { Lab } from '../spaces/lab.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { type Factors, mixLayer } from './pigments.ts';
import type { SkinOptics } from '../layers/skinOptics.ts';

/** What one small dose of a bottle does, and how well its direction takes the old hue away. */
export type BottleMove = Readonly<{ id: string; move: Move; cosine: number | undefined }>;

const between = (from: Lab, to: Lab): Move => ({ l: to.l - from.l, a: to.a - from.a, b: to.b - from.b });

/**
 * Where one small dose of each bottle moves a skin with old pigment in it, and the cosine of that with the
 * way back to the bare skin beside it. Best first. This finds the hue that neutralises; which recipe reaches
 * a target is another question.
 * `left` is what remains of each pigment at the time of interest.
 */
export function bottleMoves(
  skin: SkinOptics,
  bare: Lab,
  bottles: readonly Bottle[],
  dose: number,
  setting: Setting,
  left: Factors,
): readonly BottleMove[] {
  const today = spectrumToLab(skin.reflectance);
  const way = between(today, bare);
  return bottles
    .map(({ id, shares }) => {
      const move = between(today, healedColour(skin, mixLayer(shares, dose, left), setting));
      return { id, move, cosine: hueCosine(move, way) };
    })
    .toSorted((one, other) => (other.cosine ?? -2) - (one.cosine ?? -2));
}
