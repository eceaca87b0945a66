import { bottles } from '#lib/colour/pigment/bottles.ts';
import { type Shares } from '#lib/colour/pigment/pigments.ts';
import { type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';

const skinFound = skinOptics({ l: 61, a: 10, b: 18 });
if (!skinFound.ok) throw new Error(skinFound.reason);
const skin = skinFound;

export const task: RecipeTask = {
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

export const shares = (some: Partial<Shares>): Shares => ({
  '77891': 0,
  '77492': 0,
  '77491': 0,
  '77499': 0,
  '77266': 0,
  ...some,
});
