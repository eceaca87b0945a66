import { bottles, noPigment, type Bottle } from '#lib/colour/pigment/bottles.ts';
import type { RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

const skinFound = skinOptics({ l: 61, a: 10, b: 18 });
if (!skinFound.ok) throw new Error(skinFound.reason);
const skin = skinFound;

export const base: RecipeTask = {
  skin,
  setting: { depthMm: 0.1, coverage: 0.7, veilShare: 0.35 },
  bottles,
  ageing: startAgeing,
  doses: [0.1, 0.3],
  times: [0, 2],
  target: { l: 47, a: 10, b: 13 },
  mostBottles: 3,
  mostDrops: 5,
  mostWhiteShare: 1,
};

/** Own spectra beside the pigments, and shares that add to less than 1. */
export const withOwn: readonly Bottle[] = [
  { id: 'one', shares: { ...noPigment, '77491': 0.3, '77499': 0.5 } },
  {
    id: 'other',
    shares: {
      ...noPigment,
      '77891': 0.4,
      '77499': 0.1,
      own: Array.from({ length: 36 }, (_, band) => ({ k: 0.3 + band / 100, s: 0.2 })),
    },
  },
  { id: 'third', shares: { ...noPigment, '77492': 0.9 } },
];
