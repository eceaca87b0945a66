/**
 * The bare numbers of mapping that interactive pages compute with: written here once, and given their sources in facts/.
 * Calculators and problems import this file, so that quotes and citations stay out of what a browser loads.
 */
export const mappingValues = {
  'seen-at-1-mm': 23,
  'seen-at-6-mm': 97,
  'few-see-mm': 1,
  'almost-all-see-mm': 6,
  'most-see-mm': 3,
  'own-brows-seen-mm': 2,
  'unequal-at-front-mm': 1.34,
  'unequal-at-middle-mm': 1.77,
  'unequal-at-tail-mm': 1.78,
  'brows-unequal': 88,
  'right-lower': 61,
  'biweight-constant': 4.685,
  'trusted-from-weight': 0.25,
  'scatter-floor-mm': 0.3,
  'arches-apart-mm': 82,
  'placing-tolerance-mm': 1,
  'factor-95': 1.96,
  'repeat-factor': 2.77,
  'family-false-alarm': 5,
  'ten-comparisons': 10,
  'pencil-half-width-mm': 0.25,
  'caliper-half-width-mm': 0.05,
  'thread-half-width-mm': 0.25,
  'example-error-mm': 0.3,
  'pairs-for-own-error': 20,
  'iris-width-mm': 11.71,
  'pupils-apart-mm': 63,
} as const;

/** Ranges that interactive pages draw: the published 95 % intervals of the mean differences, mm. */
export const mappingRanges = {
  'unequal-at-front-mm': [1.14, 1.54],
  'unequal-at-middle-mm': [1.47, 2.07],
  'unequal-at-tail-mm': [1.5, 2.06],
} as const;

export type MappingValueId = keyof typeof mappingValues;
