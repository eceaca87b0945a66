import type { Lab } from '#lib/colour/spaces/lab.ts';
import { type PigmentId, type Shares } from '#lib/colour/pigment/pigments.ts';

/** Invented skins from fair to deep. */
export const skins: readonly Lab[] = [
  { l: 72, a: 7, b: 14 },
  { l: 63, a: 10, b: 19 },
  { l: 54, a: 10, b: 18 },
  { l: 44, a: 12, b: 17 },
  { l: 36, a: 11, b: 15 },
];

export const only = (id: PigmentId): Shares => ({
  '77891': 0,
  '77492': 0,
  '77491': 0,
  '77499': 0,
  '77266': 0,
  [id]: 1,
});
