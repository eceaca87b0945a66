import { modelValues } from './model.ts';
import type { Ageing, Doubts } from '../healing/uncertainHealing.ts';

/**
 * What is kept and lost to begin with: no measured rate for these pigments in skin was found. Yellow first,
 * red and carbon last, as artists say.
 */
export const startAgeing: Ageing = {
  '77891': { keptAtSixWeeks: 0.7, lostPerYear: 0.1 },
  '77492': { keptAtSixWeeks: 0.6, lostPerYear: 0.3 },
  '77491': { keptAtSixWeeks: 0.7, lostPerYear: 0.12 },
  '77499': { keptAtSixWeeks: 0.65, lostPerYear: 0.2 },
  '77266': { keptAtSixWeeks: 0.75, lostPerYear: 0.08 },
  // A swatch does not say what is in the bottle: the middle of the five.
  own: { keptAtSixWeeks: 0.68, lostPerYear: 0.16 },
};

/** How far each healing may differ from the next, to begin with. */
export const startDoubts: Doubts = {
  strength: 0.15,
  dose: 0.25,
  depth: 0.35,
  kept: 0.2,
  lost: 0.5,
  veilLo: modelValues.veilShareLo,
  veilHi: modelValues.veilShareHi,
};

/** How many healings are drawn by chance for one mix, to show how far they spread. */
export const healingsDrawn = 400;
