import { type AgainChoices } from '#lib/mapping/again/afterFirstPass.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';

export const outline: Brow = {
  frontLower: { uMm: 15, vMm: 17 },
  frontTop: { uMm: 14, vMm: 25 },
  archTop: { uMm: 47, vMm: 33 },
  archLower: { uMm: 46, vMm: 27 },
  tail: { uMm: 64, vMm: 20 },
};

// u = √(2(0.3²/5 + 0.206²)) = 0.348; five marks together: k 2.569; real from 0.894.
export const choices: AgainChoices = {
  reading: { temMm: 0.3, readings: 5, budgetMm: 0.206 },
  comparisons: 5,
  chaseFromMm: 1,
};
