import type { coverFacts } from '#lib/colour/facts/cover.ts';

/** What each fact about what covers old work is, in a few plain words. */
export const colourCoverFactNames = {
  'laser-tattoos-biopsied': 'Tattoos with a biopsy after laser treatment',
  'laser-lightened': 'Of those, tattoos that lightened',
  'laser-darkened': 'Of those, tattoos that darkened',
  'laser-brow-people': 'People whose brow tattoos were treated with a picosecond laser',
  'laser-brow-turned-grey': 'Of those, people whose brows turned grey at once',
  'cover-counts-below': 'Colour difference below which a recipe counts as reaching its target',
  'old-red-heals-pink': 'Old red heals pink or salmon',
  'remnant-brown-dark-enough': 'A thin pink remnant wants a brown dark enough, not darker',
  'white-hides-for-a-while': 'White and skin colour hide for a while only',
  'recipes-in-drops': 'Recipes counted in drops',
  'brown-with-orange': 'Over grey-blue: brown with a part of orange',
} as const satisfies Readonly<Record<keyof typeof coverFacts, string>>;
