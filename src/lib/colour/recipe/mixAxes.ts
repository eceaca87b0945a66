import { mixLayer, pigmentIds, type PigmentId, type Shares } from '../pigment/pigments.ts';
import { leftOf } from '../healing/uncertainHealing.ts';
import { mixWidth, orderedMix, rowWidth } from './bandRows.ts';
import type { RecipeTask } from './recipeTask.ts';

/** One axis of the space of mixes: the share of one pigment, in `steps` slots from `lo`. */
export type MixAxis = Readonly<{ pigment: PigmentId; lo: number; step: number; steps: number }>;

/**
 * The axes along which mixes are told apart: every pigment that the bottles hold in different shares, but for
 * one, whose share follows from the others. A pigment that moves K and S more gets more slots; `cells` is
 * about their number in all.
 */
export function mixAxes(
  { bottles, ageing }: Pick<RecipeTask, 'bottles' | 'ageing'>,
  rows: Float64Array,
  cells: number,
): Readonly<{ axes: readonly MixAxis[]; rest: PigmentId }> {
  const left = leftOf(ageing, 0);
  const spans = pigmentIds.map((pigment) => {
    const shares = bottles.map((bottle) => bottle.shares[pigment]);
    return { pigment, lo: Math.min(...shares), hi: Math.max(...shares), mix: pigmentMix(pigment, left) };
  });
  const varied = spans.filter(({ lo, hi }) => hi - lo > 1e-9);
  const apart = (one: Float64Array, other: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < mixWidth; i++)
      sum += (rows[(i >> 1) * rowWidth + 6] ?? 0) * Math.abs((one[i] ?? 0) - (other[i] ?? 0));
    return sum;
  };
  const strengthAgainst = (rest: Float64Array) =>
    varied.reduce((sum, { mix, lo, hi }) => sum + (hi - lo) * apart(mix, rest), 0);
  const [rest = spans[0]] = varied.toSorted(
    (one, other) => strengthAgainst(one.mix) - strengthAgainst(other.mix),
  );
  const others = varied.filter(({ pigment }) => pigment !== rest?.pigment);
  const strengths = others.map(({ mix, lo, hi }) => (hi - lo) * apart(mix, rest?.mix ?? mix));
  const per =
    (cells / strengths.reduce((product, strength) => product * strength, 1)) **
    (1 / Math.max(1, others.length));
  const axes = others.map(({ pigment, lo, hi }, i): MixAxis => {
    const steps = Math.max(2, Math.round(per * (strengths[i] ?? 0)));
    return { pigment, lo, step: (hi - lo) / steps, steps };
  });
  return { axes, rest: rest?.pigment ?? '77492' };
}

/** A pigment alone at unit dose, with what is left of it. */
export function pigmentMix(pigment: PigmentId, left: Shares): Float64Array {
  const alone: Shares = { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0, [pigment]: 1 };
  return orderedMix(mixLayer(alone, 1, left));
}
