import { foldedWeights } from '../../tables/foldedWeights.ts';
import { bandCount } from '../spectrum/bands.ts';
import { mixLayer } from '../pigment/pigments.ts';
import { leftOf } from '../healing/uncertainHealing.ts';
import type { RecipeTask } from './recipeTask.ts';
import { rowLength, skinMap } from './skinMap.ts';

/** Bands from the one that weighs most in lightness to the one that weighs least. */
export const bandOrder: readonly number[] = foldedWeights.D65.y
  .map((weight, band) => ({ weight, band }))
  .toSorted((one, other) => other.weight - one.weight)
  .map(({ band }) => band);

/** Numbers to a row: five of the skin (skinMap.ts), then the weights of the band in X, Y and Z. */
export const rowWidth = 8;

/** The skin's numbers and the weights, band after band in the order above. */
export function bandRows({ skin, setting }: Pick<RecipeTask, 'skin' | 'setting'>): Float64Array {
  const map = skinMap(skin, setting);
  const { x, y, z } = foldedWeights.D65;
  const rows = new Float64Array(rowWidth * bandCount);
  bandOrder.forEach((band, i) => {
    rows.set(map.subarray(band * rowLength, band * rowLength + 5), i * rowWidth);
    rows.set([x[band] ?? 0, y[band] ?? 0, z[band] ?? 0], i * rowWidth + 5);
  });
  return rows;
}

/** Numbers to a mix: K and S of every band in the order above. */
export const mixWidth = 2 * bandCount;

/** One part of each bottle at unit dose, for each time: as many mixes as times × bottles. */
export function bottleUnits({
  bottles,
  times,
  ageing,
}: Pick<RecipeTask, 'bottles' | 'times' | 'ageing'>): Float64Array {
  const units = new Float64Array(times.length * bottles.length * mixWidth);
  times.forEach((years, time) => {
    const left = leftOf(ageing, years);
    bottles.forEach(({ shares }, bottle) =>
      units.set(orderedMix(mixLayer(shares, 1, left)), (time * bottles.length + bottle) * mixWidth),
    );
  });
  return units;
}

/** A layer as a mix in the order above. */
export function orderedMix(layer: ReturnType<typeof mixLayer>): Float64Array {
  const mix = new Float64Array(mixWidth);
  bandOrder.forEach((band, i) => {
    mix[2 * i] = layer[band]?.k ?? 0;
    mix[2 * i + 1] = layer[band]?.s ?? 0;
  });
  return mix;
}
