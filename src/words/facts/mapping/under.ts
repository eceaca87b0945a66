import type { underFacts } from '#lib/mapping/facts/under.ts';

/** What each fact about hair and bone is, in a few plain words. */
export const underFactNames = {
  'brow-loss-comes-first': 'Cases of one scarring hair loss in which the brows go first',
  'brow-against-rim-people': 'People asked where the brow should lie against the bone',
  'outer-end-groups': 'People in each age group whose brow movement was filmed',
  'shape-sits-on-something': 'A shape sits on hair or on bone',
  'off-bone-moves': 'A tail off the bone folds',
  'follow-the-cowlick': 'Strokes follow a cowlick or stay out',
  'not-over-changed-skin': 'Nothing over changed skin or new loss',
} as const satisfies Readonly<Record<keyof typeof underFacts, string>>;
