import type { placingFacts, placingHabits } from '#lib/mapping/facts/placing.ts';

/** What each fact about placing fronts and tails is, in a few plain words. */
export const placingFactNames = {
  'nose-wider-men': 'Men whose nose is wider than the gap of the inner eye corners',
  'nose-wider-women': 'Women whose nose is wider than the gap of the inner eye corners',
  'nose-wider-nigeria': 'People in a Nigerian study whose nose is wider than that gap',
  'nose-as-wide-as-gap': 'People in a North American study whose nose is as wide as that gap',
  'nose-as-wide-kenya-men': 'Men in a Kenyan study whose nose is as wide as that gap',
  'nose-as-wide-kenya-women': 'Women in a Kenyan study whose nose is as wide as that gap',
  'nose-width-first-mm': 'Mean nose width in a printed table, first column',
  'nose-width-second-mm': 'Mean nose width in a printed table, second column',
  'corner-gap-first-mm': 'Mean gap of the inner corners in that table, first column',
  'corner-gap-second-mm': 'Mean gap of the inner corners in that table, second column',
  'wing-beyond-corner-first-mm': 'How much further out the nose wing starts a front there, first column',
  'wing-beyond-corner-second-mm': 'How much further out the nose wing starts a front there, second column',
  'tail-falls-mm': 'How much lower tails lie for each 20 years of age',
  'nostril-middle-share': 'Where the middle of the nostril is taken',
  'front-above-an-anchor': 'Fronts start above an anchor',
  'tail-inside-the-line': 'Tails end inside the tail line',
  'tail-tip-in-the-band': 'Tail tips lie level with the front',
  'lengths-equal': 'Both brows are equally long',
} as const satisfies Readonly<Record<keyof typeof placingFacts | keyof typeof placingHabits, string>>;
