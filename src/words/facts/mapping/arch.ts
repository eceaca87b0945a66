import type { archFacts } from '#lib/mapping/facts/arch.ts';

/** What each fact about the arch is, in a few plain words. */
export const archFactNames = {
  'arch-women-of-eye-width': 'Place of the arch in widths of the eye, women',
  'arch-women-spread': 'Spread of that place, women',
  'arch-models-of-eye-width': 'Place of the arch in widths of the eye, models',
  'arch-models-spread': 'Spread of that place, models',
  'iris-edge-women-of-eye-width': 'Outer edge of the iris in widths of the eye, women',
  'iris-edge-models-of-eye-width': 'Outer edge of the iris in widths of the eye, models',
  'arch-women-asked': 'Women photographed for the place of the arch',
  'arch-models-pictured': 'Models pictured for the place of the arch',
  'arch-two-thirds': 'Place of the arch along the brow, as usually defined',
  'arch-and-forehead-line': 'How closely the arch follows the bony line at the temple',
  'arch-and-forehead-line-people': 'People measured for that line',
  'arch-near-outer-corner-people': 'People whose arch stood just inside the outer eye corner',
  'arch-four-places-raters': 'People who judged four places of the arch',
  'arch-rules-p-value': 'Chance of such differences if three arch rules are liked alike',
  'arch-rules-artists': 'Make-up artists who judged three arch rules',
  'arch-rules-faces': 'Faces on which they judged them',
  'golden-share': 'Golden section of a length, from the front',
  'golden-share-from-tail': 'Golden section of a length, from the tail',
  'golden-point-moves-mm': 'How far the golden point moves between the two lengths',
  'arch-by-golden-section': 'The arch by the golden section',
  'one-arch-for-both': 'One front, one tail, one arch for both sides',
} as const satisfies Readonly<Record<keyof typeof archFacts, string>>;
