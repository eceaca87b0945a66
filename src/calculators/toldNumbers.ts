import { healingsDrawn } from '#lib/colour/numbers/ageing.ts';
import { itaNoughtL } from '#lib/colour/spaces/ita.ts';
import { lossesLookedAt } from '#lib/colour/healing/healingAxes.ts';
import { countsAsFarCm } from './poseFields.ts';

/**
 * Numbers that the words of a calculator tell and that are no facts of the trade: how a sum is done, and how
 * well it stood its tests. Sums and tests read them from the same place.
 */
export const toldNumbers = {
  'camera-far-m': countsAsFarCm / 100,
  'healings-drawn': healingsDrawn,
  'ita-nought-l': itaNoughtL,
  'least-loss': lossesLookedAt[0],
  'assumed-loss': lossesLookedAt[2],
  /** Brows of known numbers on which the interval of coverage was tried, and how many of a hundred it held. */
  'coverage-brows': 2000,
  'coverage-held-least': 93,
  'coverage-held-most': 97,
  'coverage-out-of': 100,
  /** Colour difference, CIEDE2000: how far mixes of a bottle known by its swatch may be off. */
  'swatch-of-earth-off': 1.1,
  'swatch-of-ultramarine-off': 5,
  /** Mean age of the people behind `unequal-at-front-mm`, whose caveat has it exactly: to the next year. */
  'unequal-mean-age-years': 58,
} as const;

export type ToldId = keyof typeof toldNumbers;
export const isToldId = (id: string): id is ToldId => Object.hasOwn(toldNumbers, id);

/** As it stands in a sentence: 2,000 or 1.1. */
export const toldText = (id: ToldId): string => toldNumbers[id].toLocaleString('en-GB');
