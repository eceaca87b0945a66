import type { ownErrorFacts } from '#lib/mapping/facts/ownError.ts';

/** What each fact about an error of one’s own is, in a few plain words. */
export const ownErrorFactNames = {
  't-of-two-readings': 'Factor in place of 1.96 after two readings',
  't-of-three-readings': 'Factor in place of 1.96 after three readings',
  'chi-square-low-of-twenty': 'Chi-square that 2.5 % lie below, 20 degrees of freedom',
  'own-error-up-to': 'True error at most, after twenty pairs, as a share of what was found',
  'own-error-down-to': 'True error at least, after twenty pairs, as a share of what was found',
} as const satisfies Readonly<Record<keyof typeof ownErrorFacts, string>>;
