import { bottles } from '#lib/colour/pigment/bottles.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { farEnough, findRecipe, near } from '#lib/colour/recipe/findRecipe.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { worked } from '../worked.ts';

const shelf = bottles.filter(({ id }) =>
  ['orange', 'red-oxide-some-yellow', 'dark-brown-carbon', 'black-iron'].includes(id),
);

/**
 * Invented: the glazier, four bottles, one dose. The nearest recipe of one, two and three drops and of all;
 * the simplest within half a unit.
 */
const dropsAgainstDifference = worked({
  id: 'drops-against-difference',
  inputs: { l: 63, a: 10, b: 19, wantL: 53, wantA: 11, wantB: 15, dose: 0.2, near },
  run: ({ l, a, b, wantL, wantA, wantB, dose }) => {
    const skin = skinOptics({ l, a, b });
    if (!skin.ok) throw new Error(`The worked example has no skin: ${skin.reason}.`);
    const setting = { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare };
    const found = findRecipe({
      skin,
      setting,
      bottles: shelf,
      ageing: startAgeing,
      doses: [dose],
      times: [0, 2],
      target: { l: wantL, a: wantA, b: wantB },
      mostBottles: 3,
      mostDrops: 8,
      mostWhiteShare: 0.1,
    });
    if (!found.ok) throw new Error(found.reason);
    const [one, two] = found.byDrops;
    const count = ({ recipe }: typeof found.best) => recipe.reduce((sum, drops) => sum + drops, 0);
    const [orange = 0, , , black = 0] = found.simplest.recipe;
    return {
      one: one?.score ?? NaN,
      two: two?.score ?? NaN,
      orange,
      black,
      drops: count(found.simplest),
      nearest: found.best.score,
      nearestDrops: count(found.best),
      limit: Math.max(farEnough, found.best.score + near),
      answer: found.simplest.score,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['recipes-in-drops'],
});

export const dropsWorked = { 'drops-against-difference': dropsAgainstDifference } as const;
