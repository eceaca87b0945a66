import { pigmentIds, type PigmentId, type Shares } from './pigments.ts';

/** One bottle: what its pigment is made of. Named in words by what is in it. */
export type Bottle = Readonly<{ id: string; shares: Shares }>;

const none: Shares = { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0 };

function bottle(id: string, parts: Partial<Readonly<Record<PigmentId, number>>>): Bottle {
  const whole = pigmentIds.reduce((sum, pigment) => sum + (parts[pigment] ?? 0), 0);
  const shares = { ...none };
  return { id, shares: pigmentIds.reduce<Shares>((all, pigment) => ({ ...all, [pigment]: (parts[pigment] ?? 0) / whole }), shares) };
}

/**
 * The teaching palette: twelve bottles of our own, invented, over five pigments. Parts by weight of pigment; no shop sells
 * these. An artist's own bottles join them by their label.
 */
export const bottles: readonly Bottle[] = [
  bottle('yellow-oxide-some-white', { '77492': 8, '77891': 2 }),
  bottle('mostly-yellow-some-red', { '77492': 7, '77491': 3 }),
  bottle('orange', { '77492': 5, '77491': 4, '77891': 1 }),
  bottle('red-oxide-some-yellow', { '77491': 8, '77492': 2 }),
  bottle('light-brown-yellow-heavy', { '77492': 6, '77491': 2, '77499': 1, '77891': 1 }),
  bottle('brown-yellow-heavy', { '77492': 5, '77491': 2, '77499': 3 }),
  bottle('brown-even', { '77492': 4, '77491': 3, '77499': 3 }),
  bottle('brown-red-heavy', { '77492': 2, '77491': 5, '77499': 3 }),
  bottle('dark-brown-iron', { '77492': 3, '77491': 2, '77499': 5 }),
  bottle('dark-brown-carbon', { '77492': 4, '77491': 2, '77266': 4 }),
  bottle('black-iron', { '77499': 10 }),
  bottle('white', { '77891': 10 }),
];
