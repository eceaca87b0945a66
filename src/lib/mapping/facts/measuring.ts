import { assumed, computed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { acceptedFalseAlarms } from '../uncertainty/familyWise.ts';
import { repeatabilityFactor } from '../uncertainty/technicalError.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';
const guo =
  'technical error of measurement (TEM) estimates were 0.85 mm, 0.25 and 0.36 units, and 0.32 and 0.65 units, respectively';
const farkas =
  'Of these 62 measurements, 26 were reliable (the same as or differing from the direct measurements by no more than 1 mm or 2 degrees).';

/** How wrong a measurement is, and how many comparisons a page makes. */
export const measuringFacts = {
  'caliper-error-near-eye-mm': {
    value: 0.85,
    unit: 'mm',
    backing: published('periocular-2019', 'abstract, results', guo),
    reviewed,
    caveat:
      'Technical error by hand, same person twice, 22 measures round the eye, 46 people; not brow marks alone.',
  },
  'photo-error-near-eye-mm': {
    value: 0.25,
    unit: 'mm',
    backing: published('periocular-2019', 'abstract, results', guo),
    reviewed,
    caveat: 'The same picture marked twice by the same person; a second picture is worse.',
  },
  'photo-error-two-people-mm': {
    value: 0.36,
    unit: 'mm',
    backing: published('periocular-2019', 'abstract, results', guo),
    reviewed,
    caveat: 'The same picture marked by two people.',
  },
  'unmarked-disagreement-mm': {
    value: 2,
    unit: 'mm',
    backing: published(
      'gomes-2019',
      'abstract, results',
      'accuracy with scanner was around 2 mm when the points were not previously marked and about 1 mm when the points were marked',
    ),
    reviewed,
    caveat: '15 people, scanner against caliper, 11 measures.',
  },
  'marked-disagreement-mm': {
    value: 1,
    unit: 'mm',
    backing: published(
      'gomes-2019',
      'abstract, results',
      'accuracy with scanner was around 2 mm when the points were not previously marked and about 1 mm when the points were marked',
    ),
    reviewed,
    caveat: '15 people, scanner against caliper, 11 measures.',
  },
  'photo-measures-tried': {
    value: 62,
    unit: '1',
    backing: published(
      'farkas-1980',
      'abstract',
      '62 could be duplicated on the life-size frontal and left lateral photographs',
    ),
    reviewed,
  },
  'photo-measures-reliable': {
    value: 26,
    unit: '1',
    backing: published('farkas-1980', 'abstract', farkas),
    reviewed,
    caveat: 'Posed studio photographs, 36 people.',
  },
  'second-photo-mm': {
    value: 5.3,
    unit: 'mm',
    backing: published(
      'photographic-system-2009',
      'abstract, results',
      'Repeated sets of photographs showed random errors of up to 5.3 mm and 5.6 degrees',
    ),
    reviewed,
    caveat: 'The worst of 12 lengths; 15 people.',
  },
  'same-photo-again-mm': {
    value: 1.6,
    unit: 'mm',
    backing: published(
      'photographic-system-2009',
      'abstract, results',
      'random errors lower than 1.6 mm and 3 degrees',
    ),
    reviewed,
    caveat: 'The worst of 12 lengths; 15 people.',
  },
  'factor-95': {
    value: mappingValues['factor-95'],
    unit: '1',
    backing: published(
      'nist-tn-1297',
      '4.3',
      'These factors are 1.960 and 2.576 for the two levels of confidence given',
    ),
    reviewed,
  },
  'repeat-factor': {
    value: repeatabilityFactor,
    unit: '1',
    backing: published(
      'bland-repeatability',
      'whole page',
      '95% of differences will be less than 1.96 root(2) s_w in magnitude',
    ),
    reviewed,
    caveat: '1.96 times the square root of 2.',
  },
  'family-false-alarm': {
    value: 100 * acceptedFalseAlarms,
    unit: '%',
    backing: assumed(
      'The share of truly equal faces on which a page may raise a false alarm: the usual choice.',
    ),
    range: [1, 10],
    reviewed,
  },
  'one-test-level-of-ten': {
    value: 0.5116,
    unit: '%',
    backing: published(
      'sidak-article',
      'example, 5 % and 10 tests',
      'the Šidák-adjusted level is approximately 0.005116',
    ),
    reviewed,
  },
  'ten-comparisons': {
    value: mappingValues['ten-comparisons'],
    unit: '1',
    backing: assumed('Five marks, each compared across and up: ten comparisons.'),
    reviewed,
  },
  'false-alarm-of-ten': {
    value: 40.1,
    unit: '%',
    backing: computed(
      '1 − 0.95 to the power 10, if the comparisons were independent',
      'factor-95',
      'ten-comparisons',
    ),
    reviewed,
  },
  'factor-of-ten': {
    value: 2.8,
    unit: '1',
    backing: computed('the normal value that half of 0.5116 % lie above', 'one-test-level-of-ten'),
    reviewed,
  },
  'pencil-half-width-mm': {
    value: mappingValues['pencil-half-width-mm'],
    unit: 'mm',
    backing: assumed('Half the width of a sharp pencil line.'),
    range: [0.1, 0.5],
    reviewed,
  },
  'caliper-half-width-mm': {
    value: mappingValues['caliper-half-width-mm'],
    unit: 'mm',
    backing: assumed('Half a step of a caliper that shows 0.1 mm.'),
    range: [0.05, 0.25],
    reviewed,
  },
  'thread-half-width-mm': {
    value: mappingValues['thread-half-width-mm'],
    unit: 'mm',
    backing: assumed('Half the width of a pigmented thread’s line.'),
    range: [0.1, 0.5],
    reviewed,
  },
  'example-error-mm': {
    value: mappingValues['example-error-mm'],
    unit: 'mm',
    backing: assumed('A technical error to begin with, until the reader has her own.'),
    range: [0.2, 0.9],
    reviewed,
  },
  'pairs-for-own-error': {
    value: mappingValues['pairs-for-own-error'],
    unit: '1',
    backing: assumed('Pairs of readings after which an own technical error is worth using.'),
    range: [15, 30],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
