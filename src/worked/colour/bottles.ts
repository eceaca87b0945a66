import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { bottleOf, bottles } from '#lib/colour/pigment/bottles.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { masstone } from '#lib/colour/layers/masstone.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { mixLayer, type Shares } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { worked } from '../worked.ts';

/**
 * Invented skins; the mix the drop calculator opens on. Colours straight over the pigment, before any of it
 * is lost.
 */
const bottleAndSkin = worked({
  id: 'bottle-and-skin',
  inputs: {
    brown: 3,
    orange: 1,
    dose: 0.3,
    lightL: 72,
    lightA: 9,
    lightB: 16,
    deepL: 36,
    deepA: 10,
    deepB: 14,
    deeperMm: 0.2,
  },
  run: ({ brown, orange, dose, lightL, lightA, lightB, deepL, deepA, deepB, deeperMm }) => {
    const shares = sharesOf(
      bottleIds.map((id) => (id === 'brown-yellow-heavy' ? brown : id === 'orange' ? orange : 0)),
      bottles,
    );
    const inSkin = (skin: Lab, depthMm: number): Lab => {
      const optics = skinOptics(skin);
      if (!optics.ok) throw new Error('The worked example has no skin: no measured one is like it.');
      return healedColour(optics, mixLayer(shares, dose), {
        depthMm,
        coverage: 1,
        veilShare: modelValues.veilShare,
      });
    };
    const [light, deep] = [
      { l: lightL, a: lightA, b: lightB },
      { l: deepL, a: deepA, b: deepB },
    ];
    const bottle = masstone(shares);
    const [inLight, inDeep, deeper] = [
      inSkin(light, modelValues.depthMm),
      inSkin(deep, modelValues.depthMm),
      inSkin(light, deeperMm),
    ];
    return {
      depthMm: modelValues.depthMm,
      bottleL: bottle.l,
      bottleA: bottle.a,
      bottleB: bottle.b,
      inLightL: inLight.l,
      inLightA: inLight.a,
      inLightB: inLight.b,
      inDeepL: inDeep.l,
      inDeepA: inDeep.a,
      deeperL: deeper.l,
      deeperA: deeper.a,
      answer: inLight.l - bottle.l,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['model-depth-mm', 'veil-share'],
});

/** Invented: two bottles whose labels list the same three pigments in the same order, 5:3:2 and 7:2:1. */
const oneLabelTwoBottles = worked({
  id: 'one-label-two-bottles',
  inputs: {
    yellow: 5,
    black: 3,
    red: 2,
    otherYellow: 7,
    otherBlack: 2,
    otherRed: 1,
    dose: 0.3,
    skinL: 54,
    skinA: 10,
    skinB: 18,
  },
  run: ({ yellow, black, red, otherYellow, otherBlack, otherRed, dose, skinL, skinA, skinB }) => {
    const [first, second] = [
      bottleOf('first', { '77492': yellow, '77499': black, '77491': red }).shares,
      bottleOf('second', { '77492': otherYellow, '77499': otherBlack, '77491': otherRed }).shares,
    ];
    const skin = skinOptics({ l: skinL, a: skinA, b: skinB });
    if (!skin.ok) throw new Error('The worked example has no skin: no measured one is like it.');
    const inSkin = (shares: Shares): Lab =>
      healedColour(skin, mixLayer(shares, dose), {
        depthMm: modelValues.depthMm,
        coverage: 1,
        veilShare: modelValues.veilShare,
      });
    const [one, other] = [masstone(first), masstone(second)];
    return {
      oneL: one.l,
      oneA: one.a,
      oneB: one.b,
      otherL: other.l,
      otherA: other.a,
      otherB: other.b,
      inSkinApart: ciede2000(inSkin(first), inSkin(second)),
      answer: ciede2000(one, other),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['label-order-free-below-percent', 'model-depth-mm'],
});

/** Worked examples about bottles, in the bottle and in skin. */
export const bottlesWorked = {
  'bottle-and-skin': bottleAndSkin,
  'one-label-two-bottles': oneLabelTwoBottles,
} as const;
