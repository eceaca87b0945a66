import type { sizeFacts } from '#lib/mapping/facts/sizes.ts';

/** What each fact about sizes of faces is, in a few plain words. */
export const sizesFactNames = {
  'brow-height-inner-young-mm': 'Brow height above the inner corner, 20 to 30 years',
  'brow-height-pupil-young-mm': 'Brow height above the pupil, 20 to 30 years',
  'brow-height-outer-young-mm': 'Brow height above the outer corner, 20 to 30 years',
  'brow-height-inner-older-mm': 'Brow height above the inner corner, 50 to 60 years',
  'brow-height-pupil-older-mm': 'Brow height above the pupil, 50 to 60 years',
  'brow-height-outer-older-mm': 'Brow height above the outer corner, 50 to 60 years',
  'inner-corners-widest-group-mm': 'Distance of the inner corners, group with the widest',
  'inner-corners-narrowest-group-mm': 'Distance of the inner corners, group with the narrowest',
  'inner-corners-largest-spread-mm': 'Spread of that distance, largest of the groups',
  'inner-corners-smallest-spread-mm': 'Spread of that distance, smallest of the groups',
  'inner-corners-people': 'People measured for it',
  'pupils-apart-mm': 'Distance of the pupils',
  'outer-corners-men-mm': 'Distance of the outer corners, men',
  'outer-corners-women-mm': 'Distance of the outer corners, women',
  'eye-width-men-mm': 'Width of an eye, men',
  'eye-width-women-mm': 'Width of an eye, women',
  'iris-width-mm': 'Width of the visible iris',
  'iris-width-spread-mm': 'Spread of that width',
  'iris-width-second-study-mm': 'Width of the visible iris in a second study',
  'front-gap-mm': 'Gap between the fronts of a practice face',
  'front-gap-spread-mm': 'Spread of that gap',
  'height-difference-spread-mm': 'Spread of the height difference of practice faces',
  'roll-spread-deg': 'Spread of the roll of practice faces',
  'nose-lean-spread-mm': 'Spread of the leaning noses of practice faces',
} as const satisfies Readonly<Record<keyof typeof sizeFacts, string>>;
