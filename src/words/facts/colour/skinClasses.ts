import type { skinClassFacts } from '#lib/colour/facts/skinClasses.ts';

/** What each fact about classes of skin is, in a few plain words. */
export const skinClassesFactNames = {
  'ita-very-light-above-deg': 'Typology angle above which the class is very light',
  'ita-light-above-deg': 'Typology angle above which the class is light',
  'ita-intermediate-above-deg': 'Typology angle above which the class is intermediate',
  'ita-tan-above-deg': 'Typology angle above which the class is tan',
  'ita-dark-up-to-deg': 'Typology angle up to which the class is dark',
} as const satisfies Readonly<Record<keyof typeof skinClassFacts, string>>;
