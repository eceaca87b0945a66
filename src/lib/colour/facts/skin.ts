import { assumed, commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { itaEdgesDeg } from '../spaces/ita.ts';
import { readingValues } from '../numbers/reading.ts';

const reviewed = '2026-11-25';
const edge = (value: number, quote: string): Fact => ({
  value,
  unit: '°',
  backing: published('dermatest-colorimetry', 'table below the formula', quote),
  reviewed,
  caveat:
    'The scheme of Chardon and Del Bino. Another in use has eight classes: name the scheme beside a class.',
});

/** Classes, measured people, and what widens a reading. */
export const skinFacts = {
  'ita-very-light-above-deg': edge(itaEdgesDeg[0], '55° < ITA° Very light'),
  'ita-light-above-deg': edge(itaEdgesDeg[1], '41° < ITA° < 55° Light'),
  'ita-intermediate-above-deg': edge(itaEdgesDeg[2], '28° < ITA° < 41° Intermediate'),
  'ita-tan-above-deg': edge(itaEdgesDeg[3], '10° < ITA° < 28° Tanned'),
  'ita-dark-up-to-deg': edge(itaEdgesDeg[4], '-30° < ITA° < 10° Brown'),
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
  'seen-on-light-silicone': {
    value: 0.59,
    unit: '1',
    backing: published(
      'silicone-thresholds-2024',
      'abstract',
      'The perceptibility thresholds (ΔE*/ΔE) were 0.8/0.59 and 2.63/1.75 for light and dark colors',
    ),
    reviewed,
    caveat: 'Silicone coloured like skin, CIEDE2000.',
  },
  'seen-on-dark-silicone': {
    value: 1.75,
    unit: '1',
    backing: published(
      'silicone-thresholds-2024',
      'abstract',
      'The perceptibility thresholds (ΔE*/ΔE) were 0.8/0.59 and 2.63/1.75 for light and dark colors',
    ),
    reviewed,
    caveat: 'Silicone coloured like skin, CIEDE2000.',
  },
  'seen-on-fair-prosthesis': {
    value: 0.8,
    unit: '1',
    backing: published(
      'leow-2006',
      'abstract',
      'ΔE = 0.8 and ΔE = 1.8 for the fair series and ΔE = 1.3 and ΔE = 2.6 for the dark series',
    ),
    reviewed,
    caveat: 'The older colour difference.',
  },
  'seen-on-dark-prosthesis': {
    value: 1.3,
    unit: '1',
    backing: published(
      'leow-2006',
      'abstract',
      'ΔE = 0.8 and ΔE = 1.8 for the fair series and ΔE = 1.3 and ΔE = 2.6 for the dark series',
    ),
    reviewed,
    caveat: 'The older colour difference.',
  },
  'numbing-blanches': {
    value: 66,
    unit: '%',
    backing: published('blanching-1990', 'abstract', 'We found 33 cases (66%) of blanching'),
    reviewed,
    caveat: 'A lidocaine-prilocaine cream under a dressing for one hour; other creams differ.',
  },
  'blanching-gone-hours': {
    value: 3,
    unit: 'hours',
    backing: published(
      'blanching-1990',
      'abstract',
      'was very transient, disappearing in less than 3 h in all cases',
    ),
    reviewed,
    caveat: 'A lidocaine-prilocaine cream under a dressing for one hour; other creams differ.',
  },
  'numbing-blanches-without': {
    value: 6,
    unit: '%',
    backing: published('blanching-1990', 'abstract', 'versus 3 cases (6%) after placebo'),
    reviewed,
  },
  'types-asked': {
    value: 270,
    unit: 'people',
    backing: published(
      'eilers-2013',
      'abstract',
      'Forty-two percent (114 of 270) of the participants’ responses',
    ),
    reviewed,
  },
  'types-not-classified': {
    value: 114,
    unit: 'people',
    backing: published(
      'eilers-2013',
      'abstract',
      'Forty-two percent (114 of 270) of the participants’ responses to the burning and tanning questions could not be classified using standard FST definitions.',
    ),
    reviewed,
  },
  'type-looks-people': {
    value: 3386,
    unit: 'people',
    backing: published(
      'he-2014',
      'abstract',
      'A cross-sectional survey collected responses from 3386 individuals regarding self-reported FSPT',
    ),
    reviewed,
    caveat: 'Looks predicted the answers only weakly.',
  },
  'camera-difference-taken-away': {
    value: 61,
    unit: '%',
    backing: published(
      'kang-2025',
      'abstract',
      'Linear CCM reduced inter-device color differences by 61–74 %',
    ),
    range: [61, 74],
    reviewed,
    caveat: 'Set by many colours against one camera, not by one grey card.',
  },
  'one-reading-doubt': {
    value: readingValues.oneReading,
    unit: '1',
    backing: assumed(
      'Doubt of a single reading, each way: places beside one brow differ by more than a reading repeats.',
    ),
    reviewed,
  },
  'touched-doubt-a': {
    value: readingValues.touchedA,
    unit: '1',
    backing: assumed(
      'What wiping, drawing or numbing may have changed in a*, each way; L* half of it, b* a quarter.',
    ),
    reviewed,
  },
  'leans-red-below-deg': {
    value: readingValues.leansRedBelowDeg,
    unit: '°',
    backing: assumed('Editorial: no study sets a limit between a skin that leans red and one that does not.'),
    reviewed,
  },
  'leans-yellow-from-deg': {
    value: readingValues.leansYellowFromDeg,
    unit: '°',
    backing: assumed(
      'Editorial: no study sets a limit between a skin that leans yellow and one that does not.',
    ),
    reviewed,
  },
  'camera-doubt': {
    value: readingValues.camera,
    unit: '1',
    backing: assumed(
      'What a camera leaves in L*, a* and b* after one grey card has set white and brightness.',
    ),
    reviewed,
  },
  'grey-card-throws-back': {
    value: 100 * readingValues.usualCard,
    unit: '%',
    backing: published(
      'fadgi-grey-card',
      'glossary entry',
      'Gray cards normally reflect 18% of the light falling on them.',
    ),
    reviewed,
    caveat: 'Read what your own card says.',
  },
  'card-tint-most': {
    value: readingValues.cardTintMost,
    unit: '1',
    backing: assumed(
      'Editorial: how many times as strong, in light, the strongest channel of a grey card may be as its weakest. Skin is beyond it.',
    ),
    reviewed,
  },
  'overtone-and-undertone': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Overtone and undertone of the skin both matter for the colour: what lies on top, and what shines through from below.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
