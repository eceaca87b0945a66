import { computed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';

/** How well an own error is known, and what few readings cost. */
export const ownErrorFacts = {
  't-of-two-readings': {
    value: 12.706,
    unit: '1',
    backing: published(
      'nist-t-table',
      'Table 8, one degree of freedom, column 0.025',
      '1 3.078 6.314 12.706 31.821',
    ),
    reviewed,
    caveat: 'Takes the place of 1.96 where the spread comes from two readings alone.',
  },
  't-of-three-readings': {
    value: 4.303,
    unit: '1',
    backing: published(
      'nist-t-table',
      'Table 8, two degrees of freedom, column 0.025',
      '2 1.886 2.920 4.303 6.965',
    ),
    reviewed,
    caveat: 'Takes the place of 1.96 where the spread comes from three readings alone.',
  },
  'chi-square-low-of-twenty': {
    value: 9.591,
    unit: '1',
    backing: published(
      'nist-chi-square-table',
      'Table 7b, 20 degrees of freedom, column 0.975',
      '20 12.443 10.851 9.591',
    ),
    reviewed,
  },
  'own-error-up-to': {
    value: 144,
    unit: '%',
    backing: computed(
      'the root of 20 divided by the lower 2.5 % point of chi-square',
      'chi-square-low-of-twenty',
      'pairs-for-own-error',
    ),
    reviewed,
    caveat: 'If single errors follow a bell curve.',
  },
  'own-error-down-to': {
    value: 77,
    unit: '%',
    backing: computed(
      'the root of 20 divided by the upper 2.5 % point of chi-square, 34.17 by the closed form',
      'pairs-for-own-error',
    ),
    reviewed,
    caveat: 'If single errors follow a bell curve.',
  },
} as const satisfies Readonly<Record<string, Fact>>;
