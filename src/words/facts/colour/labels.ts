import type { labelFacts } from '#lib/colour/facts/labels.ts';

/** What each fact about labels of inks is, in a few plain words. */
export const colourLabelsFactNames = {
  'label-inks-looked-at': 'Inks bought and compared with their labels',
  'label-inks-wrong': 'Of those, inks that held what the label did not name',
  'swedish-inks-checked': 'Inks checked by the Swedish agency',
  'swedish-inks-kept-the-rules': 'Of those, inks that kept the rules checked',
  'ink-substances-limited': 'Substances with a limit in inks, European Union',
  'label-order-free-below-percent': 'Share below which ingredients may stand in any order, France',
  'pigments-recalled-by-lot': 'Tattoo pigments called back in one notice, by lot',
  'label-names-the-batch': 'The entry of the European Union that says what a label must carry',
  'lot-in-the-record': 'Lot and date in the record',
  'label-before-opening': 'Reading the label before opening',
} as const satisfies Readonly<Record<keyof typeof labelFacts, string>>;
