import { readingValues } from '#lib/colour/numbers/reading.ts';
import { fixed } from './number.ts';

const why = 'A camera chooses white and brightness by itself, and nothing else in the picture tells how.';

/** Why no colour is read, and what to do. */
export const photoRefusals = {
  'no-card': {
    answer: 'No colour yet: point at the grey card.',
    doubt: `Without a grey card no colour of skin is read from a photo. ${why}`,
  },
  'no-skin': {
    answer: 'The card is found. Now point at the skin beside the brow.',
    doubt: 'Choose a matt place without hair, shine or shadow.',
  },
  'card-clipped': {
    answer: 'Refused: the card is too bright or too dark in this picture.',
    doubt:
      'Part of it ran into the end of the scale, and what is lost there cannot be worked back. Photograph again with less or more light.',
  },
  'skin-clipped': {
    answer: 'Refused: the skin is too bright or too dark at this place.',
    doubt:
      'Part of it ran into the end of the scale. Point at a place without shine or deep shadow, or photograph again.',
  },
  'card-too-dark': {
    answer: 'Refused: the card is too dark to divide by.',
    doubt: 'Its noise would decide the colour. Photograph again in more light.',
  },
  'card-not-grey': {
    answer: 'Refused: this place is not grey enough to be the card.',
    doubt: `One of its three colours is more than ${fixed(readingValues.cardTintMost)} times as strong as another. If it is the card, the lamp is too coloured: photograph again by a window.`,
  },
  'card-reflectance': {
    answer: 'Refused: a card throws back between 2 and 100 %.',
    doubt: 'Read the number on your card.',
  },
  'skin-brighter-than-white': {
    answer: 'Refused: the skin would be brighter than white paper.',
    doubt:
      'Check which square lies on the card, and the number of the card. Skin in the sun and a card in the shade do this as well.',
  },
  'no-reading': { answer: 'No colour is read.', doubt: why },
  'outside-the-scale': {
    answer: 'A colour is read, and it has no typology angle.',
    doubt: 'With its doubt there may be no yellow in it: outside the scale. Check both squares and the lamp.',
  },
} as const;

type Span = Readonly<{ value: number; lo: number; hi: number }>;

/** The three numbers of the skin with their intervals. */
export function photoSays({
  l,
  a,
  b,
}: Readonly<{ l: Span; a: Span; b: Span }>): Readonly<{ answer: string; doubt: string }> {
  const ends = (name: string, { lo, hi }: Span) => `${name} ${fixed(lo)} to ${fixed(hi)}`;
  return {
    answer: `By the card: L* ${fixed(l.value)}, a* ${fixed(a.value)}, b* ${fixed(b.value)}.`,
    doubt: `The doubt of camera, card and patch: ${ends('L*', l)}, ${ends('a*', a)}, ${ends('b*', b)}.`,
  };
}

/** Said where the light changes over the picture by more than the doubt already counted. `tooHigh`: L*. */
export function unevenSays(tooHigh: number): string | undefined {
  if (Math.abs(tooHigh) <= readingValues.camera) return undefined;
  return `The light is uneven: it ${tooHigh > 0 ? 'grows' : 'falls'} across the card. If it goes on like that, the skin reads about ${fixed(Math.abs(tooHigh), 0)} L* too ${tooHigh > 0 ? 'light' : 'dark'}. Photograph again with the card beside the brow, in even light.`;
}

/** What a photo cannot say even with a card. */
export const photoCannotSay = [
  'Phones smooth skin and brighten faces by themselves. Switch that off: the card cannot undo it.',
  'Shine is the lamp and not the skin.',
  'Wiping, drawing and numbing change the skin for hours. Photograph before.',
  'An instrument on the skin is surer. These numbers are not put into the boxes above: one reading there counts with less doubt than a photo has.',
] as const;
