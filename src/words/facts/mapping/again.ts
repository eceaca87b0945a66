import type { againFacts, againHabits } from '#lib/mapping/facts/again.ts';

/** What each fact about reading again after the first pass is, in a few plain words. */
export const againFactNames = {
  'skin-before-numbing-mm': 'Thickness of skin before a numbing cream',
  'skin-after-numbing-mm': 'Thickness of the same skin after it',
  'pale-after-numbing': 'People whose skin went pale under a numbing cream',
  'numbing-shop-limit': 'Lidocaine above which the FDA warns of creams from a shop',
  'swollen-chase-from-mm': 'Gap below which nothing is added on swollen skin',
  'add-or-stop': 'After the first pass: add here, or stop',
} as const satisfies Readonly<Record<keyof typeof againFacts | keyof typeof againHabits, string>>;
