import type { skinDifferenceFacts } from '#lib/colour/facts/skinDifferences.ts';

/** What each fact about differences seen on materials like skin is, in a few plain words. */
export const skinDifferencesFactNames = {
  'seen-on-light-silicone': 'Smallest difference seen on light silicone',
  'seen-on-dark-silicone': 'Smallest difference seen on dark silicone',
  'seen-on-fair-prosthesis': 'Smallest difference seen on a fair hand prosthesis',
  'seen-on-dark-prosthesis': 'Smallest difference seen on a dark hand prosthesis',
} as const satisfies Readonly<Record<keyof typeof skinDifferenceFacts, string>>;
