import { bottles } from '#lib/colour/bottles.ts';
import { bottleIds } from '#lib/colour/bottleIds.ts';
import type { Lab } from '#lib/colour/lab.ts';
import { masstone } from '#lib/colour/masstone.ts';
import { modelValues } from '#lib/colour/modelValues.ts';
import { mixOutlook, type MixOutlook } from '#lib/colour/mixOutlook.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing, startDoubts } from '#lib/colour/startPlan.ts';
import { underLamps, type UnderLamps } from '#lib/colour/underLamps.ts';
import { lookAgainUnder, mixByDropsFields, type MixByDropsState } from './mixByDropsFields.ts';
import { skinOf } from './oldLooks.ts';
import type { Calculator } from './spec.ts';

export type MixByDrops =
  | Readonly<{
      ok: true;
      drops: number;
      whiteShare: number;
      /** Yellow and red together. */
      warmShare: number;
      isOutsideMeasured: boolean;
      outlook: MixOutlook;
      /** In the bottle, under the lamp. */
      bottle: Lab;
      /** In daylight and under the lamp; under tungsten where daylight is the lamp. */
      looks: UnderLamps;
    }>
  | Readonly<{ ok: false; reason: 'no-drops' | 'no-skin-like-spectrum' | 'old-pigment-not-reached' }>;

const years = [0, 1, 2];
const draws = 400;
const seed = 1;

/** What a mix of drops becomes in one skin: six weeks, one year and two years on, with how sure that is. */
export const mixByDrops: Calculator<MixByDropsState, MixByDrops> = {
  ...mixByDropsFields,
  solve: (state) => {
    const recipe = bottleIds.map((id) => Math.round(state[id]));
    const drops = recipe.reduce((sum, count) => sum + count, 0);
    if (drops === 0) return { ok: false, reason: 'no-drops' };
    const skin = skinOf(state);
    if (!skin.ok) return skin;
    const shares = sharesOf(recipe, bottles);
    const setting = { depthMm: state.depth, coverage: state.coverage / 100, veilShare: modelValues.veilShare };
    const plan = { shares, dose: state.dose, setting, ageing: startAgeing, doubts: startDoubts };
    const { lamp } = state;
    return {
      ok: true, drops, whiteShare: shares['77891'], warmShare: shares['77492'] + shares['77491'], isOutsideMeasured: skin.isOutsideMeasured,
      outlook: mixOutlook(skin, plan, years, draws, seed, lamp),
      bottle: masstone(shares, lamp),
      looks: underLamps(skin, plan, years, lookAgainUnder(lamp)),
    };
  },
};
