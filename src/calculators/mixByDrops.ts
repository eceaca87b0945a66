import type { Lab } from '#lib/colour/spaces/lab.ts';
import { masstone } from '#lib/colour/layers/masstone.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { mixOutlook, type MixOutlook } from '#lib/colour/healing/mixOutlook.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { healingsDrawn, startAgeing, startDoubts } from '#lib/colour/numbers/ageing.ts';
import { underLamps, type UnderLamps } from '#lib/colour/spectrum/underLamps.ts';
import { lookAgainUnder, mixByDropsFields, type MixByDropsState } from './mixByDropsFields.ts';
import { mixedOf } from './mixedOf.ts';
import { skinOf } from '#lib/colour/old/skinOf.ts';
import type { Calculator } from './spec.ts';

export type MixByDrops =
  | Readonly<{
      ok: true;
      drops: number;
      whiteShare: number;
      /** Yellow and red together. */
      warmShare: number;
      /** Something in the mix is known by its swatch alone. */
      hasSwatch: boolean;
      isOutsideMeasured: boolean;
      outlook: MixOutlook;
      /** In the bottle, under the lamp. */
      bottle: Lab;
      /** In daylight and under the lamp; under tungsten where daylight is the lamp. */
      looks: UnderLamps;
    }>
  | Readonly<{
      ok: false;
      reason: 'no-drops' | 'own-bottle-missing' | 'no-skin-like-spectrum' | 'old-pigment-not-reached';
    }>;

const years = [0, 1, 2];
const seed = 1;

/**
 * What a mix of drops becomes in one skin: six weeks, one year and two years on, with how sure that is.
 * `shelf`: the bottles of one's own.
 */
export function mixWith(state: MixByDropsState, shelf: readonly OwnBottle[]): MixByDrops {
  const mixed = mixedOf(state, shelf);
  if (!mixed.ok) return mixed;
  const skin = skinOf(state);
  if (!skin.ok) return skin;
  const { drops, shares } = mixed;
  const setting = { depthMm: state.depth, coverage: state.coverage / 100, veilShare: modelValues.veilShare };
  const plan = { shares, dose: state.dose, setting, ageing: startAgeing, doubts: startDoubts };
  const { lamp } = state;
  return {
    ok: true,
    drops,
    whiteShare: shares['77891'],
    warmShare: shares['77492'] + shares['77491'],
    hasSwatch: shares.own !== undefined,
    isOutsideMeasured: skin.isOutsideMeasured,
    outlook: mixOutlook(skin, plan, years, healingsDrawn, seed, lamp),
    bottle: masstone(shares, lamp),
    looks: underLamps(skin, plan, years, lookAgainUnder(lamp)),
  };
}

/** Mix by drops as a calculator: without bottles of one's own. */
export const mixByDrops: Calculator<MixByDropsState, MixByDrops> = {
  ...mixByDropsFields,
  solve: (state) => mixWith(state, []),
};
