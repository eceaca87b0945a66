import { assumed, commonPractice, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';
import { readingValues } from '../numbers/reading.ts';

const reviewed = '2026-11-25';

/** What spoils a reading of skin, what widens it, and how it is judged. */
export const skinReadingFacts = {
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
