import type { seeingFacts } from '#lib/mapping/facts/seeing.ts';

/** What each fact about what viewers see is, in a few plain words. */
export const seeingFactNames = {
  'seen-at-1-mm': 'Viewers who see a brow height difference of 1 mm',
  'seen-at-6-mm': 'Viewers who see a brow height difference of 6 mm',
  'few-see-mm': 'A difference few viewers see',
  'almost-all-see-mm': 'A difference almost all viewers see',
  'viewers-asked': 'Viewers asked in that study',
  'most-see-mm': 'The usual threshold: from here on a stranger notices',
  'own-brows-seen-mm': 'The smallest difference people noticed in their own brows',
  'unequal-at-front-mm': 'Usual height difference of the two brows at the nose end',
  'unequal-at-middle-mm': 'Usual height difference of the two brows in the middle',
  'unequal-at-tail-mm': 'Usual height difference of the two brows at the temple end',
  'over-1-mm-somewhere': 'People with some measure more than 1 mm apart',
  'over-2-mm-somewhere': 'People with some measure more than 2 mm apart',
  'over-3-mm-somewhere': 'People with some measure more than 3 mm apart',
  'brows-unequal': 'People whose brows are unequal at all',
  'right-lower': 'Of those, the right brow is the lower one',
} as const satisfies Readonly<Record<keyof typeof seeingFacts, string>>;
