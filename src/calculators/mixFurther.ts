import type { Spectrum } from '#lib/colour/spectrum/bands.ts';
import { drift, type DriftPoint } from '#lib/colour/healing/drift.ts';
import { pigmentedReflectance } from '#lib/colour/healing/healedColour.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { healingsDrawn, startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { whatMatters, type Matter } from '#lib/colour/healing/whatMatters.ts';
import type { MixByDropsState } from './mixByDropsFields.ts';
import { mixedOf } from './mixedOf.ts';
import { skinOf } from '#lib/colour/old/skinOf.ts';

export type MixFurther = Readonly<{
  matters: readonly Matter[];
  /**
   * Reflectance by band: the skin or old work of today, the brow before anything is lost, the brow at six
   * weeks.
   */
  spectra: Readonly<{ today: Spectrum; fresh: Spectrum; healed: Spectrum }>;
  points: readonly DriftPoint[];
}>;

const years = [0, 0.5, 1, 1.5, 2];
const seed = 1;

/**
 * More about one mix in one skin: what moves it most, its spectra, its way over two years. Nothing where
 * there is no drop or no skin.
 */
export function mixFurther(state: MixByDropsState, shelf: readonly OwnBottle[] = []): MixFurther | undefined {
  const mixed = mixedOf(state, shelf);
  const skin = skinOf(state);
  if (!skin.ok || !mixed.ok) return undefined;
  const { shares } = mixed;
  const { dose, lamp } = state;
  const setting = { depthMm: state.depth, coverage: state.coverage / 100, veilShare: modelValues.veilShare };
  const left = leftOf(startAgeing, 0);
  return {
    matters: whatMatters(skin, { shares, dose, setting, left }, lamp),
    spectra: {
      today: skin.reflectance,
      fresh: pigmentedReflectance(skin, mixLayer(shares, dose), setting),
      healed: pigmentedReflectance(skin, mixLayer(shares, dose, left), setting),
    },
    points: drift(
      skin,
      { shares, dose, setting, ageing: startAgeing, doubts: startDoubts },
      years,
      healingsDrawn,
      seed,
      lamp,
    ),
  };
}
