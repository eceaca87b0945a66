import type { outlineFacts, outlineHabits } from '#lib/mapping/facts/outline.ts';

/** What each fact about the outline and its thickness is, in a few plain words. */
export const outlineFactNames = {
  'women-brows-measured': 'Women whose brows were photographed and measured',
  'brow-sides-go-together': 'How well left and right brow go together (correlation, more than)',
  'thickness-medium-of-eye': 'A medium brow, share of the eye’s width',
  'thickness-thin-of-eye': 'A thin brow, share of the eye’s width',
  'thickness-thick-of-eye': 'A thick brow, share of the eye’s width',
  'thickness-medium-chosen': 'People who chose the medium thickness',
  'thickness-women-asked': 'Women asked about thickness',
  'own-thickness-raters': 'People who rated brows made thicker and thinner',
  'straight-up-too-thick-30-deg': 'How much too thick straight up is, on a slope of 30°',
  'straight-up-too-thick-20-deg': 'How much too thick straight up is, on a slope of 20°',
  'thickness-equal': 'Both brows equally thick',
  'outline-looks-bolder': 'The drawn outline looks bolder than the result',
} as const satisfies Readonly<Record<keyof typeof outlineFacts | keyof typeof outlineHabits, string>>;
