import { afterTheFirstPass } from './afterTheFirstPass.ts';
import { levelLine } from './levelLine.ts';
import { frontAndTail } from './frontAndTail.ts';
import { measuringError } from './measuringError.ts';
import { hairAndBone } from './hairAndBone.ts';
import { archPlacement } from './archPlacement.ts';
import { midlineAndSides } from './midlineAndSides.ts';
import { findRecipe } from './findRecipe.ts';
import { mixByDrops } from './mixByDrops.ts';
import { coverTheOldShape } from './coverTheOldShape.ts';
import { outlineAndCover } from './outlineAndCover.ts';
import { pose } from './pose.ts';
import { skinReading } from './skinReading.ts';
import { strokesAndDots } from './strokesAndDots.ts';
import { twoReadings } from './twoReadings.ts';
import { whichHue } from './whichHue.ts';
import { whyItHealed } from './whyItHealed.ts';
import { usualDifference } from './usualDifference.ts';

/** Every calculator by id. */
export const calculators = {
  'midline-and-sides': midlineAndSides,
  'level-line': levelLine,
  'two-readings': twoReadings,
  'front-and-tail': frontAndTail,
  'outline-and-cover': outlineAndCover,
  'cover-the-old-shape': coverTheOldShape,
  'measuring-error': measuringError,
  'arch-placement': archPlacement,
  'after-the-first-pass': afterTheFirstPass,
  'hair-and-bone': hairAndBone,
  pose,
  'usual-difference': usualDifference,
  'strokes-and-dots': strokesAndDots,
  'mix-by-drops': mixByDrops,
  'which-hue': whichHue,
  'find-a-recipe': findRecipe,
  'why-it-healed-this-way': whyItHealed,
  'skin-reading': skinReading,
} as const;

export type CalculatorId = keyof typeof calculators;
export const isCalculatorId = (id: string): id is CalculatorId => Object.hasOwn(calculators, id);
