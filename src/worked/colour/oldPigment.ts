import { skinOf } from '#lib/colour/old/skinOf.ts';
import type { OldWork } from '#lib/colour/old/oldWorks.ts';
import { bottleMoves } from '#lib/colour/pigment/bottleMoves.ts';
import { type BottleId, bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { greenFrom } from '#lib/colour/pigment/greenFrom.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import { worked } from '../worked.ts';

const setting = { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare };
const left = leftOf(startAgeing, 0);
type Skin = Readonly<{ l: number; a: number; b: number }>;

function oldWorkIn({ l, a, b }: Skin, oldWork: OldWork) {
  const skin = skinOf({ skinL: l, skinA: a, skinB: b, oldWork });
  if (!skin.ok) throw new Error(`The worked example has no skin: ${skin.reason}.`);
  return { skin, today: spectrumToLab(skin.reflectance) };
}

/** What one dose of a bottle does to old work, and how nearly it goes the way back. */
function moveOf(bare: Skin, oldWork: OldWork, dose: number, bottle: BottleId) {
  const found = bottleMoves(oldWorkIn(bare, oldWork).skin, bare, bottles, dose, setting, left).find(
    ({ id }) => id === bottle,
  );
  if (!found) throw new Error(`No bottle is called ${bottle}.`);
  return { ...found.move, cosine: found.cosine ?? 0 };
}

/** Invented: the weaver, grey-blue over medium skin. */
const greyBlueWantsOrange = worked({
  id: 'grey-blue-wants-orange',
  inputs: { l: 63, a: 10, b: 19, dose: 0.1 },
  run: ({ l, a, b, dose }) => {
    const { today } = oldWorkIn({ l, a, b }, 'grey-blue');
    const [orange, yellow] = [
      moveOf({ l, a, b }, 'grey-blue', dose, 'orange'),
      moveOf({ l, a, b }, 'grey-blue', dose, 'yellow-oxide-some-white'),
    ];
    return {
      oldA: today.a,
      oldB: today.b,
      wayA: a - today.a,
      wayB: b - today.b,
      orangeA: orange.a,
      orangeB: orange.b,
      orangeCos: orange.cosine,
      yellowA: yellow.a,
      yellowB: yellow.b,
      yellowCos: yellow.cosine,
      answer: -orange.l,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: [],
});

/** Invented: the net mender, grey-blue over tan skin; equal drops of yellow and iron black. */
const yellowTurnsGreen = worked({
  id: 'yellow-turns-green',
  inputs: { l: 54, a: 11, b: 18, dose: 0.1, most: 0.8 },
  run: ({ l, a, b, dose, most }) => {
    const { skin } = oldWorkIn({ l, a, b }, 'grey-blue');
    const seen = (yellow: number, black: number) => {
      const shares = sharesOf(
        bottleIds.map((id) => (id === 'yellow-oxide-some-white' ? yellow : id === 'black-iron' ? black : 0)),
        bottles,
      );
      return (amount: number) => healedColour(skin, mixLayer(shares, amount, left), setting);
    };
    const [alone, mixed] = [seen(1, 0), seen(1, 1)];
    if (greenFrom((amount) => alone(amount).a, most).ok)
      throw new Error('Yellow alone turns green: the text says otherwise.');
    const from = greenFrom((amount) => mixed(amount).a, most);
    if (!from.ok) throw new Error('The worked example never turns green.');
    return { aloneA: alone(dose).a, aloneB: alone(dose).b, answer: from.dose };
  },
  shown: { digits: 1, unit: '1' },
  facts: [],
});

/** Invented: the florist, pink over brown skin: darker and cooler, at a price. */
const pinkGetsDarker = worked({
  id: 'pink-gets-darker',
  inputs: { l: 45, a: 11, b: 17, dose: 0.1 },
  run: ({ l, a, b, dose }) => {
    const { today } = oldWorkIn({ l, a, b }, 'pink');
    const move = moveOf({ l, a, b }, 'pink', dose, 'dark-brown-iron');
    return {
      oldL: today.l,
      oldA: today.a,
      wayA: a - today.a,
      moveA: move.a,
      leftA: today.a + move.a,
      newL: today.l + move.l,
      answer: -move.l,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['remnant-brown-dark-enough'],
});

/** What takes an old hue away, what turns it green, and what it costs. */
export const oldPigmentWorked = {
  'grey-blue-wants-orange': greyBlueWantsOrange,
  'yellow-turns-green': yellowTurnsGreen,
  'pink-gets-darker': pinkGetsDarker,
} as const;
