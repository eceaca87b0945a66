import type { skinReadingFacts } from '#lib/colour/facts/skinReading.ts';

/** What each fact about reading skin is, in a few plain words. */
export const skinReadingFactNames = {
  'numbing-blanches': 'People whose skin went pale under one numbing cream',
  'blanching-gone-hours': 'Time in which that paleness had gone, less than',
  'numbing-blanches-without': 'People whose skin went pale without the drug',
  'types-asked': 'People asked how they burn and tan',
  'types-not-classified': 'Of those, answers that fit no type',
  'type-looks-people': 'People asked in a survey of looks and sun reaction',
  'camera-difference-taken-away': 'Colour difference between cameras that a calibration took away, at least',
  'one-reading-doubt': 'Doubt of a single reading of skin',
  'touched-doubt-a': 'Doubt of redness after the skin was touched',
  'leans-red-below-deg': 'Hue angle below which a skin is said to lean red',
  'leans-yellow-from-deg': 'Hue angle from which a skin is said to lean yellow',
  'camera-doubt': 'Doubt a camera leaves after a grey card',
  'grey-card-throws-back': 'What a grey card throws back of the light',
  'card-tint-most': 'Strongest over weakest channel of a card that still counts as grey',
  'overtone-and-undertone': 'Overtone and undertone both matter',
} as const satisfies Readonly<Record<keyof typeof skinReadingFacts, string>>;
