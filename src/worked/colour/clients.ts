import type { Bottle } from '#lib/colour/pigment/bottles.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { overOldPigment } from '#lib/colour/pigment/oldPigment.ts';
import { findRecipe, type Found } from '#lib/colour/recipe/findRecipe.ts';
import { colourerOf, type RecipeTask } from '#lib/colour/recipe/recipeTask.ts';
import { skinOptics, type SkinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { worked } from '../worked.ts';

const setting = { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare };
const limit = modelValues.reachedBelow;
const browns = bottles.filter(({ id }) => id.includes('brown'));

type Wish = Readonly<{ skin: Lab; old?: Lab; wanted: Lab; from?: readonly Bottle[]; white?: number }>;

function opticsOf({ skin, old }: Wish): SkinOptics {
  const optics = old ? overOldPigment(skin, old) : skinOptics(skin);
  if (!optics.ok) throw new Error(`The worked example has no skin: ${optics.reason}.`);
  return optics;
}

/**
 * Every recipe of at most four drops from three bottles, at six doses, judged at six weeks and at two years.
 */
function searched(wish: Wish): Readonly<{ task: RecipeTask; best: Found; simplest: Found }> {
  const task: RecipeTask = {
    skin: opticsOf(wish),
    setting,
    bottles: wish.from ?? bottles,
    ageing: startAgeing,
    doses: [0.05, 0.1, 0.2, 0.3, 0.45, 0.65],
    target: wish.wanted,
    times: [0, 2],
    mostBottles: 3,
    mostDrops: 4,
    mostWhiteShare: wish.white ?? 0.1,
  };
  const found = findRecipe(task);
  if (!found.ok) throw new Error(found.reason);
  return { task, best: found.best, simplest: found.simplest };
}

const nearest = (wish: Wish): number => searched(wish).best.score;
const lightnessAfter = ({ task, simplest }: ReturnType<typeof searched>): number =>
  colourerOf(task)(simplest.recipe, simplest.dose)[0]?.l ?? Number.NaN;

type Numbers = Readonly<{
  l: number;
  a: number;
  b: number;
  oldL: number;
  oldA: number;
  oldB: number;
  wantL: number;
  wantA: number;
  wantB: number;
}>;
const wishOf = ({ l, a, b, oldL, oldA, oldB, wantL, wantA, wantB }: Numbers) => ({
  skin: { l, a, b },
  old: { l: oldL, a: oldA, b: oldB },
  wanted: { l: wantL, a: wantA, b: wantB },
});
const apartNow = ({ old, wanted }: ReturnType<typeof wishOf>): number => ciede2000(old, wanted);

/** A brown a fifth darker than the skin, on five skins; on the deepest, one an eighth darker as well. */
const brownOnFiveSkins = worked({
  id: 'brown-on-five-skins',
  inputs: { wantA: 9, wantB: 13, limit, deepest: 36, smallStep: 31.5 },
  run: ({ wantA, wantB, deepest, smallStep }) => {
    const on = (l: number, a: number, b: number, wantL = 0.8 * l) =>
      nearest({ skin: { l, a, b }, wanted: { l: wantL, a: wantA, b: wantB } });
    return {
      on72: on(72, 8, 16),
      on63: on(63, 10, 19),
      on54: on(54, 11, 18),
      on45: on(45, 11, 17),
      on36: on(deepest, 10, 14),
      answer: on(deepest, 10, 14, smallStep),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below'],
});

/**
 * Invented: the baker, light orange with a sharp edge. A brown corrects the hue; the brows have to settle
 * first.
 */
const bakerOrange = worked({
  id: 'baker-orange',
  inputs: { l: 58, a: 9, b: 20, oldL: 51, oldA: 15, oldB: 23.5, wantL: 45, wantA: 11, wantB: 16, limit },
  run: (numbers) => {
    const found = searched({ ...wishOf(numbers), from: browns });
    return {
      now: apartNow(wishOf(numbers)),
      newL: lightnessAfter(found),
      price: numbers.oldL - lightnessAfter(found),
      answer: found.simplest.score,
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below', 'remnant-brown-dark-enough'],
});

/**
 * Invented: the violinist, salmon. Inside the shape a brown reaches; outside, skin colour does not bring her
 * skin back.
 */
const violinistSalmon = worked({
  id: 'violinist-salmon',
  inputs: { l: 62, a: 10, b: 17, oldL: 56.5, oldA: 16, oldB: 15, wantL: 48, wantA: 11, wantB: 13, limit },
  run: (numbers) => {
    const wish = wishOf(numbers);
    return {
      inside: nearest({ ...wish, from: browns }),
      tailNow: ciede2000(wish.old, wish.skin),
      answer: nearest({ ...wish, wanted: wish.skin, white: 1 }),
    };
  },
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below', 'old-red-heals-pink'],
});

/**
 * Invented: the ferry pilot, grey-blue and already darker than the brown she wants: lighten first, no colour
 * today.
 */
const pilotGreyBlue = worked({
  id: 'pilot-grey-blue',
  inputs: { l: 66, a: 9, b: 14, oldL: 46, oldA: 1, oldB: 4, wantL: 52.8, wantA: 9, wantB: 13, limit },
  run: (numbers) => ({
    now: apartNow(wishOf(numbers)),
    white: nearest({ ...wishOf(numbers), white: 1 }),
    answer: nearest(wishOf(numbers)),
  }),
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below'],
});

/**
 * Invented: the choir leader, ash-grey in deep skin, with lumps and itch: the sum says no, and is not even
 * asked.
 */
const choirLeaderAshGrey = worked({
  id: 'choir-leader-ash-grey',
  inputs: { l: 36, a: 11, b: 15, oldL: 25.9, oldA: 1, oldB: 4, wantL: 28.8, wantA: 9, wantB: 13, limit },
  run: (numbers) => ({ now: apartNow(wishOf(numbers)), answer: nearest(wishOf(numbers)) }),
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below'],
});

/**
 * Invented: the potter, a brown and a skin-coloured layer that a laser darkened. Any pigment leaves it
 * farther off.
 */
const potterDarkened = worked({
  id: 'potter-darkened',
  inputs: { l: 70, a: 8, b: 13, oldL: 50, oldA: 5, oldB: 8, wantL: 56, wantA: 9, wantB: 13, limit },
  run: (numbers) => ({ now: apartNow(wishOf(numbers)), answer: nearest(wishOf(numbers)) }),
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below', 'laser-darkened'],
});

/** Invented: the bell-ringer, an even brown at eleven months: near enough, so it is left. */
const bellRingerLeaveIt = worked({
  id: 'bell-ringer-leave-it',
  inputs: { l: 54, a: 10, b: 18, oldL: 45, oldA: 9.5, oldB: 15, wantL: 43.2, wantA: 9, wantB: 13, limit },
  run: (numbers) => ({ could: nearest(wishOf(numbers)), answer: apartNow(wishOf(numbers)) }),
  shown: { digits: 1, unit: '1' },
  facts: ['cover-counts-below'],
});

/** The clients whose colour is worked out, each with a true problem, a decoy and an ending. */
export const clientsWorked = {
  'brown-on-five-skins': brownOnFiveSkins,
  'baker-orange': bakerOrange,
  'violinist-salmon': violinistSalmon,
  'pilot-grey-blue': pilotGreyBlue,
  'choir-leader-ash-grey': choirLeaderAshGrey,
  'potter-darkened': potterDarkened,
  'bell-ringer-leave-it': bellRingerLeaveIt,
} as const;
