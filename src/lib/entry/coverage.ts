import {
  shareApart as insideApart,
  shareAtRandom as insideRandom,
  shareOfDots as insideDots,
  strokesForShare as insideCount,
} from '../colour/coverage/coverage.ts';
import {
  dotsWithin as insideDotsWithin,
  strokesWithin as insideStrokesWithin,
} from '../colour/coverage/coverageWithin.ts';
import { widened as insideWidened } from '../colour/coverage/widened.ts';
import * as of from './colourDomains.ts';
import { called, shape, throwing, yesOrNo } from './domain.ts';
import { lengthMm, share } from './units.ts';

export type { Dots, Strokes } from '../colour/coverage/coverage.ts';
export type { ShareWithin } from '../colour/coverage/coverageWithin.ts';

/** Share of skin covered by strokes side by side. */
export const shareApart: typeof insideApart = throwing(insideApart, 'strokes', of.strokes);

/** Share of skin covered by strokes that cross as chance has it. */
export const shareAtRandom: typeof insideRandom = throwing(insideRandom, 'strokes', of.strokes);

/** Share of skin covered by dots. */
export const shareOfDots: typeof insideDots = throwing(insideDots, 'dots', of.dots);

/** How many strokes of a size give a share, side by side; undefined where no count does. */
export const strokesForShare: typeof insideCount = throwing(
  insideCount,
  'share stroke',
  share,
  shape({ lengthMm, widthMm: lengthMm, areaMm2: of.areaMm2 }),
);

/** Share covered by strokes known give or take something; `cover` is shareApart or shareAtRandom. */
export const strokesWithin: typeof insideStrokesWithin = throwing(
  insideStrokesWithin,
  'strokes giveOrTake cover',
  of.strokes,
  of.strokes,
  called<Parameters<typeof insideStrokesWithin>[2]>(),
);

/** Share covered by dots, likewise. */
export const dotsWithin: typeof insideDotsWithin = throwing(
  insideDotsWithin,
  'dots giveOrTake',
  of.dots,
  of.dots,
);

/** Share covered after strokes have widened; undefined where no such share exists. */
export const widened: typeof insideWidened = throwing(
  insideWidened,
  'share freshMm spreadMm crossing',
  share,
  lengthMm,
  lengthMm,
  yesOrNo,
);
