import { published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { readingValues } from '../numbers/reading.ts';

const reviewed = '2026-11-25';

/** Skin as it was measured on people, and what the sun changes in it. */
export const skinMeasuredFacts = {
  'skin-people-measured': {
    value: 600,
    unit: 'people',
    backing: published(
      'han-2006',
      'abstract',
      'The 600 subjects used in this study were selected using a three-stage proportionate stratified and quota sampling method.',
    ),
    reviewed,
  },
  'skin-mean-l': {
    value: 61.7462,
    unit: '1',
    backing: published(
      'han-2006',
      'abstract',
      'The average L*a*b values for the 12 body parts were 61.7462, 9.5618 and 17.0778',
    ),
    reviewed,
    caveat: 'People in Korea, twelve parts of the body.',
  },
  'skin-mean-a': {
    value: 9.5618,
    unit: '1',
    backing: published(
      'han-2006',
      'abstract',
      'The average L*a*b values for the 12 body parts were 61.7462, 9.5618 and 17.0778',
    ),
    reviewed,
    caveat: 'People in Korea, twelve parts of the body.',
  },
  'skin-mean-b': {
    value: 17.0778,
    unit: '1',
    backing: published(
      'han-2006',
      'abstract',
      'The average L*a*b values for the 12 body parts were 61.7462, 9.5618 and 17.0778',
    ),
    reviewed,
    caveat: 'People in Korea, twelve parts of the body.',
  },
  'forehead-l': {
    value: 58.0044,
    unit: '1',
    backing: published('han-2006', 'abstract', 'whereas the darkest was on the forehead (L=58.0044)'),
    reviewed,
    caveat: 'People in Korea.',
  },
  'inner-arm-l': {
    value: 63.9249,
    unit: '1',
    backing: published('han-2006', 'abstract', 'The site of lightest skin was the medial arm (L=63.9249)'),
    reviewed,
    caveat: 'People in Korea.',
  },
  'forehead-arm-apart': {
    value: 7.99,
    unit: '1',
    backing: published(
      'han-2006',
      'abstract',
      'the forehead and medial upper arm were the most different in color (E=7.99)',
    ),
    reviewed,
    caveat: 'The older colour difference, not CIEDE2000.',
  },
  'forehead-hue-deg': {
    value: 55.22,
    unit: '°',
    backing: published('nanjing-skin', 'abstract', 'The hue angle of skin was 55.22±6.45 for forehead'),
    reviewed,
    caveat: 'Faces of 28 women.',
  },
  'forehead-hue-spread-deg': {
    value: 6.45,
    unit: '°',
    backing: published('nanjing-skin', 'abstract', 'The hue angle of skin was 55.22±6.45 for forehead'),
    reviewed,
    caveat: 'Faces of 28 women.',
  },
  'forearm-hue-deg': {
    value: 68.72,
    unit: '°',
    backing: published('nanjing-skin', 'abstract', '68.72 ±2.44 for left forearm'),
    reviewed,
    caveat: 'Forearms of 122 women.',
  },
  'skin-reading-repeats': {
    value: readingValues.repeat,
    unit: '1',
    backing: published(
      'sun-two-weeks-2022',
      'abstract',
      'an average repeatability (mean color difference from the mean) in the range of 0.2-0.5 CIELAB units',
    ),
    range: [0.2, 0.5],
    reviewed,
  },
  'sun-two-weeks-apart': {
    value: 3.9,
    unit: '1',
    backing: published(
      'sun-two-weeks-2022',
      'abstract',
      'two weeks of sun exposure were in the range of 3.6-3.9 CIELAB units',
    ),
    range: [3.6, 3.9],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
