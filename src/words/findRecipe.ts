import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { isBeingMended } from './beingMended.ts';
import { bottleWords } from './bottleWords.ts';
import { labWords, skinOnPaper } from './mixByDrops.ts';
import { fixed } from './number.ts';

type Shown = Readonly<{
  recipe: readonly number[];
  dose: number;
  score: number;
  colours: readonly Lab[];
  near: number;
  whiteShare: number;
  hasSwatch: boolean;
}>;
type Result =
  | Readonly<{
      ok: true;
      works: boolean;
      simplest: Shown;
      best: Shown;
      nearBest: number;
      hasMoreNear: boolean;
      away: number;
      isOutsideMeasured: boolean;
    }>
  | Readonly<{ ok: false; reason: 'no-skin-like-spectrum' | 'old-pigment-not-reached' | 'nothing-allowed' }>;

const counted = (drops: number) => (drops === 1 ? '1 drop' : `${drops} drops`);

/**
 * "3 drops brown, yellow-heavy; 1 drop orange". Most drops first. `own`: names of bottles beside the palette.
 */
export function recipeWords(recipe: readonly number[], own: readonly string[] = []): string {
  return [...bottleIds.map((id) => bottleWords[id]), ...own]
    .map((name, i) => ({ name, drops: recipe[i] ?? 0 }))
    .filter(({ drops }) => drops > 0)
    .sort((one, other) => other.drops - one.drops)
    .map(({ name, drops }) => `${counted(drops)} ${name}`)
    .join('; ');
}

type Asked = Parameters<typeof skinOnPaper>[0] &
  Readonly<{
    targetL: number;
    targetA: number;
    targetB: number;
    bottles: number;
    drops: number;
    white: number;
    darker: number;
    lean: number;
  }>;
/**
 * What was searched for, in which skin, from which bottles and within which limits, for paper: there the
 * fields are left out. `own`: names of bottles beside the palette.
 */
export function recipeOnPaper(state: Asked, doses: readonly number[], own: readonly string[]): string {
  const { targetL: l, targetA: a, targetB: b, bottles, drops, white, darker, lean } = state;
  return `Target ${labWords({ l, a, b })}. ${skinOnPaper(state)} At most ${counted(drops)} from ${bottles} ${bottles === 1 ? 'bottle' : 'bottles'}, ${white} % white; from the target at most ${darker} L* darker and ${lean}° in hue, at both dates. Doses ${doses.join(', ')}. Bottles: ${[...Object.values(bottleWords), ...own].join('; ')}.`;
}

const refusals = {
  'no-skin-like-spectrum': {
    answer: 'No measured skin is like this colour.',
    doubt: 'Check the three numbers of the skin: they are read under daylight, before anything touches it.',
  },
  'old-pigment-not-reached': {
    answer: 'This old colour cannot be laid over this skin in the model.',
    doubt: 'Check the numbers of the skin.',
  },
  'nothing-allowed': {
    answer: 'The limits leave no recipe.',
    doubt:
      'Every one holds more white, turns darker or leans farther than you allow. Ease a limit, or choose another target.',
  },
} as const;

/** The simplest good recipe and how sure it is, or that cover is not predicted to work. */
export function recipeSays(
  result: Result,
  hasOldWork: boolean,
  own: readonly string[] = [],
): Readonly<{ answer: string; doubt: string }> {
  if (!result.ok && result.reason === 'nothing-allowed' && hasOldWork)
    return {
      answer: 'Cover is not predicted to work within these limits.',
      doubt:
        'Every recipe holds more white, turns darker or leans farther than you allow. Consider lightening first, or referral for removal.',
    };
  if (!result.ok) return refusals[result.reason];
  const { works, simplest, best, nearBest, hasMoreNear, away } = result;
  if (!works) {
    const nearest = `The nearest recipe stays ${fixed(best.score)} from the target at one of the two dates; under 3 would count. Today’s colour is ${fixed(away)} away.`;
    return hasOldWork
      ? {
          answer: 'Cover is not predicted to work in this model.',
          doubt: `${nearest} Consider lightening first, or referral for removal.`,
        }
      : {
          answer: 'No recipe is predicted to reach this colour in this skin.',
          doubt: `${nearest} A lighter target, or more of the skin covered, may be within reach.`,
        };
  }
  const others =
    nearBest > 1
      ? ` ${hasMoreNear ? 'More than ' : ''}${nearBest - 1} other mixes come as near: this one is the simplest.`
      : '';
  return {
    answer: `${recipeWords(simplest.recipe, own)}, at a dose of ${fixed(simplest.dose, 2)}.`,
    doubt: `In this model it stays within ${fixed(simplest.score)} of the target at six weeks and at two years; 3 is still near. ${fixed(100 * simplest.near, 0)} of 100 simulated healings stay near at both.${others}`,
  };
}

/**
 * What the page says today. While it is being mended how near the recipes come, and none of them: what is
 * named is mixed.
 */
export function recipeToSay(
  result: Result,
  hasOldWork: boolean,
  own: readonly string[] = [],
): ReturnType<typeof recipeSays> {
  if (!isBeingMended('calculators', 'find-a-recipe') || !result.ok || !result.works)
    return recipeSays(result, hasOldWork, own);
  return {
    answer: `In this model the simplest good recipe stays within ${fixed(result.simplest.score)} of the target at six weeks and at two years.`,
    doubt: 'No recipe is shown until the model is mended.',
  };
}

/** Which recipe the swatches show. */
export const shownRecipe = (works: boolean): string =>
  works ? 'The simplest good recipe' : 'The simplest of the nearest recipes';

/** What has to be said before anybody uses the recipe. */
export function recipeCaution(result: Result): string | undefined {
  if (!result.ok) return undefined;
  const { works, simplest, isOutsideMeasured } = result;
  if (works && simplest.whiteShare >= 0.1)
    return 'This recipe holds white. White hides nothing for long, and it can darken under a laser.';
  if (works && simplest.hasSwatch)
    return 'A swatch does not say how much white is in a bottle: the limit on white cannot hold for it. Read its label.';
  if (works && simplest.near < 0.5)
    return 'Fewer than half of the simulated healings stay near. A test spot and a second visit are part of this plan.';
  if (isOutsideMeasured)
    return 'This skin lies outside the measured skins the model learned from: the prediction is less sure.';
  return undefined;
}

/**
 * What is said while the search runs, with the earlier answer still below; early, that nothing can reach the
 * target.
 */
export function searchingSays(isBeyond: boolean): Readonly<{ answer: string; doubt: string }> {
  return isBeyond
    ? {
        answer: 'Out of reach: no mix of these bottles comes near this colour, whatever the drops.',
        doubt: 'The nearest recipe is being looked for. Until then the earlier one stands below.',
      }
    : {
        answer: 'All recipes are being searched.',
        doubt: 'Until the answer is there, the earlier one stands below.',
      };
}

/** How far the search is. */
export function searchingWords(share: number): string {
  return `Searched: ${fixed(100 * share, 0)} of 100.`;
}

export const stoppedWords = {
  answer: 'The search was stopped.',
  doubt: 'The recipe below belongs to the earlier numbers. Search again, or change a number.',
};
