import { bottles } from '#lib/colour/bottles.ts';
import { bottleIds } from '#lib/colour/bottleIds.ts';
import type { Lab } from '#lib/colour/lab.ts';
import { modelValues } from '#lib/colour/modelValues.ts';
import { mixOutlook, type MixOutlook } from '#lib/colour/mixOutlook.ts';
import { overOldPigment } from '#lib/colour/oldPigment.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/skinOptics.ts';
import { startAgeing, startDoubts } from '#lib/colour/startPlan.ts';
import { mixByDropsFields, type MixByDropsState, type OldWork } from './mixByDropsFields.ts';
import type { Calculator } from './spec.ts';

export type MixByDrops =
  | Readonly<{ ok: true; drops: number; whiteShare: number; isOutsideMeasured: boolean; outlook: MixOutlook }>
  | Readonly<{ ok: false; reason: 'no-drops' | 'no-skin-like-spectrum' | 'old-pigment-not-reached' }>;

/** Old work by its look, as a change of the skin around it: L* of its own, a* and b* moved. Invented. */
const oldLooks: Readonly<Record<Exclude<OldWork, 'none'>, (skin: Lab) => Lab>> = {
  'grey-blue': ({ l }) => ({ l: l * 0.74, a: 0, b: -2 }),
  'ash-grey': ({ l }) => ({ l: l * 0.72, a: 1, b: 4 }),
  green: ({ l }) => ({ l: l * 0.74, a: -2, b: 9 }),
  violet: ({ l }) => ({ l: l * 0.74, a: 7, b: -1 }),
  pink: ({ l }) => ({ l: l * 0.84, a: 19, b: 12 }),
  orange: ({ l }) => ({ l: l * 0.84, a: 17, b: 25 }),
};

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
    const bare: Lab = { l: state.skinL, a: state.skinA, b: state.skinB };
    const skin = state.oldWork === 'none' ? skinOptics(bare) : overOldPigment(bare, oldLooks[state.oldWork](bare));
    if (!skin.ok) return skin;
    const shares = sharesOf(recipe, bottles);
    const setting = { depthMm: state.depth, coverage: state.coverage / 100, veilShare: modelValues.veilShare };
    const plan = { shares, dose: state.dose, setting, ageing: startAgeing, doubts: startDoubts };
    return { ok: true, drops, whiteShare: shares['77891'], isOutsideMeasured: skin.isOutsideMeasured, outlook: mixOutlook(skin, plan, years, draws, seed, state.lamp) };
  },
};
