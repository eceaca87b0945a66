import { bottleIds, type BottleId } from './bottleIds.ts';
import { pigmentIds, type PigmentId, type Shares } from './pigments.ts';

/** One bottle: what its pigment is made of. Named in words by what is in it. */
export type Bottle = Readonly<{ id: string; shares: Shares }>;

export const noPigment: Shares = { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0 };

/** Parts of each pigment, in any unit: only their ratio counts. */
export type Parts = Readonly<Partial<Record<PigmentId, number>>>;

/** All parts of a bottle together. */
export function wholeOf(parts: Parts): number {
  return pigmentIds.reduce((sum, pigment) => sum + (parts[pigment] ?? 0), 0);
}

/** A bottle from the parts of its pigments; one at least must be above 0. */
export function bottleOf(id: string, parts: Parts): Bottle {
  const whole = wholeOf(parts);
  return {
    id,
    shares: pigmentIds.reduce<Shares>(
      (all, pigment) => ({ ...all, [pigment]: (parts[pigment] ?? 0) / whole }),
      noPigment,
    ),
  };
}

/** Parts by weight of pigment in each bottle. Invented: no shop sells these. */
const parts: Readonly<Record<BottleId, Parts>> = {
  'yellow-oxide-some-white': { '77492': 8, '77891': 2 },
  'mostly-yellow-some-red': { '77492': 7, '77491': 3 },
  orange: { '77492': 5, '77491': 4, '77891': 1 },
  'red-oxide-some-yellow': { '77491': 8, '77492': 2 },
  'light-brown-yellow-heavy': { '77492': 6, '77491': 2, '77499': 1, '77891': 1 },
  'brown-yellow-heavy': { '77492': 5, '77491': 2, '77499': 3 },
  'brown-even': { '77492': 4, '77491': 3, '77499': 3 },
  'brown-red-heavy': { '77492': 2, '77491': 5, '77499': 3 },
  'dark-brown-iron': { '77492': 3, '77491': 2, '77499': 5 },
  'dark-brown-carbon': { '77492': 4, '77491': 2, '77266': 4 },
  'black-iron': { '77499': 10 },
  white: { '77891': 10 },
};

/**
 * The teaching palette: twelve bottles of our own over five pigments. An artist's own bottles join them by
 * their label.
 */
export const bottles: readonly Bottle[] = bottleIds.map((id) => bottleOf(id, parts[id]));
