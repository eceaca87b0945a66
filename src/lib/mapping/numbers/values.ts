import { chaseFromMm } from './again.ts';
import { archesApartMm, threadLengthMm } from './level.ts';
import {
  caliperHalfWidthMm,
  exampleErrorMm,
  fewSeeMm,
  mostSeeMm,
  nostrilMiddleShare,
  pencilHalfWidthMm,
  tenComparisons,
  threadHalfWidthMm,
  unequalMm,
} from './start.ts';
import { irisWidthMm } from './iris.ts';

/**
 * The bare numbers of mapping that interactive pages compute with: written here once, and given their sources
 * in facts/.
 * Calculators and problems import this file, so that quotes and citations stay out of what a browser loads.
 */
export const mappingValues = {
  'seen-at-1-mm': 23,
  'seen-at-6-mm': 97,
  'few-see-mm': fewSeeMm,
  'almost-all-see-mm': 6,
  'most-see-mm': mostSeeMm,
  'own-brows-seen-mm': 2,
  'unequal-at-front-mm': unequalMm.front,
  'unequal-at-middle-mm': unequalMm.middle,
  'unequal-at-tail-mm': unequalMm.tail,
  'brows-unequal': 88,
  'right-lower': 61,
  'arches-apart-mm': archesApartMm,
  'thread-length-mm': threadLengthMm,
  'placing-tolerance-mm': 1,
  'factor-95': 1.96,
  'ten-comparisons': tenComparisons,
  'pencil-half-width-mm': pencilHalfWidthMm,
  'caliper-half-width-mm': caliperHalfWidthMm,
  'thread-half-width-mm': threadHalfWidthMm,
  'example-error-mm': exampleErrorMm,
  'pairs-for-own-error': 20,
  'swollen-chase-from-mm': chaseFromMm,
  'nostril-middle-share': 100 * nostrilMiddleShare,
  'iris-width-mm': irisWidthMm,
  'pupils-apart-mm': 63,
} as const;
