import type { BottleId } from '#lib/colour/pigment/bottleIds.ts';

/** Bottles by what is in them. */
export const bottleWords = {
  'yellow-oxide-some-white': 'yellow oxide, some white',
  'mostly-yellow-some-red': 'mostly yellow oxide, some red',
  orange: 'orange: yellow and red oxide',
  'red-oxide-some-yellow': 'red oxide, some yellow',
  'light-brown-yellow-heavy': 'light brown, yellow-heavy',
  'brown-yellow-heavy': 'brown, yellow-heavy',
  'brown-even': 'brown, even',
  'brown-red-heavy': 'brown, red-heavy',
  'dark-brown-iron': 'dark brown, iron black',
  'dark-brown-carbon': 'dark brown, carbon black',
  'black-iron': 'iron black',
  white: 'white',
} as const satisfies Readonly<Record<BottleId, string>>;

/** True for the id of a bottle. */
export const isBottle = (key: string): key is BottleId => Object.hasOwn(bottleWords, key);
